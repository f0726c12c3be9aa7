package rakeline.rider;

import rakeline.geometry.Point;
import rakeline.quantity.Decimals;

/**
 * Trunk and arms between hip and hand. The bend of the elbow fixes how far the grip is from the shoulder, and hip and
 * grip then fix the shoulder: the upper of the two places where it can be.
 *
 * @param foreMm elbow to grip, which is at half the hand
 * @param elbowBendRad 0 for a straight arm
 */
public record Torso(
        Point hip,
        Point grip,
        double trunkMm,
        double upperArmMm,
        double foreMm,
        double forearmMm,
        double elbowBendRad) {
    /** Trunk and arms of a rider. */
    static Torso of(Rider rider, Point hip, Point grip) {
        double forearm = rider.get(RiderInputs.FOREARM);
        return new Torso(
                hip,
                grip,
                rider.get(RiderInputs.TRUNK),
                rider.get(RiderInputs.UPPER_ARM),
                forearm + rider.get(RiderInputs.HAND) / 2,
                forearm,
                bendRad(rider.get(RiderInputs.ELBOW)));
    }

    private static double bendRad(double elbowDeg) {
        return Math.toRadians(Math.min(elbowDeg, 180 - elbowDeg));
    }

    /** Shoulder to grip. */
    public double armMm() {
        return Math.sqrt(upperArmMm * upperArmMm + foreMm * foreMm + 2 * upperArmMm * foreMm * Math.cos(elbowBendRad));
    }

    public Point shoulder() {
        return links().left();
    }

    /** Below the line from shoulder to grip. */
    public Point elbow() {
        return new TwoLinks(shoulder(), grip, upperArmMm, foreMm).right();
    }

    public Point wrist() {
        return elbow().plus(grip.minus(elbow()).times(forearmMm / foreMm));
    }

    /** The trunk against the horizontal. */
    public double angleRad() {
        Point trunk = shoulder().minus(hip);
        return Math.atan2(trunk.y(), trunk.x());
    }

    /** Between trunk and upper arm. */
    public double shoulderAngleRad() {
        Point down = hip.minus(shoulder());
        Point arm = elbow().minus(shoulder());
        double cross = down.x() * arm.y() - down.y() * arm.x();
        return Math.atan2(Math.abs(cross), down.x() * arm.x() + down.y() * arm.y());
    }

    /** Empty where trunk and arms close; otherwise by how much they do not. */
    public String miss() {
        double miss = links().missMm();
        String bent = " with the elbow bent " + Decimals.fixed(Math.toDegrees(elbowBendRad), 1) + "°";
        if (miss > 0) {
            return "the arms are " + Decimals.fixed(miss, 1) + " mm too short to reach the hand point" + bent
                    + straight(miss);
        }
        return miss < 0
                ? "the arms are " + Decimals.fixed(-miss, 1) + " mm too long for a hand point so near the hip" + bent
                : "";
    }

    private String straight(double miss) {
        double stillShort = miss - (upperArmMm + foreMm - armMm());
        return stillShort > 0
                ? ", and " + Decimals.fixed(stillShort, 1) + " mm with straight arms"
                : "; straight arms would reach";
    }

    private TwoLinks links() {
        return new TwoLinks(hip, grip, trunkMm, armMm());
    }
}
