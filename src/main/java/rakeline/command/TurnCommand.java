package rakeline.command;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import rakeline.figure.ApartTable;
import rakeline.figure.Table;
import rakeline.figure.TextTable;
import rakeline.figure.TurnTable;
import rakeline.geometry.Inputs;
import rakeline.geometry.Setting;
import rakeline.geometry.ToeMeasures;
import rakeline.handling.HandForce;
import rakeline.handling.Ride;
import rakeline.handling.SteadyTurn;
import rakeline.quantity.Caution;
import rakeline.quantity.Measure;
import rakeline.quantity.Reading;
import rakeline.quantity.Refusal;
import rakeline.study.Apart;
import rakeline.study.Vocabulary;

/** A steady turn, and what stem and bar change of it. */
@Command(
        name = "turn",
        description = "Steering angle, radius, bar torque and hand force of a steady turn.",
        footer = {
            "",
            "--change KEY=VALUE, given once or more, prints instead how hand lever, hand travel, turn per hand travel,",
            "hand force in that turn and the critical speeds change: each change alone with the others held, all",
            "together, and the remainder, in per cent of the present bike.",
            "Steer and radius are kinematic; torque and force come from the linear model of Meijaard, Papadopoulos, Ruina",
            "and Schwab 2007, for small angles: no tyre slip or compliance, rigid rider. No published measure predicts",
            "how a rider feels about a bicycle, and practitioners disagree about stem length.",
            "--json prints {\"bike\", \"speedKmh\", \"leanDeg\", \"radiusM\", \"steerDeg\", \"groundSteerDeg\",",
            "\"barTorqueNm\", \"beyondLinear\": true above 10° of steer, \"hands\": {\"tops\": {\"leverMm\", \"perHandN\",",
            "\"oneHandN\"}, …}, \"toeContactSteerDeg\", \"toeContactSpeedKmh\": number or null, \"cautions\": […], \"notices\": […]};",
            "torque and forces are null without --rider, which they need; with",
            "--change {\"bike\", \"columns\": [{\"key\", \"label\", \"unit\", \"values\"}]}."
        })
final class TurnCommand extends Work {
    private static final List<String> FELT = List.of(
            "handLeverMm",
            "handTravelSidewaysMm",
            "handTravelForeAftMm",
            "turnPerHandTravelPerM2",
            "steadySteerDeg",
            "steadyBarTorqueNm",
            "steadyHandForceN",
            "weaveSpeedMps",
            "capsizeSpeedMps");

    @Mixin
    private Subject subject = new Subject();

    @Option(names = "--speed", required = true, paramLabel = "KMH", description = "Speed, km/h.")
    private String speed;

    @Option(names = "--lean", paramLabel = "DEG", description = "Lean into the turn; or")
    private String lean;

    @Option(names = "--radius", paramLabel = "M", description = "radius of the rear contact's track.")
    private String radius;

    @Option(names = "--change", paramLabel = "KEY=VALUE", description = "Compares with this number changed.")
    private List<String> changes = List.of();

    @Option(names = "--json", description = "Prints JSON.")
    private boolean json;

    private final Vocabulary vocabulary;

    TurnCommand(Console console, Vocabulary vocabulary) {
        super(console);
        this.vocabulary = vocabulary;
    }

    @Override
    int work() {
        Ride ride = subject.ride();
        SteadyTurn turn = turn(ride);
        if (!changes.isEmpty()) {
            compare(conditioned(ride, turn));
        } else if (json) {
            console().json(asJson(ride, turn));
        } else {
            console().data().print(TextTable.write(TurnTable.of(ride, turn)));
            console().data().println(toeSentence(ride, turn));
        }
        return DONE;
    }

