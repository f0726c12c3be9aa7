package rakeline.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import rakeline.quantity.Quantity;
import rakeline.study.fit.Adjustment;
import rakeline.study.fit.Comparison;
import rakeline.study.fit.Left;
import rakeline.study.fit.Matched;
import rakeline.study.fit.Option;

/** The tables of a sheet for a customer: what is fitted, the numbers side by side, what is left to limits; short. */
public final class CustomerTables {
    /** Facts of an option that are no parts of it. */
    private static final Set<String> MISSES = Set.of("handDxMm", "handDyMm", "distanceMm");

    /** What the sheet compares, where the bikes have the inputs for it. */
    public static final List<String> KEYS = List.of(
            "frame.headAngleDeg",
            "trailMm",
            "wheelbaseMm",
            "frontCentreMm",
            "handLeverMm",
            "turnPerHandTravelPerM2",
            "saddleHeightMm",
            "saddleToBarDropMm",
            "torsoAngleDeg",
            "hipAngleAtTopDeg",
            "kneeFlexionBottomDeg",
            "frontSharePercent",
            "toeRoomMm",
            "toeContactSteerDeg",
            "pedalToTyreMm");

    private static final Set<String> SHOWN = Set.of("measure", "bike1", "bike2", "difference2", "uncertainty2", "unit");

    /** Limits that are always told. */
    private static final Set<String> LIMITED = Set.of(
            "spacersLeftMm",
            "steererLeftMm",
            "postExtensionMm",
            "postInsertionLeftMm",
            "postDepthLeftMm",
            "railLeftMm",
            "toeRoomMm",
            "pedalToTyreMm",
            "pedalStrikeLeanDeg",
            "standoverClearanceMm",
            "kneeFlexionBottomDeg");

    private CustomerTables() {}

    /** The parts of each bike's best match, and how far its hoods then are from where they are wanted. */
    public static Table fitted(List<String> names, List<Matched> matches) {
        List<Option> options = matches.stream().map(Matched::first).toList();
        List<Quantity> rows = options.get(0).facts().stream()
                .map(Option.Fact::quantity)
                .filter(quantity -> isPart(quantity, matches) || MISSES.contains(quantity.key()))
                .toList();
        List<Column> columns = new ArrayList<>();
        columns.add(words("part", "Best match", rows, Quantity::label));
        for (int i = 0; i < options.size(); i++) {
            Option option = options.get(i);
            columns.add(words(
                    "bike" + (i + 1),
                    names.get(i),
                    rows,
                    quantity -> quantity.formatWithUnit(option.get(quantity.key()))));
        }
        return new Table("", columns, "", List.of());
    }

    private static boolean isPart(Quantity quantity, List<Matched> matches) {
        return matches.get(0).match().stock().parts().keySet().stream()
                .flatMap(category -> category.fields().stream())
                .anyMatch(field -> field.option().equals(quantity.key()));
    }

    /** Both bikes and the difference with its standard uncertainty. */
    public static Table numbers(Comparison comparison) {
        Table whole = ComparisonTable.of(comparison);
        return new Table(
                "",
                whole.columns().stream()
                        .filter(column -> SHOWN.contains(column.key()))
                        .toList(),
                "",
                whole.cautions(),
                whole.basis());
    }

    /** The same without its cautions, which stand elsewhere on the sheet. */
    public static Table bare(Table table) {
        return new Table(table.title(), table.columns(), table.held(), List.of(), table.basis());
    }

    /** What is left to the limits of parts, foot and standover. */
    public static Table limits(List<String> names, List<Left> rows) {
        List<Left> shown = rows.stream()
                .filter(row -> LIMITED.contains(row.quantity().key()))
                .toList();
        List<Column> columns = new ArrayList<>();
        columns.add(words(
                "limited",
                "What is left to a limit",
                shown,
                row -> row.quantity().label()));
        columns.add(words("limit", "Limit", shown, row -> row.limit().label()));
        for (int i = 0; i < names.size(); i++) {
            int bike = i;
            columns.add(words(
                    "left" + (i + 1),
                    names.get(i),
                    shown,
                    row -> row.quantity().formatWithUnit(row.left().at(bike))));
        }
        columns.add(words("source", "Source", shown, row -> row.limit().source()));
        return new Table(
                "",
                columns,
                "",
                Quantity.cautionsOf(shown.stream().map(Left::quantity).toList()));
    }

    /** What spacers, stem, rails and post have left, each way. */
    public static Table adjustments(List<String> names, List<Adjustment> rows) {
        return AdjustmentTable.brief(names, rows);
    }

    private static <T> Column words(String key, String label, List<T> rows, Function<T, String> words) {
        return Column.ofWords(key, label, rows.stream().map(words).toList());
    }
}
