package rakeline.study;

import java.util.stream.DoubleStream;
import rakeline.study.BracketedRoot.Node;

/**
 * The place between two others where a function comes nearest to zero without a change of its sign: by golden section,
 * and where it runs smoothly, by the zero of its slope, which is sharper.
 *
 * @param sign of the function
 */
record Turn(BracketedRoot function, Node before, Node after, double sign) {
    private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;
    private static final int NARROWINGS = 70;

    /** The slope is taken from places nearer together where the function is not smooth as far as that. */
    private static final double FINER = 16;

    /** The lowest place; no higher than one that is known. */
    Node lowest(Node known) {
        Node least = golden();
        return isLower(least, known) ? least : known;
    }

    /**
     * The turn itself, where rounding leaves a lowest place vague: the zero of the slope, if it is as low.
     *
     * @param reach how far to either side the slope may be taken from
     * @param noise what rounding leaves of the function
     */
    double sharp(Node lowest, double reach, double noise) {
        return DoubleStream.of(1, FINER, FINER * FINER)
                .mapToObj(finer -> smooth(lowest, reach / finer / 3))
                .filter(smooth -> smooth.isKnown() && sign * (smooth.y() - lowest.y()) <= noise)
                .findFirst()
                .orElse(lowest)
                .x();
    }

    private Node golden() {
        double from = before.x();
        double to = after.x();
        Node left = function.node(to - GOLDEN * (to - from));
        Node right = function.node(from + GOLDEN * (to - from));
        for (int i = 0; i < NARROWINGS; i++) {
            if (isLower(left, right)) {
                to = right.x();
                right = left;
                left = function.node(to - GOLDEN * (to - from));
            } else {
                from = left.x();
                left = right;
                right = function.node(from + GOLDEN * (to - from));
            }
        }
        return isLower(left, right) ? left : right;
    }

    private boolean isLower(Node one, Node other) {
        return !other.isKnown() || (one.isKnown() && sign * one.y() < sign * other.y());
    }

    /** Where the slope, a difference of fourth order, vanishes near a place; without a value where it does not. */
    private Node smooth(Node least, double apart) {
        BracketedRoot slope = new BracketedRoot(x -> slope(x, apart));
        Node left = slope.node(least.x() - apart);
        Node right = slope.node(least.x() + apart);
        return left.y() * right.y() < 0
                ? function.node(slope.between(left, right).best().x())
                : new Node(least.x(), Double.NaN);
    }

    /** Twelve times the slope times the distance of the places from which it is taken. */
    private double slope(double x, double apart) {
        return 8 * (value(x + apart) - value(x - apart)) - (value(x + 2 * apart) - value(x - 2 * apart));
    }

    private double value(double x) {
        return function.node(x).y();
    }
}
