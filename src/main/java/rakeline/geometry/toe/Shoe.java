package rakeline.geometry.toe;

/**
 * The toe of a shoe as it stands on a pedal: a capsule lying across the foot. The foot keeps its direction while the
 * crank turns.
 *
 * @param toeForwardMm pedal axis to the foremost point, along the foot, before turning and pitching
 * @param toeHeightMm pedal axis up to the middle of the toe box, before pitching
 * @param toeRadiusMm the capsule's radius
 * @param toeHalfWidthMm half the distance between the capsule's two end centres
 * @param toeOutDeg turned outward about the pedal's vertical axis
 * @param pitchDeg then toes down about the pedal axis
 */
public record Shoe(
        double toeForwardMm,
        double toeHeightMm,
        double toeRadiusMm,
        double toeHalfWidthMm,
        double toeOutDeg,
        double pitchDeg) {

    /** From the pedal's centre to the middle of the capsule. */
    Point toeCentre() {
        double out = Math.toRadians(toeOutDeg);
        double ahead = toeForwardMm - toeRadiusMm;
        return pitched(new Point(ahead * Math.cos(out), toeHeightMm, ahead * Math.sin(out)));
    }

    /** Unit vector along the capsule, outward. */
    Point across() {
        double out = Math.toRadians(toeOutDeg);
        return pitched(new Point(-Math.sin(out), 0, Math.cos(out)));
    }

    private Point pitched(Point level) {
        double sin = Math.sin(Math.toRadians(pitchDeg));
        double cos = Math.cos(Math.toRadians(pitchDeg));
        return new Point(level.x() * cos + level.y() * sin, level.y() * cos - level.x() * sin, level.z());
    }
}
