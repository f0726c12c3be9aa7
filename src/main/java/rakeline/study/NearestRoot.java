package rakeline.study;

import java.util.HashMap;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import org.hipparchus.analysis.solvers.AllowedSolution;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.hipparchus.exception.MathIllegalStateException;
import rakeline.quantity.Range;

/** The root of a function that lies nearest to a guess; where the function has no value it returns NaN. */
final class NearestRoot {
    private static final double GROWTH = 1.5;
    private static final int EVALUATIONS = 200;

    /** What is left at a root is below this share of the change across it; more is a jump. */
    private static final double JUMP = 1e-6;

    private final DoubleUnaryOperator function;
    private final Range range;
    private final BracketingNthOrderBrentSolver solver;

    /**
     * A search.
     *
     * @param tolerance of the root, absolute
     */
    NearestRoot(DoubleUnaryOperator function, Range range, double tolerance) {
        this.function = remembering(function);
        this.range = range;
        this.solver = new BracketingNthOrderBrentSolver(1e-14, tolerance, 1e-13, 5);
    }

    /** The search comes back to ends and root, and each value may cost a whole bike. */
    private static DoubleUnaryOperator remembering(DoubleUnaryOperator function) {
        Map<Double, Double> known = new HashMap<>();
        return x -> known.computeIfAbsent(x, function::applyAsDouble);
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
        Stretch up = new Stretch(middle, atMiddle, middle, atMiddle, range.to());
        Stretch down = new Stretch(middle, atMiddle, middle, atMiddle, range.from());
        for (double step = firstStep; up.isOpen() || down.isOpen(); step *= GROWTH) {
            up = next(up, step);
            down = next(down, -step);
            OptionalDouble root = nearer(middle, root(up), root(down));
            if (root.isPresent()) {
                return root;
            }
        }
        return OptionalDouble.empty();
    }

    private static OptionalDouble nearer(double middle, OptionalDouble above, OptionalDouble below) {
        if (above.isEmpty() || below.isEmpty()) {
            return above.isPresent() ? above : below;
        }
        return above.getAsDouble() - middle <= middle - below.getAsDouble() ? above : below;
    }

    private Stretch next(Stretch stretch, double step) {
        if (!stretch.isOpen()) {
            return new Stretch(stretch.end, Double.NaN, stretch.end, Double.NaN, stretch.end);
        }
        double there = stretch.next + step;
        double next = step > 0 ? Math.min(stretch.end, there) : Math.max(stretch.end, there);
        return new Stretch(stretch.next, stretch.atNext, next, function.applyAsDouble(next), stretch.end);
    }

    /** The root that was crossed; none where nothing was, or where the function only jumps over zero. */
    private OptionalDouble root(Stretch stretch) {
        if (!stretch.isCrossed()) {
            return OptionalDouble.empty();
        }
        double root = stretch.atNext == 0 ? stretch.next : solved(stretch);
        double left = Math.abs(function.applyAsDouble(root));
        return left <= JUMP * Math.max(1, Math.abs(stretch.atNext - stretch.atLast))
                ? OptionalDouble.of(root)
                : OptionalDouble.empty();
    }

    private double solved(Stretch stretch) {
        try {
            return solver.solve(
                    EVALUATIONS,
                    function::applyAsDouble,
                    Math.min(stretch.last, stretch.next),
                    Math.max(stretch.last, stretch.next),
                    AllowedSolution.ANY_SIDE);
        } catch (MathIllegalStateException e) {
            // the function has no value on the way, or jumps: what was crossed is no root
            return Double.NaN;
        }
    }

    /** The last step of the walk to one side, and where that side ends. */
    private record Stretch(double last, double atLast, double next, double atNext, double end) {
        boolean isOpen() {
            return next != end;
        }

        boolean isCrossed() {
            return atNext == 0 || atLast * atNext < 0;
        }
    }
}
