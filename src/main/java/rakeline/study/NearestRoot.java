package rakeline.study;

import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import org.hipparchus.analysis.solvers.AllowedSolution;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import rakeline.quantity.Range;

/** The root of a function that lies nearest to a guess; where the function has no value it returns NaN. */
final class NearestRoot {
    private static final double GROWTH = 1.5;
    private static final int EVALUATIONS = 200;

    private final DoubleUnaryOperator function;
    private final Range range;
    private final BracketingNthOrderBrentSolver solver;

    /**
     * A search.
     *
     * @param tolerance of the root, absolute
     */
    NearestRoot(DoubleUnaryOperator function, Range range, double tolerance) {
        this.function = function;
        this.range = range;
        this.solver = new BracketingNthOrderBrentSolver(1e-14, tolerance, 1e-13, 5);
    }

    /**
     * Walks outward from the guess on both sides, in growing steps, until the sign changes.
     *
     * @param firstStep how far the first step goes
     */
    OptionalDouble from(double guess, double firstStep) {
        double middle = Math.min(range.to(), Math.max(range.from(), guess));
        double atMiddle = function.applyAsDouble(middle);
        if (atMiddle == 0) {
            return OptionalDouble.of(middle);
        }
        Side up = new Side(middle, atMiddle, range.to());
        Side down = new Side(middle, atMiddle, range.from());
        for (double step = firstStep; up.isOpen() || down.isOpen(); step *= GROWTH) {
            if (up.advance(step) || down.advance(-step)) {
                return OptionalDouble.of(up.crossed ? up.root() : down.root());
            }
        }
        return OptionalDouble.empty();
    }

    /** One direction of the walk. */
    private final class Side {
        private final double end;
        private double last;
        private double atLast;
        private double next;
        private double atNext;
        private boolean crossed;

        Side(double start, double atStart, double end) {
            this.last = start;
            this.atLast = atStart;
            this.next = start;
            this.atNext = atStart;
            this.end = end;
        }

        boolean isOpen() {
            return next != end;
        }

        /** Goes on, and tells whether the sign changed on the way. */
        boolean advance(double step) {
            if (!isOpen()) {
                return false;
            }
            last = next;
            atLast = atNext;
            next = step > 0 ? Math.min(end, last + step) : Math.max(end, last + step);
            atNext = function.applyAsDouble(next);
            crossed = atNext == 0 || atLast * atNext < 0;
            return crossed;
        }

        double root() {
            if (atNext == 0) {
                return next;
            }
            return solver.solve(
                    EVALUATIONS,
                    function::applyAsDouble,
                    Math.min(last, next),
                    Math.max(last, next),
                    AllowedSolution.ANY_SIDE);
        }
    }
}
