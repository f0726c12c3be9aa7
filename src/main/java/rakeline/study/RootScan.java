package rakeline.study;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.DoubleUnaryOperator;
import java.util.function.Predicate;
import java.util.stream.DoubleStream;
import rakeline.quantity.Numbers;
import rakeline.study.BracketedRoot.Node;

/**
 * All roots of a function that may have gaps (NaN), jumps and kinks, each once. The function is looked at in so many
 * places, and closer wherever it bends so much that zero may lie between two of them. What counts as zero is what
 * rounding leaves of the function there, and nothing else: a crossing is polished to the last bits, a turn towards zero is
 * one root where it ends at zero, two where it passes, none where it stops before. A jump over zero is no root.
 */
final class RootScan {
    private static final int NARROWINGS = 70;

    /** How often a stretch between two places is halved where it bends. */
    private static final int HALVINGS = 6;

    /** A function that has more bends than these can resolve is looked at no closer. */
    private static final int MOST_VALUES = 20_000;

    /** A value below this share of the largest may be rounding alone. */
    private static final double SMALL = 1e-6;

    /** Roots nearer to each other than this share of the range are one. */
    private static final double SAME = 1e-9;

    /** Rounding is looked at in three places, so far apart. */
    private static final double ABOUT = 1e-6;

    /** A touch is taken from the function's course so far to either side, as a share of the range. */
    private static final double REACH = 2e-3;

    /** A stretch of roots is wider than this share of the range; no smooth touch is as flat. */
    private static final double STRETCH = 1e-3;

    private final BracketedRoot solver = new BracketedRoot(this::valueAt);
    private final DoubleUnaryOperator function;
    private final RoundingNoise noise;
    private final double from;
    private final double width;
    private final List<Node> places;
    private final Map<Double, Double> noiseAt = new HashMap<>();
    private final List<Root> roots = new ArrayList<>();
    private final List<Stretch> stretches = new ArrayList<>();
    private final AtomicReference<Node> nearest = new AtomicReference<>(new Node(Double.NaN, Double.POSITIVE_INFINITY));
    private final AtomicInteger values = new AtomicInteger();
    private final double largest;

    /**
     * A root.
     *
     * @param touching whether the function turns there, and does not cross
     */
    record Root(double at, boolean touching) {}

    /** Everything between two numbers is a root. */
    record Stretch(double from, double to) {
        boolean has(double x) {
            return x >= from && x <= to;
        }
    }

    private RootScan(DoubleUnaryOperator function, Numbers places, double scale) {
        this.function = function;
        this.from = places.at(0);
        this.width = places.at(places.size() - 1) - from;
        this.noise = new RoundingNoise(function, scale, width);
        this.places = places.stream().mapToObj(this::node).toList();
        this.largest = this.places.stream()
                .filter(Node::isKnown)
                .mapToDouble(Node::size)
                .max()
                .orElse(0);
    }

    /**
     * Scans a function.
     *
     * @param places where it is looked at, upward
     * @param scale the largest number that was subtracted to make its values
     */
    static RootScan of(DoubleUnaryOperator function, Numbers places, double scale) {
        RootScan scan = new RootScan(function, places, scale);
        scan.scan(scan.places);
        return scan;
    }

    /** The roots, upward; of a stretch its ends. */
    List<Root> roots() {
        List<Root> apart = new ArrayList<>();
        roots.stream().sorted(Comparator.comparingDouble(Root::at)).forEach(root -> {
            int last = apart.size() - 1;
            if (last >= 0 && isSame(apart.get(last), root)) {
                apart.set(last, surer(apart.get(last), root));
            } else {
                apart.add(root);
            }
        });
        return List.copyOf(apart);
    }

    /** Whether nothing but rounding lies between two roots. */
    private boolean isSame(Root one, Root other) {
        double apart = other.at() - one.at();
        return apart <= SAME * width || (apart <= STRETCH * width && isZero(node((one.at() + other.at()) / 2)));
    }

    private Root surer(Root one, Root other) {
        if (one.touching() != other.touching()) {
            return one.touching() ? other : one;
        }
        return node(other.at()).size() < node(one.at()).size() ? other : one;
    }

    List<Stretch> stretches() {
        return List.copyOf(stretches);
    }

