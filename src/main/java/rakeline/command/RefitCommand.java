package rakeline.command;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import rakeline.figure.BikeDrawing;
import rakeline.figure.Column;
import rakeline.figure.Table;
import rakeline.geometry.Hands;
import rakeline.geometry.Inputs;
import rakeline.geometry.Refit;
import rakeline.geometry.Setting;
import rakeline.handling.Ride;
import rakeline.quantity.Decimals;
import rakeline.quantity.Input;
import rakeline.quantity.Numbers;
import rakeline.quantity.Quantity;
import rakeline.study.Vocabulary;

/** Fits another fork, wheel or tyre to a rigid frame and prints both states. */
@Command(
        name = "refit",
        description = "Fits another fork, sag, wheel or tyre: the frame stays rigid and turns until both tyres touch.",
        footer = {
            "",
            "--json prints {\"before\": {key: number or null}, \"after\": {…}, \"pitchDeg\": number, \"miss\": {…}}",
            "with every input and every measure; the miss is turned minus wanted contact point, in mm."
        })
final class RefitCommand extends Work {
    @Parameters(paramLabel = "BIKE", description = "A bike file (*.bike.json).")
    private String bike;

    @Option(names = "--set", required = true, paramLabel = "KEY=VALUE", description = "What is exchanged.")
    private List<String> changes = List.of();

    @Option(names = "--rider", paramLabel = "FILE", description = "A rider file (*.rider.json): who is on the bike.")
    private String rider;

    @Option(names = "--hands", paramLabel = "WHERE", description = "tops, hoods (default) or drops.")
    private String hands = "hoods";

    @Mixin
    private Output output = new Output();

    private final Vocabulary vocabulary;

    RefitCommand(Console console, Vocabulary vocabulary) {
        super(console);
        this.vocabulary = vocabulary;
    }

    @Override
    int work() {
        Ride before = Ride.of(Paths.bike(bike), Optional.ofNullable(rider).map(Paths::rider), Hands.of(hands));
        Refit refit = Refit.of(before.bike(), Setting.changes(KeyValue.numbers("--set", changes)));
        Map<String, Double> old = numbers(before);
        Map<String, Double> now = numbers(before.on(refit.bike()));
        Table table = table(refit, old, now);
        output.give(
                console(),
                BikeDrawing.sideView(List.of(before, before.on(refit.bike()))),
                table,
                table,
                () -> asJson(refit, old, now));
        return DONE;
    }

    private Map<String, Double> numbers(Ride of) {
        Map<String, Double> numbers = new LinkedHashMap<>();
        for (Input input : Inputs.all()) {
            if (of.bike().has(input)) {
                numbers.put(input.key(), of.bike().get(input));
            }
        }
        numbers.putAll(MeasureCommand.numbers(vocabulary, of));
        return numbers;
    }

    private static Map<String, Object> asJson(Refit refit, Map<String, Double> old, Map<String, Double> now) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("bike", refit.bike().name());
        json.put("before", old);
        json.put("after", now);
        json.put("pitchDeg", refit.pitchDeg());
        json.put("miss", miss(refit));
        return json;
    }

    private static Map<String, Double> miss(Refit refit) {
        Map<String, Double> miss = new LinkedHashMap<>();
        if (refit.bike().hasGroup("contact")) {
            miss.put("sitXMm", refit.sitMiss().x());
            miss.put("sitYMm", refit.sitMiss().y());
            miss.put("handXMm", refit.handMiss().x());
            miss.put("handYMm", refit.handMiss().y());
        }
        return miss;
    }

    private Table table(Refit refit, Map<String, Double> old, Map<String, Double> now) {
        List<Quantity> rows = now.keySet().stream()
                .filter(old::containsKey)
                .filter(key -> !key.startsWith("charted."))
                .map(vocabulary::quantity)
                .toList();
        List<Quantity> changed = rows.stream()
                .filter(row -> !Objects.equals(old.get(row.key()), now.get(row.key())))
                .toList();
        List<Column> columns = new ArrayList<>();
        columns.add(Column.ofWords(
                "quantity", "Quantity", rows.stream().map(Quantity::heading).toList()));
        columns.add(column("before", "Before", rows, old));
        columns.add(column("after", "After", rows, now));
        return new Table(refit.bike().name() + ", refitted", columns, held(refit), Quantity.cautionsOf(changed));
    }

    private static Column column(String key, String label, List<Quantity> rows, Map<String, Double> values) {
        Numbers numbers =
                Numbers.generate(rows.size(), i -> orNaN(values.get(rows.get(i).key())));
        List<String> shown = new ArrayList<>();
        for (int i = 0; i < rows.size(); i++) {
            shown.add(rows.get(i).format(numbers.at(i)));
        }
        return new Column(key, label, "", numbers, shown);
    }

    private static double orNaN(Double value) {
        return value == null ? Double.NaN : value;
    }

    private static String held(Refit refit) {
        String frame = "the frame, one rigid body, turned " + Decimals.fixed(refit.pitchDeg(), 2) + "° nose up.";
        return refit.bike().hasGroup("contact")
                ? frame + " The sit point misses its mark by " + shown(refit.sitMiss()) + ", the hand point by "
                        + shown(refit.handMiss()) + " (forward, up)."
                : frame;
    }

    private static String shown(rakeline.geometry.Point miss) {
        return Decimals.fixed(miss.x(), 1) + " and " + Decimals.fixed(miss.y(), 1) + " mm";
    }
}
