package rakeline.study;

import rakeline.handling.Ride;
import rakeline.quantity.Decimals;
import rakeline.quantity.Measure;
import rakeline.quantity.Refusal;

/** A measure and the value that is wanted of it, in its unit. */
public record Target(Measure<Ride> measure, double value) {
    public Target {
        if (!Double.isFinite(value)) {
            throw new Refusal("the target of " + measure.quantity().withKey() + " is " + Decimals.shown(value)
                    + "; accepted is a finite number.");
        }
    }

    public String key() {
        return measure.key();
    }

    /** Reads the measure of a ride and returns by how much it lies above the target; NaN where it has no value. */
    double excess(Ride ride) {
        return measure.read(ride).orNaN() - value;
    }

    /** As in {@code trail at 58 mm}. */
    String words() {
        return Wording.lower(measure.quantity().label()) + " at "
                + measure.quantity().said(value);
    }
}
