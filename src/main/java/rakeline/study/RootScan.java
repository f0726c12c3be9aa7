package rakeline.study;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.DoubleStream;
import org.hipparchus.analysis.solvers.AllowedSolution;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.hipparchus.exception.MathIllegalStateException;
import rakeline.quantity.Numbers;

/**
 * All roots of a function that may have gaps (NaN), jumps and kinks. The function is looked at in so many places, and
 * in between wherever it crosses zero, dips towards it or ends: two roots between neighbouring places are found where
 * the function turns between them, a touching root as well, and a root hard by the edge of a gap. A jump over zero is
 * no root.
 */
final class RootScan {
    private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;
    private static final int NARROWINGS = 60;
    private static final int EVALUATIONS = 200;
    private static final int FINER = 16;
    private static final int DEPTH = 2;

    /** What is left at a crossing is below this share of the change across it; more is a jump. */
    private static final double JUMP = 1e-6;

    private final DoubleUnaryOperator function;
    private final double width;
    private final double touch;
    private final double[] nearest = {Double.NaN, Double.POSITIVE_INFINITY};
    private final List<Double> roots = new ArrayList<>();
    private final List<Stretch> stretches = new ArrayList<>();

    /** Everything between two numbers is a root. */
    record Stretch(double from, double to) {}

    private record Node(double x, double y) {
        boolean isKnown() {
            return !Double.isNaN(y);
        }
    }

    private RootScan(DoubleUnaryOperator function, double width, double touch) {
        this.function = function;
        this.width = width;
        this.touch = touch;
    }

    /**
     * Scans a function.
     *
     * @param places where it is looked at, upward
     * @param touch what may be left at a root that is only touched
     */
    static RootScan of(DoubleUnaryOperator function, Numbers places, double touch) {
        RootScan scan = new RootScan(function, places.at(places.size() - 1) - places.at(0), touch);
        scan.scan(places.stream(), DEPTH);
        return scan;
    }

    /** The roots, upward; of a stretch its ends. */
    Numbers roots() {
        List<Double> apart = new ArrayList<>();
        roots.stream().sorted().forEach(root -> {
            if (apart.isEmpty() || root - apart.get(apart.size() - 1) > 1e-9 * width) {
                apart.add(root);
            }
        });
        return Numbers.of(apart.stream().mapToDouble(Double::doubleValue).toArray());
    }

    List<Stretch> stretches() {
        return List.copyOf(stretches);
    }

    /** Where the function came nearest to zero; none where it has no value anywhere. */
    OptionalDouble nearest() {
        return Double.isNaN(nearest[0]) ? OptionalDouble.empty() : OptionalDouble.of(nearest[0]);
    }

    private void scan(DoubleStream places, int depth) {
        List<Node> run = new ArrayList<>();
        Node before = new Node(Double.NaN, Double.NaN);
        for (Node node : places.mapToObj(this::node).toList()) {
            if (node.isKnown()) {
                if (run.isEmpty() && !Double.isNaN(before.x())) {
                    run.add(edge(node, before));
                }
                run.add(node);
            } else if (!run.isEmpty()) {
                run.add(edge(before, node));
                finish(run, depth);
            }
            before = node;
        }
        finish(run, depth);
    }

    private Node node(double x) {
        double y = function.applyAsDouble(x);
        if (Math.abs(y) < nearest[1]) {
            nearest[0] = x;
            nearest[1] = Math.abs(y);
        }
        return new Node(x, y);
    }

    /** The last place that has a value, between one that has and one that has not. */
    private Node edge(Node known, Node unknown) {
        Node last = known;
        double beyond = unknown.x();
        for (int i = 0; i < NARROWINGS && last.x() != beyond; i++) {
            Node middle = node((last.x() + beyond) / 2);
            if (middle.isKnown()) {
                last = middle;
            } else {
                beyond = middle.x();
            }
        }
        return last;
    }

    /** Looks through a run of places that have values, and empties it. */
    private void finish(List<Node> run, int depth) {
        List<Node> nodes = List.copyOf(run);
        run.clear();
        int i = 0;
        while (i < nodes.size()) {
            int last = lastOfStretch(nodes, i);
            if (last > i) {
                stretch(nodes, i, last);
            } else {
                lookAt(nodes, i, depth);
            }
            i = last + 1;
        }
    }

