package rakeline.study.fit;

import java.util.Comparator;
import rakeline.quantity.Decimals;
import rakeline.quantity.Limit;
import rakeline.quantity.Quantity;

/**
 * What is left to a limit.
 *
 * @param left distance to the limit, in the quantity's unit; negative beyond it, by how far
 * @param standardUncertainty of what is left, from that of the inputs; 0 where none is known
 */
public record Margin(Quantity quantity, Limit limit, double left, double standardUncertainty) {
    /** The tightest first, in units of the uncertainty. */
    static final Comparator<Margin> TIGHTEST_FIRST = Comparator.comparingDouble(Margin::inUncertainties);

    /** Whether the number is beyond the limit. */
    public boolean isBeyond() {
        return left < 0;
    }

    /** What is left in units of its uncertainty, or of half a step as it is shown, whichever is more. */
    public double inUncertainties() {
        double halfStep = Math.pow(10, -quantity.decimals()) / 2;
        return left / Math.max(standardUncertainty, halfStep);
    }

    /** As in {@code toe room 5.3 ± 4.1 mm left} or {@code rail left: beyond by 4.2 mm}. */
    public String words() {
        String shown = quantity.format(Math.abs(left));
        String sure = standardUncertainty > 0 && !isBeyond()
                ? shown + " ± " + Decimals.fixed(standardUncertainty, quantity.decimals())
                : shown;
        String amount = quantity.unit().attach(sure);
        return quantity.label() + (isBeyond() ? ": beyond by " + amount : ": " + amount + " to spare");
    }

    /** As in {@code Rail left −4.2 mm}. */
    @Override
    public String toString() {
        return quantity.label() + " " + quantity.formatWithUnit(left);
    }
}