    /** Where the function came nearest to zero; none where it has no value anywhere. */
    OptionalDouble nearest() {
        double x = nearest.get().x();
        return Double.isNaN(x) ? OptionalDouble.empty() : OptionalDouble.of(x);
    }

    private Node node(double x) {
        Node node = new Node(x, function.applyAsDouble(x));
        values.incrementAndGet();
        if (x >= from && x <= from + width) {
            nearest.updateAndGet(known -> known.orLower(node));
        }
        return node;
    }

    private double valueAt(double x) {
        return node(x).y();
    }

    /** Splits places into runs that have values, each with the very last place before its gaps. */
    private void scan(List<Node> places) {
        List<Node> run = new ArrayList<>();
        Node before = new Node(Double.NaN, Double.NaN);
        for (Node node : places) {
            if (node.isKnown()) {
                if (run.isEmpty() && !Double.isNaN(before.x())) {
                    add(run, last(node, before, Node::isKnown));
                }
                add(run, node);
            } else if (!run.isEmpty()) {
                add(run, last(before, node, Node::isKnown));
                run(run);
                run.clear();
            }
            before = node;
        }
        run(run);
    }

    private static void add(List<Node> run, Node node) {
        if (run.isEmpty() || node.x() > run.get(run.size() - 1).x()) {
            run.add(node);
        }
    }

    /** The last place of a kind on the way from one that is to one that is not. */
    private Node last(Node inside, Node outside, Predicate<Node> kind) {
        Node last = inside;
        double beyond = outside.x();
        for (int i = 0; i < NARROWINGS && last.x() != (last.x() + beyond) / 2; i++) {
            Node middle = node((last.x() + beyond) / 2);
            if (kind.test(middle)) {
                last = middle;
            } else {
                beyond = middle.x();
            }
        }
        return last;
    }

    /** Looks through places that all have values. */
    private void run(List<Node> places) {
        if (places.isEmpty()) {
            return;
        }
        List<Node> run = List.copyOf(places);
        for (int i = 0; i < HALVINGS && values.get() < MOST_VALUES; i++) {
            List<Node> closer = halved(run);
            if (closer.stream().anyMatch(node -> !node.isKnown())) {
                scan(closer);
                return;
            }
            run = closer;
        }
        end(run.get(0));
        end(run.get(run.size() - 1));
        between(run);
    }

    private List<Node> halved(List<Node> run) {
        List<Node> closer = new ArrayList<>();
        for (int i = 0; i < run.size(); i++) {
            closer.add(run.get(i));
            if (i + 1 < run.size() && mayHide(run, i)) {
                closer.add(node((run.get(i).x() + run.get(i + 1).x()) / 2));
            }
        }
        return closer;
    }

    /** Whether a root, or more than one, may lie unseen between a place and the next. */
    private boolean mayHide(List<Node> run, int i) {
        Node one = run.get(i);
        Node other = run.get(i + 1);
        double sag = Math.max(bend(run, i), bend(run, i + 1)) * Math.pow(other.x() - one.x(), 2) / 2;
        boolean isOpen = other.x() - one.x() > SAME * width && sag > noise.least() && !(isZero(one) && isZero(other));
        return isOpen
                && (one.y() * other.y() > 0
                        ? Math.min(one.size(), other.size()) < 4 * sag
                        : Math.abs(other.y() - one.y()) < 64 * sag);
    }

    /** The second divided difference about a place, 0 at the ends. */
    private static double bend(List<Node> run, int i) {
        if (i == 0 || i == run.size() - 1) {
            return 0;
        }
        Node before = run.get(i - 1);
        Node here = run.get(i);
        Node after = run.get(i + 1);
        double left = (here.y() - before.y()) / (here.x() - before.x());
        double right = (after.y() - here.y()) / (after.x() - here.x());
        return Math.abs(right - left) / (after.x() - before.x());
    }

    /** Whether no more is left than rounding at that very place. */
    private boolean isZero(Node node) {
        return node.size() <= noise.least()
                || (node.size() <= SMALL * Math.max(largest, noise.scale()) && node.size() <= noiseAt(node));
    }

    private double noiseAt(Node node) {
        return noiseAt.computeIfAbsent(
                node.x(),
                x -> DoubleStream.of(-ABOUT, 0, ABOUT)
                        .map(off -> noise.at(x + off * width))
                        .max()
                        .orElseThrow());
    }