    private int lastOfStretch(List<Node> nodes, int first) {
        int last = first;
        if (isZero(nodes.get(first))) {
            while (last + 1 < nodes.size()
                    && nodes.get(last + 1).x() > nodes.get(last).x()
                    && isZero(nodes.get(last + 1))) {
                last++;
            }
        }
        return last;
    }

    private boolean isZero(Node node) {
        return Math.abs(node.y()) <= touch;
    }

    private void stretch(List<Node> nodes, int first, int last) {
        double from = first == 0
                ? nodes.get(0).x()
                : endOfStretch(nodes.get(first), nodes.get(first - 1)).x();
        double to = last == nodes.size() - 1
                ? nodes.get(last).x()
                : endOfStretch(nodes.get(last), nodes.get(last + 1)).x();
        stretches.add(new Stretch(from, to));
        roots.add(from);
        roots.add(to);
    }

    private Node endOfStretch(Node inside, Node outside) {
        Node last = inside;
        double beyond = outside.x();
        for (int i = 0; i < NARROWINGS; i++) {
            Node middle = node((last.x() + beyond) / 2);
            if (isZero(middle)) {
                last = middle;
            } else {
                beyond = middle.x();
            }
        }
        return last;
    }

    /** What lies at a place and between it and the next. */
    private void lookAt(List<Node> nodes, int i, int depth) {
        Node here = nodes.get(i);
        boolean atEnd = i == 0 || i == nodes.size() - 1;
        if (here.y() == 0 || (atEnd && isZero(here))) {
            roots.add(here.x());
            return;
        }
        if (i + 1 < nodes.size() && here.y() * nodes.get(i + 1).y() < 0) {
            crossing(here, nodes.get(i + 1), depth);
        }
        Node before = nodes.get(Math.max(0, i - 1));
        Node after = nodes.get(Math.min(nodes.size() - 1, i + 1));
        if (before.x() < after.x() && isDip(before, here, after)) {
            dip(before, here, after, depth);
        }
    }

    private static boolean isDip(Node before, Node here, Node after) {
        double sign = Math.signum(here.y());
        double left = sign * (before.y() - here.y());
        double right = sign * (after.y() - here.y());
        return left >= 0 && right >= 0 && left + right > 0;
    }

    /** A turn towards zero: no root, one that is touched, or two. */
    private void dip(Node before, Node here, Node after, int depth) {
        double sign = Math.signum(here.y());
        Node least = least(before, after, sign);
        Node lowest = sign * least.y() < sign * here.y() ? least : here;
        if (isZero(lowest)) {
            roots.add(lowest.x());
        } else if (sign * lowest.y() < 0) {
            crossing(before, lowest, depth);
            crossing(lowest, after, depth);
        }
    }

    /** Golden section. */
    private Node least(Node before, Node after, double sign) {
        double from = before.x();
        double to = after.x();
        Node left = node(to - GOLDEN * (to - from));
        Node right = node(from + GOLDEN * (to - from));
        for (int i = 0; i < NARROWINGS; i++) {
            if (isLower(left, right, sign)) {
                to = right.x();
                right = left;
                left = node(to - GOLDEN * (to - from));
            } else {
                from = left.x();
                left = right;
                right = node(from + GOLDEN * (to - from));
            }
        }
        return isLower(left, right, sign) ? left : right;
    }

    private static boolean isLower(Node one, Node other, double sign) {
        return !other.isKnown() || sign * one.y() < sign * other.y();
    }

    /** What lies between two signs is looked at more closely, since it may be three roots, or a jump and a root. */
    private void crossing(Node one, Node other, int depth) {
        if (depth > 0) {
            scan(Steps.evenly(one.x(), other.x(), FINER).stream(), depth - 1);
        } else {
            solved(one, other).ifPresent(roots::add);
        }
    }

    private OptionalDouble solved(Node one, Node other) {
        try {
            double root = new BracketingNthOrderBrentSolver(1e-15, 1e-12 * width, 1e-15, 5)
                    .solve(EVALUATIONS, this::valueAt, one.x(), other.x(), AllowedSolution.ANY_SIDE);
            double left = Math.abs(valueAt(root));
            return left <= JUMP * Math.max(1, Math.abs(other.y() - one.y()))
                    ? OptionalDouble.of(root)
                    : OptionalDouble.empty();
        } catch (MathIllegalStateException e) {
            // a gap on the way: what was crossed may be no root
            return OptionalDouble.empty();
        }
    }

    private double valueAt(double x) {
        return node(x).y();
    }
}
