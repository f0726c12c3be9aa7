package rakeline.study;

import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;

/**
 * How far rounding scatters a computed function about the smooth one that it stands for: from fourth differences of
 * values so close together that nothing else is left in them. Source of the method: Moré and Wild 2011, Estimating
 * computational noise, SIAM J. Sci. Comput. 33.
 *
 * @param function NaN where it has no value
 * @param scale the largest number that was subtracted to make its values
 * @param width of the range in which it is looked at
 */
record RoundingNoise(DoubleUnaryOperator function, double scale, double width) {
    private static final int SPACINGS = 32;
    private static final int VALUES = 17;
    private static final int ORDER = 4;

    /** (2k)!/(k!)² at order 4: the variance of a fourth difference over that of one value. */
    private static final double SUM_OF_SQUARES = 70;

    /** Of the many values about a turn the lowest is taken: none of them lies further out than so many deviations. */
    private static final double DEVIATIONS = 16;

    private static final double ULPS = 4;

    /**
     * What may be left at a place by rounding alone, of the values or of the place itself; never below a few units in the
     * last place. Each side is looked at for itself, so that a jump at the place is no rounding.
     */
    double at(double x) {
        double step = Math.max(SPACINGS * Math.ulp(x), width * 0x1p-36);
        return IntStream.of(-1, 1)
                .mapToDouble(side -> beside(x, side * step))
                .filter(value -> !Double.isNaN(value))
                .map(value -> Math.max(least(), value))
                .max()
                .orElse(least());
    }

    /** A few units in the last place of the largest number that was subtracted. */
    double least() {
        return ULPS * Math.ulp(Math.max(scale, Double.MIN_NORMAL));
    }

    /** What rounding leaves of values to one side of a place; NaN where one is missing. */
    private double beside(double x, double step) {
        double[] values = IntStream.rangeClosed(1, VALUES)
                .mapToDouble(i -> function.applyAsDouble(x + i * step))
                .toArray();
        double ofPlace = Math.abs(values[VALUES - 1] - values[0]) * ULPS * Math.ulp(x) / Math.abs((VALUES - 1) * step);
        return DEVIATIONS * scatter(values) + ofPlace;
    }

    /** The standard deviation of values a step apart. */
    private static double scatter(double... values) {
        double[] differences = values.clone();
        for (int order = 1; order <= ORDER; order++) {
            for (int i = 0; i < VALUES - order; i++) {
                differences[i] = differences[i + 1] - differences[i];
            }
        }
        double squares = IntStream.range(0, VALUES - ORDER)
                .mapToDouble(i -> differences[i] * differences[i])
                .average()
                .orElseThrow();
        return Math.sqrt(squares / SUM_OF_SQUARES);
    }
}
