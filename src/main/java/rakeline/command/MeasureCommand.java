package rakeline.command;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import rakeline.figure.MeasureTable;
import rakeline.figure.TextTable;
import rakeline.geometry.Bike;
import rakeline.geometry.Geometry;
import rakeline.geometry.Hands;
import rakeline.geometry.Setting;
import rakeline.quantity.Reading;
import rakeline.study.Vocabulary;

/** Prints every measure of a bike. */
@Command(
        name = "measure",
        description = "Prints every measure of a bike that its numbers suffice for.",
        footer = {"", "--json prints {\"bike\": name, \"measures\": {key: number or null}}, in full precision."})
final class MeasureCommand extends Work {
    @Parameters(paramLabel = "BIKE", description = "A bike file (*.bike.json).")
    private String bike;

    @Option(names = "--set", paramLabel = "KEY=VALUE", description = "Redraws the bike with a number changed.")
    private List<String> changes = List.of();

    @Option(names = "--hands", paramLabel = "WHERE", description = "tops, hoods (as usual) or drops.")
    private String hands = "hoods";

    @Option(names = "--json", description = "Prints JSON.")
    private boolean json;

    private final Vocabulary vocabulary;

    MeasureCommand(Console console, Vocabulary vocabulary) {
        super(console);
        this.vocabulary = vocabulary;
    }

    @Override
    int work() {
        Bike redrawn = Paths.bike(bike).redraw(Setting.changes(KeyValue.numbers("--set", changes)));
        Geometry geometry = Geometry.of(redrawn, Hands.of(hands));
        if (json) {
            Map<String, Object> answer = new LinkedHashMap<>();
            answer.put("bike", redrawn.name());
            answer.put("measures", numbers(vocabulary, geometry));
            console().json(answer);
        } else {
            console().data().print(TextTable.write(MeasureTable.of(vocabulary, List.of(geometry))));
        }
        return DONE;
    }

    /** Every measure that the bike has inputs for; null where it has no value. */
    static Map<String, Double> numbers(Vocabulary vocabulary, Geometry geometry) {
        Map<String, Double> numbers = new LinkedHashMap<>();
        vocabulary.readings(geometry).forEach((key, reading) -> {
            if (!(reading instanceof Reading.Lacking)) {
                numbers.put(key, Console.orNull(reading.orNaN()));
            }
        });
        return numbers;
    }
}
