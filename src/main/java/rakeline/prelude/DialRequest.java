package rakeline.prelude;

import rakeline.quantity.Refusal;

/**
 * What a row asks for when it says {@code dial(…)}; the dial's name is the variable that is being initialised.
 *
 * @param key the input it is bound to, or empty
 * @param unit as written after the number
 * @param own the bike's own value, or NaN
 * @param decimals shown
 */
public record DialRequest(
        String label,
        String key,
        String unit,
        double min,
        double max,
        double step,
        double initial,
        double own,
        int decimals) {
    public DialRequest {
        if (!(min < max) || !Double.isFinite(min) || !Double.isFinite(max)) {
            throw new Refusal(
                    "the dial \"" + label + "\" runs from " + min + " to " + max + "; its range must run upward.");
        }
        if (!(step > 0) || step > max - min) {
            throw new Refusal(
                    "the dial \"" + label + "\" has the step " + step + "; accepted is above 0 and at most its range.");
        }
        if (!(initial >= min && initial <= max)) {
            throw new Refusal("the dial \"" + label + "\" starts at " + initial + ", outside its range " + min + ".."
                    + max + ".");
        }
    }
}
