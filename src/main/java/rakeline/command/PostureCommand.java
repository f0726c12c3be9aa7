package rakeline.command;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import rakeline.figure.BikeDrawing;
import rakeline.figure.PostureTable;
import rakeline.figure.Table;
import rakeline.geometry.ContactMeasures;
import rakeline.geometry.Hands;
import rakeline.geometry.Inputs;
import rakeline.handling.Ride;
import rakeline.quantity.Decimals;
import rakeline.quantity.Measure;
import rakeline.quantity.Reading;
import rakeline.quantity.Refusal;
import rakeline.rider.CrankChange;
import rakeline.rider.Rider;
import rakeline.rider.RiderMeasures;
import rakeline.rider.SaddleTarget.Setback;
import rakeline.study.Vocabulary;

/** Seats a rider on a bike and prints what follows. */
@Command(
        name = "posture",
        description = "Seats a rider on a bike: joint angles, mass centre, share on the front wheel.",
        footer = {
            "",
            "--crank keeps the leg: the saddle keeps its distance from the pedal at its furthest, moving along the line",
            "from BB, or with --setback bb or pedal keeping its setback behind BB or behind the pedal at three o'clock; the",
            "hands stay, or with --hands-move go along, spacers and stem taking what that needs.",
            "--json prints {\"bike\", \"rider\", \"riderFile\", \"measures\": {key: number or null}, \"assumed\": {key: number},",
            "\"massTable\", \"notices\": [sentence]}, and with --crank also \"hands\" and \"cranks\": {\"columns\": [{\"key\",",
            "\"label\", \"unit\", \"values\"}]}, one row a crank. A measure that has no value says why in a notice."
        })
final class PostureCommand extends Work {
    @Mixin
    private Subject subject = new Subject();

    @Option(names = "--crank", split = ",", paramLabel = "MM", description = "Other crank lengths, one row each.")
    private List<String> cranks = List.of();

    @Option(names = "--hands-move", description = "With --crank: hands move with the saddle; otherwise they stay.")
    private boolean handsMove;

    @Option(
            names = "--setback",
            paramLabel = "FROM",
            description = "With --crank: what keeps the saddle fore and aft: line (default), bb or pedal.")
    private String setback = Setback.LINE.word();

    @Mixin
    private Output output = new Output();

    private final Vocabulary vocabulary;

    PostureCommand(Console console, Vocabulary vocabulary) {
        super(console);
        this.vocabulary = vocabulary;
    }

    @Override
    int work() {
        if (subject.riderFile().isEmpty()) {
            throw new Refusal("--rider is missing; accepted is a rider file (*.rider.json).");
        }
        Ride ride = subject.ride();
        Table table = cranks.isEmpty() ? PostureTable.of(List.of(ride)) : PostureTable.cranks(ride, changes());
        notices(ride).forEach(console()::message);
        output.give(
                console(),
                BikeDrawing.sideView(List.of(ride)),
                table,
                () -> Output.text(table, PostureTable.assumed(who(ride))),
                () -> asJson(ride, table));
        return DONE;
    }

    private List<CrankChange> changes() {
        return cranks.stream()
                .map(word -> new CrankChange(Console.number(word, "--crank"), handsMove, Setback.of(setback)))
                .toList();
    }

    private Map<String, Object> asJson(Ride ride, Table table) {
        Rider rider = who(ride);
        Map<String, Object> answer = new LinkedHashMap<>();
        answer.put("bike", ride.bike().name());
        answer.put("rider", rider.name());
        answer.put("riderFile", subject.riderFile().orElseThrow());
        answer.put("measures", measures(ride));
        answer.put("assumed", assumed(rider));
        answer.put("massTable", rider.table().word());
        answer.put("notices", notices(ride));
        if (!cranks.isEmpty()) {
            answer.put("hands", handsMove ? "move" : "stay");
            answer.put(
                    "cranks",
                    Map.of(
                            "columns",
                            table.columns().stream().map(FigureJson::column).toList()));
        }
        return answer;
    }

    private Map<String, Double> measures(Ride ride) {
        Map<String, Double> numbers = new LinkedHashMap<>();
        for (Measure<Ride> measure : vocabulary.measuresOf(RiderMeasures.class)) {
            Reading reading = measure.read(ride);
            if (!(reading instanceof Reading.Lacking)) {
                numbers.put(measure.key(), Console.orNull(reading.orNaN()));
            }
        }
        return numbers;
    }

    private static Map<String, Double> assumed(Rider rider) {
        Map<String, Double> assumed = new LinkedHashMap<>();
        rider.assumed().forEach((input, value) -> assumed.put(input.key(), value));
        return assumed;
    }

    private List<String> notices(Ride ride) {
        Stream<String> misses = ride.ridden().misses().stream().map(PostureCommand::sentence);
        return Stream.of(subject.notices().stream(), hoodsElsewhere(ride).stream(), misses)
                .flatMap(sentences -> sentences)
                .toList();
    }

    /** Hands are on the bar that is there: one sentence where that is not where the rider's file has them. */
    private static Optional<String> hoodsElsewhere(Ride ride) {
        double miss = ContactMeasures.HAND_MISS.read(ride.geometry()).orNaN();
        boolean asked = who(ride).own().containsKey(Inputs.CONTACT_HAND_X)
                && ride.geometry().hands() == Hands.HOODS;
        return asked && miss > Inputs.CONTACT_HAND_X.quantity().uncertaintyOrNaN()
                ? Optional.of("The hands are on the hoods as built, " + Decimals.fixed(miss, 1)
                        + " mm from the hand point of " + who(ride).name() + ".")
                : Optional.empty();
    }

    private static String sentence(String miss) {
        return Character.toUpperCase(miss.charAt(0)) + miss.substring(1) + ".";
    }

    private static Rider who(Ride ride) {
        return ride.ridden().rider().orElseThrow();
    }
}
