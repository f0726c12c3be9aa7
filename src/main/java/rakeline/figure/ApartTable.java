package rakeline.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import rakeline.geometry.Setting;
import rakeline.quantity.Caution;
import rakeline.quantity.Decimals;
import rakeline.quantity.Numbers;
import rakeline.quantity.Quantity;
import rakeline.study.Apart;

/** How much of a change is which, in per cent of the present bike. */
public final class ApartTable {
    /** What no table of it says. */
    public static final Caution NO_SCORE = new Caution(
            "differences, no score",
            "No published measure predicts how a rider feels about a bicycle, and practitioners disagree about stem length:"
                    + " these are differences, no score.");

    private ApartTable() {}

    public static Table of(Apart apart) {
        List<Apart.Line> lines = apart.lines();
        List<Column> columns = new ArrayList<>();
        columns.add(Column.ofWords(
                "measure",
                "Measure",
                lines.stream().map(line -> line.quantity().heading()).toList()));
        columns.add(new Column(
                "present",
                "Present",
                "",
                numbers(lines, Apart.Line::present),
                lines.stream()
                        .map(line -> line.quantity().format(line.present()))
                        .toList()));
        List<String> heads = heads(apart);
        for (int i = 0; i < heads.size(); i++) {
            int change = i;
            columns.add(percent(
                    "change" + (i + 1),
                    heads.get(i),
                    lines,
                    line -> line.alonePercent().get(change)));
        }
        columns.add(percent("together", "Together", lines, Apart.Line::togetherPercent));
        columns.add(percent("remainder", "Remainder", lines, Apart.Line::remainderPercent));
        List<Caution> cautions = new ArrayList<>(List.of(NO_SCORE));
        cautions.addAll(Quantity.cautionsOf(Stream.concat(
                        apart.changes().keySet().stream().map(Setting::quantity),
                        lines.stream().map(Apart.Line::quantity))
                .toList()));
        return new Table(
                        apart.present().bike().name() + ": each change alone and all together",
                        columns,
                        "every other input, as drawn; masses that are not given follow their defaults.",
                        cautions)
                .about(Basis.of(
                        List.of(apart.present()),
                        lines.stream().map(line -> line.quantity().key())));
    }

    /** As in {@code Stem length 80 → 100 mm}. */
    private static List<String> heads(Apart apart) {
        List<String> heads = new ArrayList<>();
        apart.changes()
                .forEach((setting, value) -> heads.add(setting.quantity().label() + " "
                        + Decimals.shown(setting.valueIn(apart.present().bike())) + " → "
                        + setting.quantity().unit().attach(Decimals.shown(value))));
        return heads;
    }

    private static Column percent(String key, String label, List<Apart.Line> lines, ToDoubleFunction<Apart.Line> read) {
        Numbers values = numbers(lines, read);
        return new Column(
                key,
                label,
                "%",
                values,
                values.stream().mapToObj(value -> Decimals.fixed(value, 2)).toList());
    }

    private static Numbers numbers(List<Apart.Line> lines, ToDoubleFunction<Apart.Line> read) {
        return Numbers.generate(lines.size(), i -> read.applyAsDouble(lines.get(i)));
    }
}