    private SteadyTurn turn(Ride ride) {
        if ((lean == null) == (radius == null)) {
            throw new Refusal("a turn takes either --lean or --radius.");
        }
        double kmh = Inputs.RIDE_SPEED.quantity().check(Console.number(speed, "--speed"));
        return lean != null
                ? SteadyTurn.leaning(ride, kmh, Inputs.RIDE_LEAN.quantity().check(Console.number(lean, "--lean")))
                : SteadyTurn.around(ride, kmh, Console.number(radius, "--radius"));
    }

    private static Ride conditioned(Ride ride, SteadyTurn turn) {
        return ride.on(
                ride.bike().withSolved(Map.of(Inputs.RIDE_SPEED, turn.speedKmh(), Inputs.RIDE_LEAN, turn.leanDeg())));
    }

    private void compare(Ride ride) {
        Map<Setting, Double> settings = new LinkedHashMap<>();
        KeyValue.numbers("--change", changes).forEach((key, value) -> settings.put(Setting.of(key), value));
        List<Measure<Ride>> measures = FELT.stream()
                .map(vocabulary::measure)
                .filter(measure -> !(measure.read(ride) instanceof Reading.Lacking))
                .toList();
        if (!ride.isRidden()) {
            console().message(TurnTable.NEEDS_A_RIDER);
        }
        Table table = ApartTable.of(Apart.of(ride, settings, measures));
        if (json) {
            Map<String, Object> answer = new LinkedHashMap<>();
            answer.put("bike", ride.bike().name());
            answer.put(
                    "columns", table.columns().stream().map(FigureJson::column).toList());
            console().json(answer);
        } else {
            console().data().print(TextTable.write(table));
        }
    }

    private static Map<String, Object> asJson(Ride ride, SteadyTurn turn) {
        Map<String, Object> answer = new LinkedHashMap<>();
        answer.put("bike", ride.bike().name());
        answer.put("speedKmh", turn.speedKmh());
        answer.put("leanDeg", turn.leanDeg());
        answer.put("radiusM", turn.radiusM());
        answer.put("steerDeg", turn.steerDeg());
        answer.put("groundSteerDeg", turn.groundSteerDeg());
        answer.put("barTorqueNm", ride.isRidden() ? turn.barTorqueNm() : null);
        answer.put("beyondLinear", turn.beyondLinear());
        answer.put("hands", hands(ride, turn));
        Ride there = conditioned(ride, turn);
        answer.put("toeContactSteerDeg", toe(there, ToeMeasures.TOE_CONTACT_STEER));
        answer.put("toeContactSpeedKmh", toe(there, ToeMeasures.TOE_CONTACT_SPEED));
        answer.put(
                "cautions",
                TurnTable.cautions(ride, turn).stream().map(Caution::sentence).toList());
        answer.put("notices", ride.isRidden() ? List.of() : List.of(TurnTable.NEEDS_A_RIDER));
        return answer;
    }

    private static Map<String, Object> hands(Ride ride, SteadyTurn turn) {
        Map<String, Object> hands = new LinkedHashMap<>();
        for (HandForce force : HandForce.of(ride, turn)) {
            Map<String, Object> one = new LinkedHashMap<>();
            one.put("leverMm", force.leverMm());
            one.put("perHandN", Console.orNull(force.perHandN()));
            one.put("oneHandN", Console.orNull(force.oneHandN()));
            hands.put(force.hands().word(), one);
        }
        return hands;
    }

    private static Double toe(Ride ride, Measure<rakeline.geometry.Geometry> measure) {
        return Console.orNull(measure.read(ride.geometry()).orNaN());
    }

    private static String toeSentence(Ride ride, SteadyTurn turn) {
        Ride there = conditioned(ride, turn);
        Reading contact = ToeMeasures.TOE_CONTACT_SPEED.read(there.geometry());
        return contact instanceof Reading.Known known
                ? "At this lean, toe and tyre can touch at "
                        + ToeMeasures.TOE_CONTACT_SPEED.quantity().formatWithUnit(known.value())
                        + " and below: the turn then takes the steering angle of their first contact."
                : "Toe contact: " + contact.reason() + ".";
    }
}
