package rakeline.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import rakeline.handling.Ride;
import rakeline.quantity.Measure;
import rakeline.quantity.Numbers;
import rakeline.quantity.Quantity;
import rakeline.quantity.Reading;
import rakeline.study.Vocabulary;

/** Every measure of one bike or of several side by side, those that none of them has inputs for left out. */
public final class MeasureTable {
    private MeasureTable() {}

    /** Every measure. */
    public static Table of(Vocabulary vocabulary, List<Ride> bikes) {
        return of(List.copyOf(vocabulary.measures().values()), bikes);
    }

    /** These measures, in this order. */
    public static Table of(List<Measure<Ride>> measures, List<Ride> bikes) {
        List<Map<String, Reading>> readings =
                bikes.stream().map(bike -> readings(measures, bike)).toList();
        List<Quantity> rows = measures.stream()
                .map(Measure::quantity)
                .filter(quantity ->
                        readings.stream().anyMatch(of -> !(of.get(quantity.key()) instanceof Reading.Lacking)))
                .toList();
        List<Column> columns = new ArrayList<>();
        columns.add(Column.ofWords(
                "measure", "Measure", rows.stream().map(Quantity::label).toList()));
        for (int i = 0; i < bikes.size(); i++) {
            columns.add(values(BikeNames.above(bikes).get(i), i, rows, readings.get(i)));
        }
        columns.add(Column.ofWords(
                "unit", "Unit", rows.stream().map(row -> row.unit().symbol()).toList()));
        return new Table(title(bikes), columns, "", Quantity.cautionsOf(rows))
                .about(Basis.of(bikes, rows.stream().map(Quantity::key)));
    }

    private static Map<String, Reading> readings(List<Measure<Ride>> measures, Ride bike) {
        return measures.stream().collect(Collectors.toMap(Measure::key, measure -> measure.read(bike)));
    }

    private static Column values(String name, int index, List<Quantity> rows, Map<String, Reading> readings) {
        Numbers values = Numbers.generate(
                rows.size(), i -> readings.get(rows.get(i).key()).orNaN());
        List<String> shown = new ArrayList<>();
        for (int i = 0; i < rows.size(); i++) {
            shown.add(rows.get(i).format(values.at(i)));
        }
        return new Column("bike" + (index + 1), name, "", values, shown);
    }

    private static String title(List<Ride> bikes) {
        return BikeNames.line(bikes);
    }
}
