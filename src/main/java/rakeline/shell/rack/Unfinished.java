package rakeline.shell.rack;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import rakeline.desk.RackView;
import rakeline.geometry.Inputs;
import rakeline.quantity.Input;

/** Numbers that no bike file can hold yet, as they are kept from one start to the next. */
final class Unfinished {
    private Unfinished() {}

    /** Those of the rows; those of bikes that are not on the rack now stay as they were. */
    static List<RackView.Unfinished> of(List<RackRow> rows, List<RackView.Unfinished> before) {
        List<String> here = rows.stream().map(Unfinished::file).toList();
        Stream<RackView.Unfinished> others =
                before.stream().filter(bike -> !bike.file().isEmpty() && !here.contains(bike.file()));
        return Stream.concat(rows.stream().filter(Unfinished::isUnfinished).map(Unfinished::of), others)
                .toList();
    }

    private static boolean isUnfinished(RackRow row) {
        return !row.waiting().isEmpty() || row.path().isEmpty();
    }

    private static RackView.Unfinished of(RackRow row) {
        Map<String, Double> numbers = new LinkedHashMap<>();
        row.waiting().forEach((input, value) -> numbers.put(input.key(), value));
        return new RackView.Unfinished(file(row), row.name(), numbers);
    }

    private static String file(RackRow row) {
        return row.place().map(place -> place.file().toString()).orElse(row.path());
    }

    /** A row as it was read, with what was typed on it. */
    static RackRow on(RackRow row, List<RackView.Unfinished> kept) {
        return kept.stream()
                .filter(bike -> bike.file().equals(file(row)))
                .findFirst()
                .map(bike -> row.withWaiting(numbers(bike)))
                .orElse(row);
    }

    /** The bikes that have no file yet. */
    static List<RackRow> begun(List<RackView.Unfinished> kept) {
        List<RackView.Unfinished> begun =
                kept.stream().filter(bike -> bike.file().isEmpty()).toList();
        return Stream.iterate(0, i -> i < begun.size(), i -> i + 1)
                .map(i -> RackRow.begun("new " + (i + 1), begun.get(i).name()).withWaiting(numbers(begun.get(i))))
                .toList();
    }

    private static Map<Input, Double> numbers(RackView.Unfinished bike) {
        Map<Input, Double> numbers = new LinkedHashMap<>();
        Inputs.all().stream()
                .filter(input -> bike.numbers().containsKey(input.key()))
                .forEach(input -> numbers.put(input, bike.numbers().get(input.key())));
        return numbers;
    }
}
