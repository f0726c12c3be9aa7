package rakeline.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import rakeline.geometry.Bike;
import rakeline.geometry.Inputs;
import rakeline.geometry.Provenance;
import rakeline.quantity.Decimals;
import rakeline.quantity.Input;
import rakeline.quantity.Numbers;

/** The given numbers of bikes: one row a bike, with nothing lost, or side by side, to be read. */
public final class BikesTable {
    private static final String NONE = "–";

    private BikesTable() {}

    /** One row a bike under a header of keys; what reads it gets equal bikes. */
    public static Table records(List<Bike> bikes) {
        List<Column> columns = new ArrayList<>();
        columns.add(
                Column.ofWords("name", "Name", bikes.stream().map(Bike::name).toList()));
        groupsOfDefaults(bikes).forEach(group -> columns.add(group(group, bikes)));
        given(bikes).forEach(input -> columns.add(Column.of(input.quantity(), values(input, bikes))));
        Inputs.all().forEach(input -> columns.addAll(provenance(input.key(), bikes)));
        return new Table("", columns, "", List.of());
    }

    /** One column a bike; a dash where it does not give the number. */
    public static Table sideBySide(List<Bike> bikes) {
        List<Input> rows = given(bikes);
        List<Column> columns = new ArrayList<>();
        columns.add(
                Column.ofWords("key", "Number", rows.stream().map(Input::key).toList()));
        for (int i = 0; i < bikes.size(); i++) {
            Bike bike = bikes.get(i);
            Numbers values = Numbers.generate(rows.size(), row -> bike.given().get(rows.get(row)));
            columns.add(new Column("bike" + (i + 1), bike.name(), "", values, shown(values)));
        }
        columns.add(Column.ofWords(
                "unit",
                "Unit",
                rows.stream().map(row -> row.quantity().unit().symbol()).toList()));
        return new Table("", columns, "", List.of());
    }

    private static List<String> shown(Numbers values) {
        return values.stream()
                .mapToObj(value -> Double.isNaN(value) ? NONE : Decimals.shown(Math.rint(value * 1e3) / 1e3))
                .toList();
    }

    private static List<Input> given(List<Bike> bikes) {
        return Inputs.all().stream()
                .filter(input -> bikes.stream().anyMatch(bike -> bike.given().has(input)))
                .toList();
    }

    private static Numbers values(Input input, List<Bike> bikes) {
        return Numbers.generate(bikes.size(), i -> bikes.get(i).given().get(input));
    }

    /** Groups that some bike has although it gives none of their numbers. */
    private static List<String> groupsOfDefaults(List<Bike> bikes) {
        return Inputs.all().stream()
                .map(Input::group)
                .distinct()
                .filter(group -> bikes.stream().anyMatch(bike -> bike.hasGroup(group) && !givesAny(bike, group)))
                .toList();
    }

    private static boolean givesAny(Bike bike, String group) {
        return Inputs.all().stream()
                .anyMatch(
                        input -> input.group().startsWith(group) && bike.given().has(input));
    }

    private static Column group(String group, List<Bike> bikes) {
        return Column.ofWords(
                group,
                group,
                bikes.stream().map(bike -> bike.hasGroup(group) ? "given" : "").toList());
    }

    private static List<Column> provenance(String key, List<Bike> bikes) {
        List<Optional<Provenance>> origins = bikes.stream()
                .map(bike -> Optional.ofNullable(bike.provenance().get(key)))
                .toList();
        Column from = Column.ofWords(
                "provenance." + key + ".from",
                key + " from",
                origins.stream()
                        .map(origin -> origin.flatMap(Provenance::from)
                                .map(Provenance.Origin::word)
                                .orElse(""))
                        .toList());
        return Stream.of(
                        from,
                        numbers(key, "u", origins, Provenance::standardUncertainty),
                        numbers(key, "step", origins, Provenance::step))
                .filter(column -> !Set.of("", NONE).containsAll(column.shown()))
                .toList();
    }

    private static Column numbers(
            String key, String name, List<Optional<Provenance>> origins, ToDoubleFunction<Provenance> part) {
        Numbers numbers = Numbers.generate(
                origins.size(), i -> origins.get(i).map(part::applyAsDouble).orElse(Double.NaN));
        return new Column("provenance." + key + "." + name, key + " " + name, "", numbers, shown(numbers));
    }
}
