package rakeline.shell.rack;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import rakeline.quantity.Quantity;
import rakeline.quantity.Range;
import rakeline.quantity.Unit;

/**
 * The sizes in which parts are made, so that a number that is dragged comes to lie on one. Numbers that are no part's go
 * by 1 mm or 0.1°, as charts print them.
 *
 * <p>Source: common practice of the trade (CP).
 */
final class StockSteps {
    private static final Map<String, List<Double>> SIZES = Map.of(
            "crank.lengthMm", list(145, 150, 155, 160, 165, 167.5, 170, 172.5, 175),
            "cockpit.stemLengthMm", list(35, 40, 45, 50, 60, 70, 80, 90, 100, 110, 120, 130, 140),
            "cockpit.stemAngleDeg", bothWays(0, 5, 6, 7, 8, 10, 12, 17, 20, 25, 30, 35),
            "cockpit.headsetCoverMm", list(0, 5, 8, 12, 15, 20),
            "cockpit.spacersMm", by(2.5, 0, 60),
            "cockpit.bar.widthMm", by(20, 340, 460),
            "seatpost.setbackMm", list(0, 10, 15, 20, 25),
            "fork.offsetMm", list(40, 43, 44, 45, 47, 48, 49, 50, 51, 52, 53, 55));

    private StockSteps() {}

    private static List<Double> list(double... sizes) {
        return DoubleStream.of(sizes).boxed().toList();
    }

    private static List<Double> bothWays(double... sizes) {
        return DoubleStream.concat(
                        DoubleStream.of(sizes), DoubleStream.of(sizes).map(size -> 0 - size))
                .distinct()
                .sorted()
                .boxed()
                .toList();
    }

    private static List<Double> by(double step, double from, double to) {
        return IntStream.rangeClosed(0, (int) Math.round((to - from) / step))
                .mapToObj(i -> from + i * step)
                .toList();
    }

    /** The size that is nearest to a value, within what is accepted. */
    static double nearest(Quantity quantity, double value) {
        Range range = quantity.accepted();
        double within = Math.max(range.from(), Math.min(range.to(), value));
        return sizes(quantity).stream()
                .min(Comparator.comparingDouble(size -> Math.abs(size - within)))
                .orElseGet(() -> rounded(quantity, within));
    }

    /** The size so many steps from a value: up for a positive number, down for a negative one. */
    static double along(Quantity quantity, double value, int steps) {
        List<Double> sizes = sizes(quantity);
        if (sizes.isEmpty()) {
            return nearest(quantity, value + steps * step(quantity));
        }
        List<Double> further = steps > 0
                ? sizes.stream().filter(size -> size > value).toList()
                : sizes.stream()
                        .filter(size -> size < value)
                        .sorted(Comparator.reverseOrder())
                        .toList();
        int place = Math.min(Math.abs(steps), further.size()) - 1;
        return place < 0 ? value : further.get(place);
    }

    private static List<Double> sizes(Quantity quantity) {
        return SIZES.getOrDefault(quantity.key(), List.of());
    }

    private static double rounded(Quantity quantity, double value) {
        double parts = 1 / step(quantity);
        return Math.rint(value * parts) / parts + 0.0; // no negative zero
    }

    private static double step(Quantity quantity) {
        return quantity.unit() == Unit.MILLIMETRE ? 1 : 0.1;
    }
}
