package rakeline.figure;

import java.util.List;
import java.util.stream.Stream;
import rakeline.quantity.Numbers;
import rakeline.quantity.Quantity;

/**
 * One swept quantity along x and one panel for each measure, stacked, sharing x.
 *
 * @param x the swept quantity
 * @param steps its values, in order
 * @param here the present value of the swept quantity, drawn as one vertical line through all panels; NaN for none
 * @param gaps for each step that could not be reached, why
 */
public record Chart(
        String title,
        Quantity x,
        Numbers steps,
        double here,
        List<Panel> panels,
        List<Gap> gaps,
        String held,
        List<String> cautions)
        implements Figure {

    /**
     * One measure over the steps; limits to draw are the quantity's own.
     *
     * @param values as many as there are steps; NaN is a gap
     * @param here the measure at {@link Chart#here()}, or NaN
     */
    public record Panel(Quantity quantity, Numbers values, double here) {}

    /** A stretch of steps without a value. */
    public record Gap(int step, String key, String reason) {}

    public Chart {
        panels = List.copyOf(panels);
        gaps = List.copyOf(gaps);
        cautions = List.copyOf(cautions);
    }

    @Override
    public List<Column> columns() {
        return Stream.concat(
                        Stream.of(Column.ofSteps(x, steps)),
                        panels.stream().map(panel -> Column.of(panel.quantity(), panel.values())))
                .toList();
    }

    public Table table() {
        return new Table(title, columns(), held, cautions);
    }

    /** The table with at most so many steps, evenly chosen, the first among them; the title says how many there are. */
    public Table table(int most) {
        int stride = (steps.size() + most - 1) / most;
        if (stride <= 1) {
            return table();
        }
        int rows = (steps.size() - 1) / stride + 1;
        List<Column> chosen = Stream.concat(
                        Stream.of(Column.ofSteps(x, every(stride, rows, steps))),
                        panels.stream().map(panel -> Column.of(panel.quantity(), every(stride, rows, panel.values()))))
                .toList();
        return new Table(title + "; " + rows + " of " + steps.size() + " steps", chosen, held, cautions);
    }

    private static Numbers every(int stride, int rows, Numbers all) {
        return Numbers.generate(rows, i -> all.at(i * stride));
    }
}
