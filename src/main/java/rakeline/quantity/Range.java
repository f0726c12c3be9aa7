package rakeline.quantity;

/** A closed range of numbers, ends included. */
public record Range(double from, double to) {
    public static final Range ANY = new Range(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);

    public Range {
        if (!(from <= to)) {
            throw new Refusal("a range runs upward, not from " + from + " to " + to);
        }
    }

    /** False for NaN. */
    public boolean contains(double value) {
        return value >= from && value <= to;
    }

    /** As in {@code 50..85}. */
    @Override
    public String toString() {
        return Decimals.shortest(from) + ".." + Decimals.shortest(to);
    }
}
