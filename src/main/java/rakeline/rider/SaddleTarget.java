package rakeline.rider;

import java.util.Locale;
import rakeline.geometry.Bike;
import rakeline.geometry.Inputs;
import rakeline.geometry.Point;
import rakeline.quantity.Input;
import rakeline.quantity.Quantity;
import rakeline.quantity.Refusal;

/**
 * A rider's saddle as it is held from the pedal: the sit point keeps its distance from the pedal where that is furthest,
 * in line with BB, whatever the crank; thicker pedals and soles raise it by as much. Where a crank, a pedal or a sole is
 * not known it makes no difference.
 *
 * @param sit from BB, on the bicycle on which it was found
 * @param crankMm that bicycle's crank; NaN where it is not known
 * @param pedalStackMm pedal axis to sole there; NaN where it is not known
 * @param soleMm sole and insole there; NaN where they are not known
 * @param setback what keeps the saddle's place fore and aft
 */
public record SaddleTarget(Point sit, double crankMm, double pedalStackMm, double soleMm, Setback setback) {
    /** What keeps the saddle's place fore and aft where the crank changes. */
    public enum Setback {
        /** Its distance behind BB. */
        BB("the setback behind BB"),
        /** Its distance behind the pedal at three o'clock. */
        PEDAL("the setback behind the pedal at three o'clock"),
        /** The line from BB to the sit point, along which it moves. */
        LINE("the line from BB to the sit point");

        private final String words;

        Setback(String words) {
            this.words = words;
        }

        /** As in {@code the setback behind BB}. */
        public String words() {
            return words;
        }

        /** As an option has it: {@code bb}. */
        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }

        /**
         * The one with a word.
         *
         * @throws Refusal for another word than bb, pedal or line
         */
        public static Setback of(String word) {
            for (Setback each : values()) {
                if (each.word().equals(word)) {
                    return each;
                }
            }
            throw new Refusal("the setback is kept from " + word + "; accepted is bb, pedal or line.");
        }
    }

    /** The sit point of a bike that has contact points, on the crank and pedals that it has. */
    public static SaddleTarget of(Bike bike, Setback setback) {
        return new SaddleTarget(
                new Point(bike.get(Inputs.CONTACT_SIT_X), bike.get(Inputs.CONTACT_SIT_Y)),
                bike.get(Inputs.CRANK_LENGTH),
                bike.get(Inputs.PEDAL_STACK),
                bike.get(Inputs.SOLE),
                setback);
    }

    /** Sit point to the pedal axis where that is furthest; NaN where the crank is not known. */
    public double toPedalMm() {
        return sit.length() + crankMm;
    }

    /**
     * The sit point on another bike's crank, pedals and shoe.
     *
     * @throws Refusal where the saddle is not as far from BB as its setback
     */
    public Point on(Bike bike) {
        double shorter = known(crankMm) - known(bike, Inputs.CRANK_LENGTH, crankMm);
        double higher = shorter
                + known(bike, Inputs.PEDAL_STACK, pedalStackMm)
                - known(pedalStackMm)
                + known(bike, Inputs.SOLE, soleMm)
                - known(soleMm);
        return higher == 0 && shorter == 0 ? sit : moved(bike, higher, shorter);
    }

    private Point moved(Bike bike, double higher, double shorter) {
        double height = sit.length() + higher;
        if (setback == Setback.LINE) {
            return sit.times(height / sit.length());
        }
        double x = setback == Setback.PEDAL ? sit.x() - shorter : sit.x();
        if (Math.abs(x) >= height) {
            Quantity place = Inputs.CONTACT_SIT_X.quantity();
            throw new Refusal("on the crank of " + bike.name() + " the saddle would stand " + place.said(height)
                    + " from BB, which is less than its setback of " + place.said(Math.abs(x))
                    + "; accepted is a shorter crank, or a setback kept from the pedal.");
        }
        return new Point(x, Math.sqrt(height * height - x * x));
    }

    /** A bike's number, or the same as here where either is not known. */
    private static double known(Bike bike, Input input, double here) {
        return Double.isNaN(here) || !bike.has(input) ? known(here) : bike.get(input);
    }

    private static double known(double valueOrNaN) {
        return Double.isNaN(valueOrNaN) ? 0 : valueOrNaN;
    }
}
