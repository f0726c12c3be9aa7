package rakeline.command;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import rakeline.figure.AdjustmentTable;
import rakeline.figure.BikeDrawing;
import rakeline.figure.LimitTable;
import rakeline.figure.Table;
import rakeline.figure.TextTable;
import rakeline.geometry.Hands;
import rakeline.handling.Ride;
import rakeline.study.Vocabulary;
import rakeline.study.fit.Adjustment;
import rakeline.study.fit.Left;
import rakeline.study.fit.Wanted;

/** What bikes have left to each limit. */
@Command(
        name = "limits",
        description =
                "Prints what bikes have left to each limit: steerer, spacers, post, rails, toes, pedals and more.",
        footer = {
            "",
            "Every limit stands with its source: a number of the bike's own parts, a",
            "regulation, or common practice. --race-rules adds race rules and",
            "recommendations as a group of their own. What is left is negative beyond the limit, by",
            "how far; nothing is judged. Of crank, toe, tyre and guard it is how much more",
            "there could be before toe room is 0 or the pedal strikes at 25°, all else as",
            "it is; \"limit\" is null then. With --rider also what is left of the rider's",
            "inseam and knees. --to puts the contact points of a rider or a bike on all, held",
            "from the pedal as compare holds them; without it, and without any in the rider's",
            "file, each bike is told of at its own contact points, and the title says so.",
            "--json prints {\"bikes\": [name…], \"limits\":",
            "[{\"key\", \"limit\", \"side\": \"at least\" or \"at most\", \"label\", \"source\",",
            "\"values\": [number or null…], \"left\": [number or null…]}], \"contact\": null or",
            "whose points are on all, \"held\": how the saddle is held or null,",
            "\"adjustments\": [{\"part\", \"direction\", \"unit\", \"left\": [number or null…],",
            "\"steps\": [stock parts in that direction or null…], \"source\"}]}, one item a bike;",
            "with --race-rules the limits' rows of these under \"raceRules\"."
        })
final class LimitsCommand extends Work {
    @Parameters(arity = "1..*", paramLabel = "BIKE", description = "Bike files (*.bike.json).")
    private List<String> bikes = List.of();

    @Option(names = "--to", paramLabel = "BIKE|RIDER", description = "Contact points of another on all.")
    private String to;

    @Mixin
    private TargetOptions held = new TargetOptions();

    @Mixin
    private Riding riding = new Riding();

    @Option(names = "--race-rules", description = "Adds what race rules and recommendations set.")
    private boolean rules;

    @Mixin
    private Output output = new Output();

    private final Vocabulary vocabulary;

    LimitsCommand(Console console, Vocabulary vocabulary) {
        super(console);
        this.vocabulary = vocabulary;
    }

    @Override
    int work() {
        Optional<Wanted> wanted =
                Optional.ofNullable(to).map(Paths::wanted).or(riding::contact).map(points -> held.held(points, riding));
        List<Ride> rides = bikes.stream()
                .map(file -> riding.ride(this::notice, file, Hands.HOODS))
                .map(ride ->
                        wanted.map(points -> ride.on(points.on(ride.bike()))).orElse(ride))
                .toList();
        List<Left> left = Left.of(vocabulary, rides);
        Optional<List<Left>> asked = Optional.of(rules).filter(some -> some).map(some -> Left.rules(vocabulary, rides));
        List<Adjustment> adjustments = Adjustment.of(rides, Optional.empty());
        Table table = LimitTable.of(rides, left, wanted.map(Wanted::from));
        output.give(
                console(),
                BikeDrawing.sideView(rides),
                table,
                () -> Output.text(table, AdjustmentTable.of(rides, adjustments)),
                () -> asJson(rides, left, asked, wanted, adjustments));
        if (output.isText()) {
            asked.ifPresent(rows -> console().data().print("\n" + TextTable.write(LimitTable.rules(rides, rows))));
        }
        return DONE;
    }

    private static Map<String, Object> asJson(
            List<Ride> rides,
            List<Left> left,
            Optional<List<Left>> asked,
            Optional<Wanted> wanted,
            List<Adjustment> adjustments) {
        Map<String, Object> answer = new LinkedHashMap<>();
        answer.put("bikes", rides.stream().map(ride -> ride.bike().name()).toList());
        answer.put("limits", asJson(left));
        asked.ifPresent(rows -> answer.put("raceRules", asJson(rows)));
        answer.put("contact", wanted.map(Wanted::from).orElse(null));
        answer.put("held", wanted.map(Wanted::held).orElse(null));
        answer.put("adjustments", adjustments(adjustments));
        return answer;
    }

    static List<Map<String, Object>> adjustments(List<Adjustment> rows) {
        return rows.stream().map(LimitsCommand::asJson).toList();
    }

    private static Map<String, Object> asJson(Adjustment row) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("part", row.part());
        json.put("direction", row.direction());
        json.put("unit", row.quantity().unit().symbol());
        json.put("left", CompareCommand.list(row.left()));
        json.put("steps", CompareCommand.list(row.steps()));
        json.put("source", row.source());
        return json;
    }

    static List<Map<String, Object>> asJson(List<Left> rows) {
        return rows.stream().map(LimitsCommand::asJson).toList();
    }

    private static Map<String, Object> asJson(Left row) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("key", row.quantity().key());
        json.put("limit", Console.orNull(row.limit().value()));
        json.put("side", row.limit().side().name().toLowerCase(Locale.ROOT).replace('_', ' '));
        json.put("label", row.limit().label());
        json.put("source", row.limit().source());
        json.put("values", CompareCommand.list(row.values()));
        json.put("left", CompareCommand.list(row.left()));
        return json;
    }
}
