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
import rakeline.figure.BikeDrawing;
import rakeline.figure.LimitTable;
import rakeline.figure.Table;
import rakeline.figure.TextTable;
import rakeline.geometry.Hands;
import rakeline.handling.Ride;
import rakeline.study.Vocabulary;
import rakeline.study.fit.Left;

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
            "inseam and knees. --json prints {\"bikes\": [name…], \"limits\":",
            "[{\"key\", \"limit\", \"side\": \"at least\" or \"at most\", \"label\", \"source\",",
            "\"values\": [number or null…], \"left\": [number or null…]}]}, one item a bike;",
            "with --race-rules the same under \"raceRules\"."
        })
final class LimitsCommand extends Work {
    @Parameters(arity = "1..*", paramLabel = "BIKE", description = "Bike files (*.bike.json).")
    private List<String> bikes = List.of();

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
        List<Ride> rides = bikes.stream()
                .map(file -> riding.ride(this::notice, file, Hands.HOODS))
                .toList();
        List<Left> left = Left.of(vocabulary, rides);
        Table table = LimitTable.of(rides, left);
        Optional<List<Left>> asked = Optional.of(rules).filter(some -> some).map(some -> Left.rules(vocabulary, rides));
        output.give(console(), BikeDrawing.sideView(rides), table, table, () -> asJson(rides, left, asked));
        if (output.isText()) {
            asked.ifPresent(rows -> console().data().print("\n" + TextTable.write(LimitTable.rules(rides, rows))));
        }
        return DONE;
    }

    private static Map<String, Object> asJson(List<Ride> rides, List<Left> left, Optional<List<Left>> asked) {
        Map<String, Object> answer = new LinkedHashMap<>();
        answer.put("bikes", rides.stream().map(ride -> ride.bike().name()).toList());
        answer.put("limits", asJson(left));
        asked.ifPresent(rows -> answer.put("raceRules", asJson(rows)));
        return answer;
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
