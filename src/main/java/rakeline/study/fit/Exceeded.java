package rakeline.study.fit;

import rakeline.quantity.Limit;
import rakeline.quantity.Quantity;

/**
 * A limit that a bike is beyond.
 *
 * @param left negative, by how far
 */
public record Exceeded(Quantity quantity, Limit limit, double left) {
    /** As in {@code rail left −4.2 mm}. */
    @Override
    public String toString() {
        return quantity.label() + " " + quantity.formatWithUnit(left);
    }
}
