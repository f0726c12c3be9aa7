package rakeline.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import rakeline.quantity.Caution;
import rakeline.quantity.Numbers;
import rakeline.quantity.Quantity;

/**
 * One measure over two quantities; limits to draw are the measure's own.
 *
 * @param x to the right
 * @param y upward
 * @param measure what is shown
 * @param values for each x in order, for each y in order; NaN is a gap
 * @param gaps why there are gaps, each a sentence with how many there are
 */
public record MapFigure(
        String title,
        Axis x,
        Axis y,
        Quantity measure,
        Numbers values,
        double here,
        List<String> gaps,
        String held,
        List<Caution> cautions,
        Basis basis)
        implements Figure {

    /**
     * One of the two quantities.
     *
     * @param steps its values, in order, two at least
     * @param here its present value; NaN for none
     */
    public record Axis(Quantity quantity, Numbers steps, double here) {
        public int size() {
            return steps.size();
        }
    }

    /** About no bicycle in particular. */
    public MapFigure(
            String title,
            Axis x,
            Axis y,
            Quantity measure,
            Numbers values,
            double here,
            List<String> gaps,
            String held,
            List<Caution> cautions) {
        this(title, x, y, measure, values, here, gaps, held, cautions, Basis.NONE);
    }

    public MapFigure {
        gaps = List.copyOf(gaps);
        cautions = List.copyOf(cautions);
        if (x.size() < 2 || y.size() < 2 || values.size() != x.size() * y.size()) {
            throw new IllegalArgumentException(
                    "a map of " + x.size() + " by " + y.size() + " steps with " + values.size() + " values");
        }
    }

    /** The same, about this bicycle. */
    public MapFigure about(Basis other) {
        return new MapFigure(title, x, y, measure, values, here, gaps, held, cautions, other);
    }

    @Override
    public MapFigure withCautions(List<Caution> others) {
        return new MapFigure(title, x, y, measure, values, here, gaps, held, others, basis);
    }

    /** The value at the i-th x and the j-th y. */
    public double at(int i, int j) {
        return values.at(i * y.size() + j);
    }

    /** One place a row: x, y and the measure. */
    @Override
    public List<Column> columns() {
        return List.of(
                Column.ofSteps(
                        x.quantity(),
                        Numbers.generate(values.size(), i -> x.steps().at(i / y.size()))),
                Column.ofSteps(
                        y.quantity(),
                        Numbers.generate(values.size(), i -> y.steps().at(i % y.size()))),
                Column.of(measure, values));
    }

    /** A row for each of a few y, in order, and a column for each of a few x. */
    public Table table(int mostRows, int mostColumns) {
        int[] rows = chosen(y.size(), mostRows);
        List<Column> columns = new ArrayList<>();
        columns.add(Column.ofSteps(
                y.quantity(), Numbers.generate(rows.length, i -> y.steps().at(rows[i]))));
        for (int i : chosen(x.size(), mostColumns)) {
            columns.add(column(i, rows));
        }
        return new Table(title, columns, held, cautions, basis);
    }

    private Column column(int i, int... rows) {
        Column plain = Column.of(measure, Numbers.generate(rows.length, row -> at(i, rows[row])));
        Quantity quantity = x.quantity();
        String at =
                Column.ofSteps(quantity, Numbers.of(x.steps().at(i))).shown().get(0);
        String heading = quantity.label() + " " + quantity.unit().attach(at);
        return new Column(quantity.key() + "=" + at, heading, "", plain.values(), plain.shown());
    }

    /** So many of them, evenly, both ends among them. */
    private static int[] chosen(int size, int most) {
        int count = Math.min(size, Math.max(2, most));
        return IntStream.range(0, count)
                .map(i -> (int) Math.round((double) i * (size - 1) / (count - 1)))
                .toArray();
    }
}
