package rakeline.study;

import rakeline.geometry.Geometry;
import rakeline.geometry.Inputs;
import rakeline.quantity.Measure;
import rakeline.quantity.Quantity;
import rakeline.quantity.Reading;
import rakeline.quantity.Unit;

/** One more declaration, as a contributor would write it. */
public final class Fixture {
    /** The key. */
    public static final String KEY = "stackOverReachPercent";

    public static final Measure<Geometry> STACK_OVER_REACH = new Measure<>(
            Quantity.of(KEY, "Stack over reach", Unit.PERCENT, "Stack in per cent of reach.")
                    .declared(),
            geometry -> Reading.of(
                    100 * geometry.bike().get(Inputs.STACK) / geometry.bike().get(Inputs.REACH)));

    private Fixture() {}
}
