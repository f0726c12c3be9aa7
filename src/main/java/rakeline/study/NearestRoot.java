package rakeline.study;

import java.util.Comparator;
import java.util.HashMap;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import rakeline.quantity.Range;
import rakeline.study.BracketedRoot.Node;

/** The root of a function that lies nearest to a guess; where the function has no value it returns NaN. */
final class NearestRoot {
    private static final double GROWTH = 1.5;

    /** A touch is taken from the function's course so far to either side, as a share of the range. */
    private static final double REACH = 2e-3;

    private final BracketedRoot solver;
    private final RoundingNoise noise;
    private final Range range;

    /**
     * A search.
     *
     * @param scale the largest number that was subtracted to make the function's values
     */
    NearestRoot(DoubleUnaryOperator function, Range range, double scale) {
        DoubleUnaryOperator remembering = remembering(function);
        this.solver = new BracketedRoot(remembering);
        this.noise = new RoundingNoise(remembering, scale, range.to() - range.from());
        this.range = range;
    }

    /** The search comes back to ends and root, and each value may cost a whole bike. */
    private static DoubleUnaryOperator remembering(DoubleUnaryOperator function) {
        Map<Double, Double> known = new HashMap<>();
        return x -> known.computeIfAbsent(x, function::applyAsDouble);
    }

    /**
     * Walks outward from the guess on both sides, in growing steps, until zero is crossed or touched.
     *
     * @param firstStep how far the first step goes
     */
    OptionalDouble from(double guess, double firstStep) {
        Node middle = solver.node(Math.min(range.to(), Math.max(range.from(), guess)));
        if (middle.y() == 0) {
            return OptionalDouble.of(middle.x());
        }
        Side up = new Side(middle, middle, middle, range.to());
        Side down = new Side(middle, middle, middle, range.from());
        for (double step = firstStep; up.isOpen() || down.isOpen(); step *= GROWTH) {
            up = next(up, step);
            down = next(down, -step);
            Side about = new Side(down.next, middle, up.next, middle.x());
            OptionalDouble root = nearest(middle, crossing(up), crossing(down), turn(up), turn(down), turn(about));
            if (root.isPresent()) {
                return root;
            }
        }
        return OptionalDouble.empty();
    }

    private Side next(Side side, double step) {
        double there = side.next.x() + step;
        double next = step > 0 ? Math.min(side.end, there) : Math.max(side.end, there);
        return new Side(side.last, side.next, side.isOpen() ? solver.node(next) : side.next, side.end);
    }

    private static OptionalDouble nearest(Node middle, DoubleStream... found) {
        return Stream.of(found)
                .flatMap(DoubleStream::boxed)
                .min(Comparator.comparingDouble(root -> Math.abs(root - middle.x())))
                .stream()
                .mapToDouble(Double::doubleValue)
                .findFirst();
    }

    private DoubleStream crossing(Side side) {
        return crossing(side.last, side.next);
    }

    private DoubleStream crossing(Node one, Node other) {
        if (other.y() == 0) {
            return DoubleStream.of(other.x());
        }
        if (!(one.y() * other.y() < 0)) {
            return DoubleStream.empty();
        }
        BracketedRoot.End end = solver.between(one, other);
        return solver.isRoot(end, other.y() - one.y(), noise.least())
                ? DoubleStream.of(end.best().x())
                : DoubleStream.empty();
    }

    /** Where the function turns towards zero between two steps: the places where it is crossed, or the one touched. */
    private DoubleStream turn(Side side) {
        if (!side.isDip()) {
            return DoubleStream.empty();
        }
        Turn turn = new Turn(solver, side.before, side.next, Math.signum(side.last.y()));
        Node lowest = turn.lowest(side.last);
        if (lowest.y() * side.last.y() < 0) {
            return DoubleStream.concat(crossing(side.before, lowest), crossing(lowest, side.next));
        }
        double rounding = noise.at(lowest.x());
        return lowest.size() <= rounding
                ? DoubleStream.of(turn.sharp(lowest, REACH * noise.width(), rounding))
                : DoubleStream.empty();
    }

    /** The last two steps of the walk to one side, and where that side ends. */
    private record Side(Node before, Node last, Node next, double end) {
        boolean isOpen() {
            return next.x() != end;
        }

        /** Whether the function is nearer to zero in the middle than before and after, and has one sign. */
        boolean isDip() {
            return before.x() != last.x()
                    && last.x() != next.x()
                    && before.y() * last.y() > 0
                    && next.y() * last.y() > 0
                    && last.size() <= Math.min(before.size(), next.size());
        }
    }
}
