package rakeline.quantity;

/**
 * A line worth drawing beside a number: a published or customary limit, never a verdict.
 *
 * @param value in the number's unit
 * @param side on which side of it a number keeps it
 * @param rule whether rules of a sport or a recommendation set it, and no part, rider or safety regulation
 */
public record Limit(double value, String label, String source, Side side, boolean rule) {
    /** Whether a limit is a floor, a ceiling, or no limit but a figure to read a number against. */
    public enum Side {
        AT_LEAST,
        AT_MOST,
        ABOUT
    }

    /** A floor. */
    public Limit(double value, String label, String source) {
        this(value, label, source, Side.AT_LEAST);
    }

    /** A limit that is no rule. */
    public Limit(double value, String label, String source, Side side) {
        this(value, label, source, side, false);
    }

    /** The same, set by rules or a recommendation. */
    public Limit asRule() {
        return new Limit(value, label, source, side, true);
    }

    /** Whether a number can be beyond it. */
    public boolean bounds() {
        return side != Side.ABOUT;
    }

    /**
     * How much a number has left before it meets this; negative beyond it, by how far. NaN for a figure to read it
     * against.
     */
    public double leftOf(double number) {
        return switch (side) {
            case AT_LEAST -> number - value;
            case AT_MOST -> value - number;
            case ABOUT -> Double.NaN;
        };
    }
}
