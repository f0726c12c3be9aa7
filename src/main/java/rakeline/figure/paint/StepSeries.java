package rakeline.figure.paint;

import java.util.stream.IntStream;
import org.jfree.data.DomainOrder;
import org.jfree.data.xy.AbstractXYDataset;
import rakeline.quantity.Numbers;

/** One panel's values over the steps, as the plotting library reads them; nothing is copied. */
final class StepSeries extends AbstractXYDataset {
    private static final long serialVersionUID = 1L;

    private final transient Numbers steps;
    private final transient Numbers values;
    private final DomainOrder order;

    StepSeries(Numbers steps, Numbers values) {
        this.steps = steps;
        this.values = values;
        this.order = orderOf(steps);
    }

    private static DomainOrder orderOf(Numbers steps) {
        boolean ascending = IntStream.range(1, steps.size()).allMatch(i -> steps.at(i) >= steps.at(i - 1));
        return ascending ? DomainOrder.ASCENDING : DomainOrder.NONE;
    }

    @Override
    public DomainOrder getDomainOrder() {
        return order;
    }

    @Override
    public int getSeriesCount() {
        return 1;
    }

    @Override
    public Comparable<?> getSeriesKey(int series) {
        return series;
    }

    @Override
    public int getItemCount(int series) {
        return Math.min(steps.size(), values.size());
    }

    @Override
    public Number getX(int series, int item) {
        return getXValue(series, item);
    }

    @Override
    public Number getY(int series, int item) {
        return getYValue(series, item);
    }

    @Override
    public double getXValue(int series, int item) {
        return steps.at(item);
    }

    @Override
    public double getYValue(int series, int item) {
        double value = values.at(item);
        return Double.isFinite(value) ? value : Double.NaN;
    }
}
