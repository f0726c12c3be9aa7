package rakeline.study;

import java.util.List;
import rakeline.quantity.Quantity;

/**
 * One number of a chart that, were it another, would bring every residual within what rounding explains.
 *
 * @param quantity the number; {@code wheels.both.…} where both wheels would change together
 * @param charted as it stands, or its default where it was not given
 * @param wouldBe what it would have to be, to the printed step where that suffices
 * @param sameAs the keys of the other suspects that this chart cannot tell from this one
 * @param because how makers come to print it so; empty where it is a slip like any other
 */
public record Suspect(Quantity quantity, double charted, double wouldBe, List<String> sameAs, String because) {
    public Suspect {
        sameAs = List.copyOf(sameAs);
    }

    public String key() {
        return quantity.key();
    }
}
