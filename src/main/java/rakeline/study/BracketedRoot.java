package rakeline.study;

import java.util.function.DoubleUnaryOperator;

/**
 * Where a function crosses zero between two places at which its signs differ, to the last bits of the place. Source of
 * the method: Chandrupatla 1997, A new hybrid quadratic/bisection algorithm, Advances in Engineering Software 28.
 */
final class BracketedRoot {
    private static final int ROUNDS = 200;

    /** What is left at a root is below this share of the change across the whole way. */
    private static final double RESIDUAL = 1e-9;

    /** Across so many spacings of doubles a function without a jump changes a good deal more than across two. */
    private static final double WIDER = 1 << 12;

    private static final double SHRINKS = 8;

    private final DoubleUnaryOperator function;

    /** A place and the function there. */
    record Node(double x, double y) {
        boolean isKnown() {
            return !Double.isNaN(y);
        }

        double size() {
            return Math.abs(y);
        }

        /** Whichever lies nearer to zero. */
        Node orLower(Node other) {
            return other.size() < size() ? other : this;
        }
    }

    /**
     * Where the search ended: two places hardly apart with different signs, or one without a value.
     *
     * @param best the nearer to zero of the two; without a value where the search met a gap
     * @param other across zero
     */
    record End(Node best, Node other) {
        boolean isGap() {
            return !best.isKnown();
        }
    }

    BracketedRoot(DoubleUnaryOperator function) {
        this.function = function;
    }

    Node node(double x) {
        return new Node(x, function.applyAsDouble(x));
    }

    /** Narrows the way between two places with different signs. */
    End between(Node one, Node other) {
        Node newest = one;
        Node across = other;
        double share = 0.5;
        for (int round = 0; round < ROUNDS && !isNarrow(newest, across); round++) {
            Node next = node(newest.x() + share * (across.x() - newest.x()));
            if (!next.isKnown() || next.y() == 0) {
                return new End(next, across);
            }
            boolean sameSide = next.y() * newest.y() > 0;
            Node third = sameSide ? newest : across;
            across = sameSide ? across : newest;
            newest = next;
            share = share(newest, across, third);
        }
        Node best = newest.orLower(across);
        return new End(best, best.equals(newest) ? across : newest);
    }

    /**
     * Whether the function runs through zero where a search ended, and does not jump over it.
     *
     * @param change of the function across the whole way that was searched
     * @param noise what rounding may leave
     */
    boolean isRoot(End end, double change, double noise) {
        Node best = end.best();
        return best.isKnown()
                && (best.size() <= Math.max(noise, RESIDUAL * Math.abs(change))
                        || SHRINKS * Math.abs(best.y() - end.other().y()) < change(best.x()));
    }

    private double change(double x) {
        double wide = WIDER * Math.ulp(x);
        return Math.abs(function.applyAsDouble(x + wide) - function.applyAsDouble(x - wide));
    }

    private static boolean isNarrow(Node one, Node other) {
        return Math.abs(one.x() - other.x()) <= 2 * Math.ulp(one.orLower(other).x());
    }

    /** By inverse quadratic interpolation where the three places allow it, else half way. */
    private static double share(Node newest, Node across, Node third) {
        double xi = (newest.x() - across.x()) / (third.x() - across.x());
        double phi = (newest.y() - across.y()) / (third.y() - across.y());
        boolean allowed = 1 - Math.sqrt(1 - xi) < phi && phi < Math.sqrt(xi);
        double least = Math.ulp(newest.orLower(across).x()) / Math.abs(across.x() - newest.x());
        double share = allowed ? interpolated(newest, across, third) : 0.5;
        return Math.min(1 - least, Math.max(least, share));
    }

    private static double interpolated(Node newest, Node across, Node third) {
        double alpha = (third.x() - newest.x()) / (across.x() - newest.x());
        return newest.y() / (newest.y() - across.y()) * third.y() / (third.y() - across.y())
                - alpha * newest.y() / (third.y() - newest.y()) * across.y() / (across.y() - third.y());
    }
}
