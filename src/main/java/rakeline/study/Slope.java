package rakeline.study;

import java.util.function.DoubleUnaryOperator;

/** The slope of a function at 0: central differences of fourth order; to one side where the other has no value. */
final class Slope {
    private Slope() {}

    /**
     * The slope, or NaN where the function has no value at 0 or to neither side.
     *
     * @param step how far apart the function is looked at
     */
    static double at0(DoubleUnaryOperator function, double step) {
        double up = function.applyAsDouble(step);
        double down = function.applyAsDouble(-step);
        double farUp = function.applyAsDouble(2 * step);
        double farDown = function.applyAsDouble(-2 * step);
        double both = (8 * (up - down) - (farUp - farDown)) / (12 * step);
        if (!Double.isNaN(both)) {
            return both;
        }
        double here = function.applyAsDouble(0);
        double forward = (4 * up - farUp - 3 * here) / (2 * step);
        return Double.isNaN(forward) ? (3 * here - 4 * down + farDown) / (2 * step) : forward;
    }
}
