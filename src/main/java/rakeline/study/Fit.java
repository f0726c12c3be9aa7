package rakeline.study;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import rakeline.geometry.Bike;
import rakeline.geometry.Setting;
import rakeline.quantity.Input;
import rakeline.quantity.Range;

/** One number of a chart set free: what it would have to be for the rest to agree. */
final class Fit {
    private static final int ROUNDS = 12;
    private static final double FLAT = 1e-9;
    private static final double EXACT = 1e9;
    private static final double[] TO_STEP = {1, 0.5, 0.1, 0.01, 0.001};

    private final ChartedBike chart;
    private final Rounding rounding;
    private final Setting setting;

    Fit(ChartedBike chart, Rounding rounding, Setting setting) {
        this.chart = chart;
        this.rounding = rounding;
        this.setting = setting;
    }

    /** Where the differences are least, in units of their rounding; none where the number does not tell on any. */
    OptionalDouble best() {
        double value = charted();
        for (int i = 0; i < ROUNDS; i++) {
            double[] slope = slope(value);
            double steepness = rounding.square(slope);
            if (!(steepness > FLAT)) {
                return OptionalDouble.empty();
            }
            value = clamped(value - rounding.product(slope, left(value)) / steepness);
        }
        return OptionalDouble.of(value);
    }

    /** The value nearest to one that brings every residual within its tolerance, to the printed step where possible. */
    OptionalDouble settled(double value) {
        double inside = clamped(nearestWithin(value));
        return Arrays.stream(TO_STEP)
                .map(part -> toStep(inside, part * step()))
                .filter(this::agrees)
                .findFirst();
    }

    Bike bike() {
        return chart.bike();
    }

    double charted() {
        return setting.valueIn(chart.bike());
    }

    /** The differences that a value leaves. */
    double[] left(double value) {
        return chart.differences(changed(value));
    }

    /** What rounding makes of the differences that a value leaves, compared with none at all. */
    double likelihood(double value) {
        return Math.exp(-rounding.square(left(value)) / 2);
    }

    /** How far a value may lie from the best one for its differences to scatter alike: one standard deviation. */
    double spread(double value) {
        return 1 / Math.sqrt(rounding.square(slope(value)));
    }

    /** Whether a value brings every residual within its tolerance, and is not the charted one. */
    boolean agrees(double value) {
        return value != charted()
                && setting.quantity().accepted().contains(value)
                && chart.on(changed(value)).residuals().stream().allMatch(Residual::isWithin);
    }

    private double nearestWithin(double value) {
        List<Residual> residuals = chart.residuals();
        double[] left = left(value);
        double[] slope = slope(value);
        double least = Double.NEGATIVE_INFINITY;
        double most = Double.POSITIVE_INFINITY;
        for (int i = 0; i < left.length; i++) {
            double middle = -left[i] / slope[i];
            double reach = residuals.get(i).tolerance() / Math.abs(slope[i]);
            least = Double.isFinite(reach) ? Math.max(least, middle - reach) : least;
            most = Double.isFinite(reach) ? Math.min(most, middle + reach) : most;
        }
        return least > most ? value : value + Math.max(least, Math.min(most, 0));
    }

    private double step() {
        return chart.step(setting.inputs().get(0));
    }

    private static double toStep(double value, double step) {
        return Math.rint(Math.rint(value / step) * step * EXACT) / EXACT;
    }

    private double clamped(double value) {
        Range accepted = setting.quantity().accepted();
        return Math.max(accepted.from(), Math.min(accepted.to(), value));
    }

    private double[] slope(double value) {
        return chart.falls(setting, value);
    }

    private Bike changed(double value) {
        Map<Input, Double> changes = new HashMap<>();
        setting.inputs().forEach(input -> changes.put(input, value));
        return chart.bike().redraw(changes);
    }
}
