package rakeline.quantity;

/**
 * A line worth drawing beside a number: a published or customary limit, never a verdict.
 *
 * @param value in the number's unit
 * @param side on which side of it a number keeps it
 */
public record Limit(double value, String label, String source, Side side) {
    /** Whether a limit is a floor or a ceiling. */
    public enum Side {
        AT_LEAST,
        AT_MOST
    }

    /** A floor. */
    public Limit(double value, String label, String source) {
        this(value, label, source, Side.AT_LEAST);
    }

    /** How much a number has left before it meets this; negative beyond it, by how far. */
    public double leftOf(double number) {
        return side == Side.AT_LEAST ? number - value : value - number;
    }
}