    /** An end of the range, or the last place before a gap: a root where no more than rounding is left. */
    private void end(Node end) {
        if (isZero(end)) {
            roots.add(new Root(end.x(), false));
        }
    }

    /** From one place that is not zero to the next, with all that are zero between. */
    private void between(List<Node> run) {
        int last = -1;
        for (int i = 0; i < run.size(); i++) {
            if (!isZero(run.get(i))) {
                if (last >= 0) {
                    between(run, last, i);
                }
                last = i;
            }
        }
        zeros(run, last + 1, run.size());
        int first = 0;
        while (first < run.size() && isZero(run.get(first))) {
            first++;
        }
        zeros(run, 0, first);
        for (int i = 0; i < run.size(); i++) {
            turn(run.get(Math.max(0, i - 1)), run.get(i), run.get(Math.min(run.size() - 1, i + 1)));
        }
    }

    /** Zeros on to an end of the run: a stretch, or no more than the end. */
    private void zeros(List<Node> run, int from, int to) {
        if (from < to) {
            stretch(run, from, to);
        }
    }

    private void between(List<Node> run, int one, int other) {
        if (other > one + 1 && stretch(run, one + 1, other)) {
            return;
        }
        Node left = run.get(one);
        Node right = run.get(other);
        if (left.y() * right.y() < 0) {
            crossing(left, right);
        } else if (other > one + 1) {
            turn(left, run.get((one + other) / 2), right);
        }
    }

    /** Zeros next to each other, if they reach far enough to be more than a touch. */
    private boolean stretch(List<Node> run, int from, int to) {
        double low = from == 0
                ? run.get(0).x()
                : last(run.get(from), run.get(from - 1), this::isZero).x();
        double high = to == run.size()
                ? run.get(to - 1).x()
                : last(run.get(to - 1), run.get(to), this::isZero).x();
        Stretch stretch = new Stretch(low, high);
        boolean isWide = high - low > STRETCH * width;
        if (isWide && !stretches.contains(stretch)) {
            stretches.add(stretch);
            roots.add(new Root(low, false));
            roots.add(new Root(high, false));
        }
        return isWide;
    }

    private void crossing(Node one, Node other) {
        BracketedRoot.End end = solver.between(one, other);
        if (end.isGap()) {
            beside(one, end.best());
            beside(other, end.best());
        } else if (solver.isRoot(end, other.y() - one.y(), noiseAt(end.best()))) {
            roots.add(new Root(end.best().x(), false));
        }
    }

    /** From a place to the edge of a gap that lies between two signs. */
    private void beside(Node known, Node gap) {
        Node edge = last(known, gap, Node::isKnown);
        end(edge);
        if (known.y() * edge.y() < 0) {
            crossing(known, edge);
        }
    }

    /** A turn towards zero: no root, one that is touched, or two. */
    private void turn(Node before, Node here, Node after) {
        if (!isDip(before, here, after) || isSeen(before.x(), after.x())) {
            return;
        }
        double sign = sign(before, here, after);
        Turn turn = new Turn(solver, before, after, sign);
        Node lowest = turn.lowest(here);
        if (isZero(lowest)) {
            touch(turn, lowest);
        } else if (sign * lowest.y() < 0) {
            crossing(before, lowest);
            crossing(lowest, after);
        }
    }

    private void touch(Turn turn, Node lowest) {
        boolean isInside =
                lowest.x() - turn.before().x() > SAME * width && turn.after().x() - lowest.x() > SAME * width;
        if (isInside) {
            roots.add(new Root(turn.sharp(lowest, REACH * width, noiseAt(lowest)), true));
        }
    }

    /** Whether zero is already known to be touched, or held, between two places. */
    private boolean isSeen(double from, double to) {
        return roots.stream().anyMatch(root -> root.touching() && root.at() >= from && root.at() <= to)
                || stretches.stream().anyMatch(stretch -> stretch.has(from) || stretch.has(to));
    }

    private double sign(Node before, Node here, Node after) {
        return Math.signum(isZero(here) ? before.y() + after.y() : here.y());
    }

    private boolean isDip(Node before, Node here, Node after) {
        double sign = sign(before, here, after);
        double left = sign * (before.y() - here.y());
        double right = sign * (after.y() - here.y());
        return left >= 0 && right >= 0 && left + right > 0;
    }
}
