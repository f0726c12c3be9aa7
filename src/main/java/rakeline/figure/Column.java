package rakeline.figure;

import java.util.List;
import java.util.stream.IntStream;
import rakeline.quantity.Decimals;
import rakeline.quantity.Numbers;
import rakeline.quantity.Quantity;

/**
 * A column of numbers or of words.
 *
 * @param unit as written in a heading; empty for words
 * @param values full precision, NaN for a gap; empty for a column of words
 * @param shown each cell as it is read by people, as many as there are rows
 */
public record Column(String key, String label, String unit, Numbers values, List<String> shown) {
    public Column {
        shown = List.copyOf(shown);
    }

    public static Column of(Quantity quantity, Numbers values) {
        return of(quantity, values, quantity.decimals());
    }

    /** With more or fewer decimals than usual. */
    public static Column of(Quantity quantity, Numbers values, int decimals) {
        return new Column(
                quantity.key(),
                quantity.label(),
                quantity.unit().symbol(),
                values,
                IntStream.range(0, values.size())
                        .mapToObj(i -> Decimals.fixed(values.at(i), decimals))
                        .toList());
    }

    /** Numbers of which every digit counts, as the steps of a sweep. */
    public static Column ofSteps(Quantity quantity, Numbers values) {
        return new Column(
                quantity.key(),
                quantity.label(),
                quantity.unit().symbol(),
                values,
                IntStream.range(0, values.size())
                        .mapToObj(i -> Decimals.shown(Math.rint(values.at(i) * 1e6) / 1e6))
                        .toList());
    }

    public static Column ofWords(String key, String label, List<String> words) {
        return new Column(key, label, "", Numbers.none(), words);
    }

    public boolean isNumeric() {
        return values.size() > 0 || shown.isEmpty();
    }

    public int size() {
        return shown.size();
    }

    /** A cell for another program: a number in full precision, nothing for a gap, words that begin with a number typed. */
    public String field(int row) {
        if (row >= size()) {
            return "";
        }
        return isNumeric() ? number(values.at(row)) : typed(shown.get(row));
    }

    private static String number(double value) {
        return Double.isFinite(value) ? Decimals.shortest(value) : "";
    }

    private static String typed(String words) {
        return words.startsWith("−") ? Decimals.typed(words) : words;
    }

    /** Label and unit, as in {@code Trail, mm}. */
    public String heading() {
        return unit.isEmpty() ? label : label + ", " + unit;
    }
}
