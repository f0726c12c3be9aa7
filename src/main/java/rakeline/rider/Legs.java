package rakeline.rider;

import rakeline.geometry.Point;
import rakeline.quantity.Decimals;

/**
 * A leg on its crank, of which the other is the same half a turn on. The foot keeps its pitch while the crank turns, so
 * that the ankle goes round a circle.
 *
 * @param hip from BB
 * @param ankleFromPedal where the ankle is, seen from the pedal axis
 */
public record Legs(Point hip, Point ankleFromPedal, double crankMm, double thighMm, double shankMm) {
    private static final int STEPS = 360;
    private static final int HALVINGS = 60;

    /**
     * The legs of a rider.
     *
     * @param ankleHeightMm ankle above the pedal axis, square to the foot
     */
    static Legs of(Rider rider, Point hip, double crankMm, double ankleHeightMm) {
        double pitch = Math.toRadians(rider.get(RiderInputs.FOOT_PITCH));
        Point onFlatFoot = new Point(-rider.get(RiderInputs.BALL_TO_ANKLE), ankleHeightMm);
        return new Legs(
                hip, onFlatFoot.turned(-pitch), crankMm, rider.get(RiderInputs.THIGH), rider.get(RiderInputs.SHANK));
    }

    /** The pedal axis at a crank angle, counted upward from straight forward. */
    public Point pedal(double crankRad) {
        return new Point(crankMm * Math.cos(crankRad), crankMm * Math.sin(crankRad));
    }

    public Point ankle(double crankRad) {
        return pedal(crankRad).plus(ankleFromPedal);
    }

    public Point knee(double crankRad) {
        return at(crankRad).left();
    }

    /** 180° − the angle between thigh and shank. */
    public double kneeFlexionDeg(double crankRad) {
        return 180 - Math.toDegrees(at(crankRad).includedRad());
    }

    /** Where the leg is longest. */
    public double kneeFlexionLeastDeg() {
        Point middle = ankleFromPedal.minus(hip);
        return kneeFlexionDeg(Math.atan2(middle.y(), middle.x()));
    }

    /** Direction of the thigh from hip to knee, against the horizontal, upward positive. */
    public double thighRad(double crankRad) {
        Point thigh = knee(crankRad).minus(hip);
        return Math.atan2(thigh.y(), thigh.x());
    }

    /** The thigh at its highest over the whole turn. */
    public double thighHighestRad() {
        int best = 0;
        for (int i = 1; i < STEPS; i++) {
            best = thighRad(stepRad(i)) > thighRad(stepRad(best)) ? i : best;
        }
        return highestWithin(stepRad(best - 1), stepRad(best + 1));
    }

    /** Empty where the legs close at every crank angle; otherwise by how much they do not. */
    public String miss() {
        double middle = ankleFromPedal.minus(hip).length();
        double tooShort = middle + crankMm - (thighMm + shankMm);
        double tooLong = Math.abs(thighMm - shankMm) - Math.abs(middle - crankMm);
        if (tooShort > 0) {
            return "the legs are " + Decimals.fixed(tooShort, 1) + " mm too short to turn the cranks";
        }
        return tooLong > 0
                ? "the legs cannot fold: hip and ankle come " + Decimals.fixed(tooLong, 1)
                        + " mm nearer than thigh and shank allow"
                : "";
    }

    private double highestWithin(double from, double to) {
        double low = from;
        double high = to;
        for (int i = 0; i < HALVINGS; i++) {
            double third = (high - low) / 3;
            if (thighRad(low + third) < thighRad(high - third)) {
                low += third;
            } else {
                high -= third;
            }
        }
        return thighRad((low + high) / 2);
    }

    private static double stepRad(int step) {
        return step * 2 * Math.PI / STEPS;
    }

    private TwoLinks at(double crankRad) {
        return new TwoLinks(hip, ankle(crankRad), thighMm, shankMm);
    }
}
