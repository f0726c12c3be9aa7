package rakeline.study;

import rakeline.geometry.Setting;
import rakeline.handling.Ride;
import rakeline.quantity.Measure;

/**
 * A measure that is held while something else is swept.
 *
 * @param target its value; NaN for the one that it has at the start
 * @param by the input that is solved for at each step
 */
public record Hold(Measure<Ride> measure, double target, Setting by) {
    /** With the target settled. */
    Hold at(double value) {
        return new Hold(measure, value, by);
    }
}
