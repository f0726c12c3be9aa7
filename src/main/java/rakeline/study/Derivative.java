package rakeline.study;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.DoubleStream;
import rakeline.quantity.Quantity;
import rakeline.quantity.Range;

/**
 * The slope of a function at 0 and what it is good to: differences over shorter and shorter steps, extrapolated to none,
 * until they agree or rounding takes over; to both sides where the function has values there, else to one. Source of the
 * method: Ridders 1982, Accurate computation of F'(x) and F'(x)F''(x), Advances in Engineering Software 4.
 *
 * @param slope NaN where the function has no value at 0 or to neither side
 * @param error an estimate, in the slope's unit; of a kink half the difference of its two slopes
 */
record Derivative(double slope, double error) {
    private static final Derivative NONE = new Derivative(Double.NaN, Double.NaN);
    private static final int LEVELS = 24;

    /** Slopes that agree to this share are as good as a person reads. */
    static final double FINE = 1e-9;

    /** Slopes that agree to this share are good enough to carry uncertainties, which are known to a tenth. */
    static final double COARSE = 1e-4;

    /** The slopes to both sides of a kink differ over half a step by more than this share of what they do over one. */
    private static final double KEPT = 0.75;

    /** Slopes to both sides that differ by a smaller share are no kink that matters. */
    private static final double SHARP = 1e-4;

    private static final double SETTLED = 0.1;

    /** So many levels without a better slope: rounding has taken over. */
    private static final int PATIENCE = 6;

    /** Less than this is no slope, in units of what the function changes by over the first step. */
    private static final double NOTHING = 1e-12;

    private static final double OF_VALUE = 1.0 / 16;
    private static final double OF_RANGE = 1.0 / 400;
    private static final double LEAST_OF_RANGE = 0x1p-16;
    private static final double UNBOUNDED = 1;

    /** A first step that suits a quantity's size and the range in which it makes sense, in its unit. */
    static double step(Quantity quantity, double value) {
        Range accepted = quantity.accepted();
        double width = accepted.to() - accepted.from();
        double range = Double.isFinite(width) ? width : UNBOUNDED / OF_RANGE;
        return Math.max(LEAST_OF_RANGE * range, Math.min(OF_RANGE * range, OF_VALUE * Math.abs(value)));
    }

    /**
     * The slope at 0.
     *
     * @param function NaN where it has no value; asked for each place once
     * @param step the first, and longest
     * @param enough the share of the slope to which it is good enough
     */
    static Derivative at0(DoubleUnaryOperator function, double step, double enough) {
        Map<Double, Double> known = new HashMap<>();
        DoubleUnaryOperator values = x -> known.computeIfAbsent(x, function::applyAsDouble);
        double here = values.applyAsDouble(0);
        if (Double.isNaN(here)) {
            return NONE;
        }
        Derivative both = new Differences(
                        step, 4, enough, h -> (values.applyAsDouble(h) - values.applyAsDouble(-h)) / (2 * h))
                .extrapolated(h -> apart(values, h));
        return DoubleStream.of(1, -1)
                .mapToObj(side ->
                        new Differences(step, 2, enough, h -> side * (values.applyAsDouble(side * h) - here) / h))
                .reduce(
                        both,
                        (found, side) -> Double.isNaN(found.slope) ? side.extrapolated(h -> 0) : found,
                        (one, other) -> one);
    }

    /** By how much the slopes to both sides differ over a step, halved. */
    private static double apart(DoubleUnaryOperator function, double step) {
        double both = function.applyAsDouble(step) + function.applyAsDouble(-step);
        return Math.abs(both - 2 * function.applyAsDouble(0)) / (2 * step);
    }

    /**
     * Differences over steps that are halved.
     *
     * @param base by what the error of a difference shrinks with each halving, at first
     */
    private record Differences(double step, double base, double enough, DoubleUnaryOperator over) {
        /**
         * The slope to which they run.
         *
         * @param apart how far the slopes to both sides differ over a step
         */
        Derivative extrapolated(DoubleUnaryOperator apart) {
            List<Double> row = List.of();
            Derivative best = NONE;
            double scale = 0;
            int since = 0;
            int level = 0;
            for (; level < LEVELS && since < PATIENCE && !isEnough(best, scale); level++) {
                double slope = over.applyAsDouble(Math.scalb(step, -level));
                List<Double> next = Double.isNaN(slope) ? List.of() : next(row, slope, base);
                Derivative found = best(row, next);
                boolean isBetter = !(found.error >= best.error) && !Double.isNaN(found.slope);
                since = isBetter || !isSettled(row, slope) ? 0 : since + 1;
                best = isBetter ? found : best;
                scale = Math.max(scale, Double.isNaN(slope) ? 0 : Math.abs(slope));
                row = next;
            }
            return best.orKink(apart, Math.scalb(step, 1 - level));
        }

        /** Whether a difference is near the one over the step before, so that the steps are short enough to go by. */
        private static boolean isSettled(List<Double> row, double slope) {
            return !row.isEmpty() && Math.abs(slope - row.get(0)) < SETTLED * Math.abs(slope);
        }

        private boolean isEnough(Derivative best, double scale) {
            return best.error <= Math.max(enough * Math.abs(best.slope), NOTHING * scale);
        }
    }

    /**
     * At a kink the slopes to both sides stay apart however short the step.
     *
     * @param step the shortest over which the slope was taken
     */
    private Derivative orKink(DoubleUnaryOperator apart, double step) {
        double nearer = apart.applyAsDouble(step);
        boolean isKink = nearer > SHARP * Math.abs(slope) && nearer > KEPT * apart.applyAsDouble(2 * step);
        return isKink ? new Derivative(slope, Math.max(error, nearer)) : this;
    }

    /** The next row of Neville's scheme. */
    private static List<Double> next(List<Double> row, double slope, double base) {
        List<Double> next = new ArrayList<>(List.of(slope));
        double factor = base;
        for (double before : row) {
            double last = next.get(next.size() - 1);
            next.add(last + (last - before) / (factor - 1));
            factor *= base;
        }
        return next;
    }

    /** The value of a row that lies nearest to both from which it was made. */
    private static Derivative best(List<Double> row, List<Double> next) {
        Derivative best = new Derivative(next.isEmpty() ? Double.NaN : next.get(0), Double.POSITIVE_INFINITY);
        for (int i = 1; i < next.size(); i++) {
            double error = Math.max(Math.abs(next.get(i) - next.get(i - 1)), Math.abs(next.get(i) - row.get(i - 1)));
            best = error < best.error ? new Derivative(next.get(i), error) : best;
        }
        return best;
    }
}
