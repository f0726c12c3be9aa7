package rakeline.handling;

import rakeline.quantity.Quantity;
import rakeline.quantity.SourceNote;

/**
 * A mass, a centre or a moment of inertia that a result rests on.
 *
 * @param value in the quantity's unit
 * @param given whether the bike file gives it; else it is the default that the quantity's source names
 */
public record MassUsed(Quantity quantity, double value, boolean given) {
    /** Where the number comes from, in words. */
    public String origin() {
        return given ? "given" : quantity.sourceOf(SourceNote.Part.DEFAULT);
    }
}
