package rakeline.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import rakeline.handling.Ride;
import rakeline.quantity.Decimals;
import rakeline.study.fit.Adjustment;

/** How far spacers, stem, rails and post of bikes can still be moved, each way. */
public final class AdjustmentTable {
    private AdjustmentTable() {}

    /** One row a direction; the bikes side by side. */
    public static Table of(List<Ride> rides, List<Adjustment> rows) {
        return table(BikeNames.above(rides), rows);
    }

    /** The same under other names, for a sheet. */
    static Table table(List<String> names, List<Adjustment> rows) {
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

    private static String left(Adjustment row, int bike) {
        String left = row.quantity().formatWithUnit(row.left().at(bike));
        double steps = row.steps().at(bike);
        return Double.isNaN(steps)
                ? left
                : left + ", " + Decimals.shown(steps) + (steps == 1 ? " stock step" : " stock steps");
    }
}
