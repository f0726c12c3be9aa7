package rakeline.figure.paint;

import java.util.stream.IntStream;
import rakeline.figure.Chart;
import rakeline.quantity.Numbers;
import rakeline.quantity.Range;

/** A chart's steps as a view sees them. */
record Steps(Numbers all, Range range) {

    static Steps of(Chart chart, View view) {
        return new Steps(chart.steps(), view.isZoomed() ? view.x() : whole(chart));
    }

    /** Those in the window, and the neighbours to which a line leaves it. */
    IntStream inView() {
        return IntStream.range(0, all.size()).filter(i -> meets(i - 1, i) || meets(i, i) || meets(i, i + 1));
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
        double[] finite = chart.steps().stream().filter(Double::isFinite).toArray();
        if (finite.length == 0) {
            return new Range(0, 1);
        }
        double least = finite[0];
        double most = finite[0];
        for (double step : finite) {
            least = Math.min(least, step);
            most = Math.max(most, step);
        }
        return least < most ? new Range(least, most) : widened(least, chart.x().decimals());
    }

    private static Range widened(double only, int decimals) {
        double room = Math.max(Math.abs(only) * 1e-6, Math.pow(10, -decimals) * 5);
        return new Range(only - room, only + room);
    }
}
