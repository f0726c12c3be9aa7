package rakeline.prelude;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import rakeline.geometry.Bike;
import rakeline.geometry.Setting;
import rakeline.quantity.Decimals;
import rakeline.quantity.Quantity;
import rakeline.quantity.Range;
import rakeline.quantity.Refusal;

/**
 * What a row asks for when it says {@code dial(…)}; the dial's name is the variable that is being initialised.
 *
 * @param key the input it is bound to, or empty
 * @param unit as written after the number
 * @param initial within the range
 * @param own the bike's own value, or NaN
 * @param decimals shown
 * @param notices sentences for the row, on what the dial is otherwise than written
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
        int decimals,
        List<String> notices) {
    private static final int STEPS = 100;

    /** @throws Refusal where the range does not run upward, the step does not fit it or the initial value lies outside */
    public DialRequest {
        notices = List.copyOf(notices);
        checkRange(label, min, max);
        if (!(step > 0) || step > max - min) {
            throw new Refusal("the dial \"" + label + "\" has the step " + Decimals.shown(step)
                    + "; accepted is above 0 and at most its range.");
        }
        if (!(initial >= min && initial <= max)) {
            throw new Refusal("the dial \"" + label + "\" starts at " + Decimals.shown(initial) + ", outside its range "
                    + Decimals.signed(new Range(min, max).toString()) + ".");
        }
    }

    private static void checkRange(String label, double min, double max) {
        if (!(min < max) || !Double.isFinite(min) || !Double.isFinite(max)) {
            throw new Refusal("the dial \"" + label + "\" runs from " + Decimals.shown(min) + " to "
                    + Decimals.shown(max) + "; its range must run upward.");
        }
    }

    /** A dial that is bound to no input. */
    static DialRequest free(String label, String unit, double min, double max, double step, double initial) {
        return new DialRequest(label, "", unit, min, max, step, initial, Double.NaN, decimalsOf(step), List.of());
    }

    /**
     * A dial bound to an input, starting at the bike's own value; a range that does not hold this is widened to.
     *
     * @throws Refusal where the bike has no such value
     */
    static DialRequest bound(Setting setting, Bike bike, double min, double max) {
        Quantity quantity = setting.quantity();
        checkRange(quantity.label(), min, max);
        double own = setting.valueIn(bike);
        if (Double.isNaN(own)) {
            throw new Refusal("the dial \"" + quantity.label() + "\" has no value to start from: " + bike.name()
                    + " gives no " + quantity.key() + ".");
        }
        double step = stepOf(quantity, max - min);
        return new DialRequest(
                quantity.label(),
                quantity.key(),
                quantity.unit().symbol(),
                own < min ? widened(min, own, step, quantity.accepted()) : min,
                own > max ? widened(max, own, step, quantity.accepted()) : max,
                step,
                own,
                own,
                quantity.decimals(),
                notices(setting, bike, min, max));
    }

    /** The end moved outward by whole steps until it holds the value, or to the value where no such step is accepted. */
    private static double widened(double end, double own, double step, Range accepted) {
        BigDecimal from = BigDecimal.valueOf(end);
        BigDecimal by = BigDecimal.valueOf(step);
        BigDecimal steps = BigDecimal.valueOf(own).subtract(from).divide(by, 0, RoundingMode.UP);
        double moved = from.add(by.multiply(steps)).doubleValue();
        return accepted.contains(moved) ? moved : own;
    }

    private static List<String> notices(Setting setting, Bike bike, double min, double max) {
        List<String> notices = new ArrayList<>();
        Quantity quantity = setting.quantity();
        double own = setting.valueIn(bike);
        if (own < min || own > max) {
            notices.add("The dial \"" + quantity.label() + "\", written for " + Decimals.shown(min) + " to "
                    + quantity.said(max) + ", goes " + (own < min ? "down" : "up") + " to " + bike.name() + "'s own "
                    + quantity.said(own) + ".");
        }
        double other = bike.get(setting.inputs().get(setting.inputs().size() - 1));
        if (other != own) {
            notices.add("The dial \"" + quantity.label() + "\" starts at " + bike.name() + "'s front wheel, "
                    + quantity.said(own) + "; its rear wheel has " + quantity.said(other) + ".");
        }
        return notices;
    }

    /** The last decimal shown, or coarser where that would make too fine a dial. */
    private static double stepOf(Quantity quantity, double span) {
        double finest = BigDecimal.ONE.movePointLeft(quantity.decimals()).doubleValue();
        double coarsest = Math.pow(10, Math.floor(Math.log10(span / STEPS)));
        return Math.max(finest, coarsest);
    }

    private static int decimalsOf(double step) {
        return Double.isFinite(step)
                ? Math.max(0, BigDecimal.valueOf(step).stripTrailingZeros().scale())
                : 0;
    }
}
