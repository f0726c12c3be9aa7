package rakeline.figure;

import java.util.List;
import java.util.Optional;
import java.util.function.IntUnaryOperator;
import java.util.stream.Stream;
import rakeline.quantity.Caution;
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
        List<Caution> cautions,
        Basis basis)
        implements Figure {

    /**
     * One measure over the steps; limits to draw are the quantity's own.
     *
     * @param values as many as there are steps; NaN is a gap
     * @param here the measure at {@link Chart#here()}, or NaN
     * @param band how far it may be off, where that is known
     */
    public record Panel(Quantity quantity, Numbers values, double here, Optional<Band> band) {
        /** Without a band. */
        public Panel(Quantity quantity, Numbers values, double here) {
            this(quantity, values, here, Optional.empty());
        }

        /** How far the measure may be off at a step, to either side; NaN where that is not known. */
        public double off(int step) {
            return band.map(some -> some.halves().at(step)).orElse(Double.NaN);
        }

        private Stream<Column> columns() {
            return Stream.concat(Stream.of(Column.of(quantity, values)), band.map(this::column).stream());
        }

        private Column column(Band some) {
            Quantity off = quantity.named("standardUncertainty." + quantity.key(), "± " + quantity.label());
            return Column.of(off, some.halves(), quantity.decimals() + 1);
        }

        private Panel at(int count, IntUnaryOperator step) {
            return new Panel(
                    quantity,
                    every(count, step, values),
                    here,
                    band.map(some -> new Band(every(count, step, some.halves()), some.words())));
        }
    }

    /**
     * A band about a curve.
     *
     * @param halves half its width at each step, 0 and up; NaN where there is none
     * @param words what it means
     */
    public record Band(Numbers halves, String words) {}

    /** A stretch of steps without a value. */
    public record Gap(int step, String key, String reason) {}

    /** About no bicycle in particular. */
    public Chart(
            String title,
            Quantity x,
            Numbers steps,
            double here,
            List<Panel> panels,
            List<Gap> gaps,
            String held,
            List<Caution> cautions) {
        this(title, x, steps, here, panels, gaps, held, cautions, Basis.NONE);
    }

    public Chart {
        panels = List.copyOf(panels);
        gaps = List.copyOf(gaps);
        cautions = List.copyOf(cautions);
    }

    /** The same, about this bicycle. */
    public Chart about(Basis other) {
        return new Chart(title, x, steps, here, panels, gaps, held, cautions, other);
    }

    @Override
    public Chart withCautions(List<Caution> others) {
        return new Chart(title, x, steps, here, panels, gaps, held, others, basis);
    }

    @Override
    public List<Column> columns() {
        return Stream.concat(
                        Stream.of(Column.ofSteps(x, steps)), panels.stream().flatMap(Panel::columns))
                .toList();
    }

    /** What its bands mean, each once. */
    public List<String> bands() {
        return panels.stream()
                .flatMap(panel -> panel.band().stream())
                .map(Band::words)
                .distinct()
                .toList();
    }

    public Table table() {
        return new Table(title, columns(), held, cautions, basis);
    }

    /** The table with at most so many steps, evenly chosen, the first among them; the title says how many there are. */
    public Table table(int most) {
        int stride = (steps.size() + most - 1) / most;
        if (stride <= 1) {
            return table();
        }
        int rows = (steps.size() - 1) / stride + 1;
        List<Column> chosen = Stream.concat(
                        Stream.of(Column.ofSteps(x, every(rows, i -> i * stride, steps))),
                        panels.stream()
                                .flatMap(
                                        panel -> panel.at(rows, i -> i * stride).columns()))
                .toList();
        return new Table(title + "; " + rows + " of " + steps.size() + " steps", chosen, held, cautions, basis);
    }

    private static Numbers every(int count, IntUnaryOperator step, Numbers all) {
        return Numbers.generate(count, i -> all.at(step.applyAsInt(i)));
    }
}
