package rakeline.study;

import rakeline.geometry.Geometry;
import rakeline.geometry.Setting;
import rakeline.quantity.Measure;

/**
 * A measure that is held while something else is swept.
 *
 * @param target its value; NaN for the one that it has at the start
 * @param by the input that is solved for at each step
 */
public record Hold(Measure<Geometry> measure, double target, Setting by) {
    /** With the target settled. */
    Hold at(double value) {
        return new Hold(measure, value, by);
    }
}
