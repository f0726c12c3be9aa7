package rakeline.figure.paint;

import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import rakeline.figure.Chart.Panel;
import rakeline.quantity.Limit;
import rakeline.quantity.Quantity;
import rakeline.quantity.Range;

/** The range of y that a panel shows: its values in view with some air, and limits that are in or near them. */
final class PanelRange {
    /** How far from the values a limit may lie and still be shown, as a share of their range. */
    private static final double NEAR = 0.3;

    private static final double AIR = 0.1;

    private PanelRange() {}

    /** None where there is no value in view. */
    static Optional<Range> of(Panel panel, Steps steps, double here) {
        DoubleSummaryStatistics seen = DoubleStream.concat(
                        steps.inView().boxed().flatMapToDouble(i -> ends(panel, i)),
                        steps.range().contains(here) ? DoubleStream.of(panel.here()) : DoubleStream.empty())
                .filter(Double::isFinite)
                .summaryStatistics();
        return seen.getCount() == 0
                ? Optional.empty()
                : Optional.of(aired(withLimits(panel.quantity(), opened(panel.quantity(), seen))));
    }

    /** The value at a step, and the edges of the band about it. */
    private static DoubleStream ends(Panel panel, int step) {
        double value = panel.values().at(step);
        double off = panel.off(step);
        return DoubleStream.of(value, value - off, value + off);
    }

    /** The limits that lie in a range. */
    static List<Limit> limitsIn(Quantity quantity, Range range) {
        return quantity.limits().stream()
                .filter(limit -> range.contains(limit.value()))
                .toList();
    }

    /** No narrower than a few of the last shown decimals, so that a constant shows as one. */
    private static Range opened(Quantity quantity, DoubleSummaryStatistics seen) {
        double least = Math.max(5 * Math.pow(10, -quantity.decimals()), 1e-9 * Math.abs(seen.getMax()));
        double missing = Math.max(0, least - (seen.getMax() - seen.getMin())) / 2;
        return new Range(seen.getMin() - missing, seen.getMax() + missing);
    }

    private static Range withLimits(Quantity quantity, Range values) {
        double near = NEAR * (values.to() - values.from());
        Range around = new Range(values.from() - near, values.to() + near);
        double from = values.from();
        double to = values.to();
        for (Limit limit : limitsIn(quantity, around)) {
            from = Math.min(from, limit.value());
            to = Math.max(to, limit.value());
        }
        return new Range(from, to);
    }

    private static Range aired(Range range) {
        double air = AIR * (range.to() - range.from());
        return new Range(range.from() - air, range.to() + air);
    }
}
