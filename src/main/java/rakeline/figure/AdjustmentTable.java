package rakeline.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import rakeline.handling.Ride;
import rakeline.quantity.Decimals;
import rakeline.study.fit.Adjustment;

/** How far spacers, stem, rails and post of bikes can still be moved, each way. */
public final class AdjustmentTable {
    private AdjustmentTable() {}

    /** One row a direction; the bikes side by side. */
    public static Table of(List<Ride> rides, List<Adjustment> rows) {
        List<String> names = BikeNames.above(rides);
        List<Column> columns = new ArrayList<>();
        columns.add(Column.ofWords(
                "adjustment",
                "Can still be moved",
                rows.stream().map(row -> row.part() + " " + row.direction()).toList()));
        IntStream.range(0, names.size())
                .forEach(bike -> columns.add(Column.ofWords(
                        "left" + (bike + 1),
                        names.get(bike),
                        rows.stream().map(row -> left(row, bike)).toList())));
        columns.add(Column.ofWords(
                "source", "Until", rows.stream().map(Adjustment::source).toList()));
        return new Table(
                String.join(", ", names) + ": what is left up, down, forward and back", columns, "", List.of());
    }

    /** One row a part, for a sheet: what is left each way in one cell. */
    static Table brief(List<String> names, List<Adjustment> rows) {
        List<String> parts = rows.stream().map(Adjustment::part).distinct().toList();
        List<Column> columns = new ArrayList<>();
        columns.add(Column.ofWords("part", "Can still be moved", parts));
        IntStream.range(0, names.size())
                .forEach(bike -> columns.add(Column.ofWords(
                        "left" + (bike + 1),
                        names.get(bike),
                        parts.stream().map(part -> each(rows, part, bike)).toList())));
        return new Table("", columns, "", List.of());
    }

    private static String each(List<Adjustment> rows, String part, int bike) {
        return rows.stream()
                .filter(row ->
                        row.part().equals(part) && Double.isFinite(row.left().at(bike)))
                .map(row -> row.quantity().formatWithUnit(row.left().at(bike)) + " " + row.direction())
                .collect(Collectors.joining(", "));
    }

    private static String left(Adjustment row, int bike) {
        String left = row.quantity().formatWithUnit(row.left().at(bike));
        double steps = row.steps().at(bike);
        return Double.isNaN(steps)
                ? left
                : left + ", " + Decimals.shown(steps) + (steps == 1 ? " stock step" : " stock steps");
    }
}
