package rakeline.study;

import java.util.Arrays;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import org.hipparchus.exception.MathIllegalStateException;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.RealMatrix;
import rakeline.quantity.Numbers;

/**
 * Goes downhill from a place to where the sum of the squared misses is least, within the unit cube. Source of the
 * method: Marquardt 1963, with the numbers that a wall holds taken out of the step.
 */
final class LeastMiss {
    private static final int STEPS = 80;
    private static final double DIFFERENCE = 1e-6;
    private static final double EASIEST = 1e-12;
    private static final double HARDEST = 1e10;

    /** A sum of squares that no measure can tell from 0. */
    private static final double NOTHING = 1e-24;

    private static final double STILL = 1e-13;

    private final UnaryOperator<Numbers> misses;

    /**
     * A descent.
     *
     * @param misses at a place of the unit cube, one for each target; NaN where there is none
     */
    LeastMiss(UnaryOperator<Numbers> misses) {
        this.misses = misses;
    }

    /** Where it stands: the place and the misses there. */
    record Spot(Numbers place, Numbers misses) {
        double sum() {
            return misses.stream().map(miss -> miss * miss).sum();
        }

        boolean isKnown() {
            return !Double.isNaN(sum());
        }

        /** The largest distance to another along any number. */
        double distance(Numbers other) {
            double most = 0;
            for (int i = 0; i < other.size(); i++) {
                most = Math.max(most, Math.abs(place.at(i) - other.at(i)));
            }
            return most;
        }
    }

    Spot spot(Numbers place) {
        return new Spot(place, misses.apply(place));
    }

    /** The end of the way down; the start itself where it has no value. */
    Spot from(Numbers start) {
        Spot here = spot(start);
        double damping = 1e-9;
        for (int step = 0; step < STEPS && isOpen(here, damping); step++) {
            Spot next = next(here, damping);
            if (next.sum() < here.sum()) {
                boolean still = here.distance(next.place()) < STILL;
                here = next;
                damping = Math.max(EASIEST, damping / 100);
                if (still) {
                    return here;
                }
            } else {
                damping = Math.max(damping, 1e-9) * 30;
            }
        }
        return here;
    }

    private static boolean isOpen(Spot here, double damping) {
        return here.isKnown() && here.sum() > NOTHING && damping < HARDEST;
    }

    private Spot next(Spot here, double damping) {
        RealMatrix slopes = slopes(here);
        double[] downhill = slopes.transpose().operate(here.misses().toArray());
        double[] to = here.place().toArray();
        int[] free = free(to, downhill);
        if (free.length == 0) {
            return here;
        }
        double[] step = step(slopes, downhill, free, damping);
        for (int i = 0; i < free.length; i++) {
            to[free[i]] = Math.min(1, Math.max(0, to[free[i]] - step[i]));
        }
        return spot(Numbers.of(to));
    }

    /** The numbers that do not press against an end of their range. */
    private static int[] free(double[] at, double... downhill) {
        return IntStream.range(0, at.length)
                .filter(i -> !(at[i] <= 0 && downhill[i] > 0) && !(at[i] >= 1 && downhill[i] < 0))
                .toArray();
    }

    /** The damped normal equations of the free numbers, solved. */
    private static double[] step(RealMatrix slopes, double[] downhill, int[] free, double damping) {
        RealMatrix normal = slopes.transpose().multiply(slopes).getSubMatrix(free, free);
        double add = damping * Math.max(normal.getTrace(), Double.MIN_NORMAL);
        for (int i = 0; i < free.length; i++) {
            normal.addToEntry(i, i, add);
        }
        return solved(normal, Arrays.stream(free).mapToDouble(i -> downhill[i]).toArray());
    }

    private static double[] solved(RealMatrix normal, double... right) {
        try {
            return new LUDecomposition(normal, 0)
                    .getSolver()
                    .solve(new ArrayRealVector(right, false))
                    .toArray();
        } catch (MathIllegalStateException | IllegalArgumentException e) {
            // nothing depends on the numbers here: stay
            return new double[right.length];
        }
    }

    /** Central differences; to one side where the other has no value. */
    private RealMatrix slopes(Spot here) {
        int targets = here.misses().size();
        RealMatrix slopes = new Array2DRowRealMatrix(targets, here.place().size());
        for (int i = 0; i < here.place().size(); i++) {
            Spot up = orHere(moved(here, i, DIFFERENCE), here);
            Spot down = orHere(moved(here, i, -DIFFERENCE), here);
            double apart = up.place().at(i) - down.place().at(i);
            for (int target = 0; target < targets; target++) {
                double slope =
                        apart == 0 ? 0 : (up.misses().at(target) - down.misses().at(target)) / apart;
                slopes.setEntry(target, i, slope);
            }
        }
        return slopes;
    }

    private Spot moved(Spot from, int i, double by) {
        double[] at = from.place().toArray();
        at[i] = Math.min(1, Math.max(0, at[i] + by));
        return spot(Numbers.of(at));
    }

    private static Spot orHere(Spot moved, Spot here) {
        return moved.isKnown() ? moved : here;
    }
}
