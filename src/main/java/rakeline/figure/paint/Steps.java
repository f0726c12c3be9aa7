package rakeline.figure.paint;

import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import rakeline.figure.Chart;
import rakeline.quantity.Numbers;
import rakeline.quantity.Range;

/** A chart's steps as a view sees them. */
final class Steps {
    private static final double NARROWEST = 1e-6;

    private final Numbers all;
    private final Range range;
    private final int[] inView;

    private Steps(Numbers all, Range range) {
        this.all = all;
        this.range = range;
        this.inView = IntStream.range(0, all.size())
                .filter(i -> meets(i, i) || meets(i - 1, i) || meets(i, i + 1))
                .toArray();
    }

    static Steps of(Chart chart, View view) {
        Range whole = whole(chart);
        return new Steps(chart.steps(), view.isZoomed() ? zoomed(whole, view.x()) : whole);
    }

    /** The part of the window that has steps; the whole where it is none, or too narrow to be told apart. */
    private static Range zoomed(Range whole, Range window) {
        double from = Math.max(whole.from(), window.from());
        double to = Math.min(whole.to(), window.to());
        return to - from > NARROWEST * (whole.to() - whole.from()) ? new Range(from, to) : whole;
    }

    /** The window on x. */
    Range range() {
        return range;
    }

    /** The steps in the window, and the neighbours to which a line leaves it. */
    IntStream inView() {
        return IntStream.of(inView);
    }

    /** Whether any of the stretch between two steps is in the window. */
    private boolean meets(int from, int to) {
        if (from < 0 || to >= all.size()) {
            return false;
        }
        double one = all.at(from);
        double other = all.at(to);
        return Math.max(one, other) >= range.from() && Math.min(one, other) <= range.to();
    }

    private static Range whole(Chart chart) {
        double least = finite(chart).min().orElse(0);
        double most = finite(chart).max().orElse(1);
        return least < most ? new Range(least, most) : widened(least, chart.x().decimals());
    }

    private static DoubleStream finite(Chart chart) {
        return chart.steps().stream().filter(Double::isFinite);
    }

    private static Range widened(double only, int decimals) {
        double room = Math.max(Math.abs(only) * 1e-6, Math.pow(10, -decimals) * 5);
        return new Range(only - room, only + room);
    }
}
