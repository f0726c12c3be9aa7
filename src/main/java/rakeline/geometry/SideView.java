package rakeline.geometry;

/**
 * The bicycle from its right side, solved: axles, contact points and steering axis in millimetres, from BB.
 *
 * @param sinHead sine of the head angle
 * @param cosHead cosine of the head angle
 * @param axisLengthMm along the steering axis, from the head tube's top edge down to the foot of the perpendicular
 *     from the front axle
 */
public record SideView(
        double stackMm,
        double reachMm,
        double sinHead,
        double cosHead,
        double offsetMm,
        double frontRadiusMm,
        double bbHeightMm,
        double rearAxleXMm,
        double rearAxleYMm,
        double frontAxleXMm,
        double frontAxleYMm,
        double axisLengthMm) {

    public static SideView of(Bike bike) {
        double headAngleRad = Math.toRadians(bike.get(Inputs.HEAD_ANGLE));
        double sin = Math.sin(headAngleRad);
        double cos = Math.cos(headAngleRad);
        double stack = bike.get(Inputs.STACK);
        double reach = bike.get(Inputs.REACH);
        double offset = bike.get(Inputs.FORK_OFFSET);
        double drop = bike.get(Inputs.BB_DROP);
        double chainstay = bike.get(Inputs.CHAINSTAY);
        double frontRadius = bike.get(Inputs.FRONT_RADIUS);
        double bbHeight = bike.get(Inputs.REAR_RADIUS) - drop;
        double frontAxleY = frontRadius - bbHeight;
        double axisLength = (stack + offset * cos - frontAxleY) / sin;
        return new SideView(
                stack,
                reach,
                sin,
                cos,
                offset,
                frontRadius,
                bbHeight,
                -Math.sqrt(chainstay * chainstay - drop * drop),
                drop,
                reach + offset * sin + axisLength * cos,
                frontAxleY,
                axisLength);
    }

    public Point rearAxle() {
        return new Point(rearAxleXMm, rearAxleYMm);
    }

    public Point frontAxle() {
        return new Point(frontAxleXMm, frontAxleYMm);
    }

    /** BB to the front axle, true length. */
    public double frontCentreMm() {
        return Math.sqrt(frontAxleXMm * frontAxleXMm + frontAxleYMm * frontAxleYMm);
    }

    /** Horizontal, axle to axle. */
    public double wheelbaseMm() {
        return frontAxleXMm - rearAxleXMm;
    }

    /** Along the ground, from the steering axis to the contact point behind it. */
    public double trailMm() {
        return mechanicalTrailMm() / sinHead;
    }

    /** Contact point to the steering axis, perpendicular: trail · sin α. */
    public double mechanicalTrailMm() {
        return frontRadiusMm * cosHead - offsetMm;
    }

    /** Trail · sin α · cos α. */
    public double wheelFlopMm() {
        return mechanicalTrailMm() * cosHead;
    }

    /** Height at which the steering axis cuts the vertical through the front axle, in per cent of the wheel radius. */
    public double axisCrossingPercent() {
        return 100 * (1 - offsetMm / (frontRadiusMm * cosHead));
    }

    /**
     * How far the front end comes down when the bar is turned, the bicycle held upright and the rear wheel where it
     * is: R(1 − √(1 − cos²α sin²δ)) − f cos α (1 − cos δ).
     *
     * @param steerRad δ
     */
    public double frontDropMm(double steerRad) {
        double lifted = cosHead * Math.sin(steerRad);
        return frontRadiusMm * (1 - Math.sqrt(1 - lifted * lifted)) - offsetMm * cosHead * (1 - Math.cos(steerRad));
    }

    /**
     * Angle between the front wheel's track and the rear's, in radians, 0..π: tan Δ = sin δ sin α / (cos p cos δ − sin p
     * sin δ cos α).
     *
     * @param steerRad δ
     * @param leanRad p, to the same side
     */
    public double groundSteerRad(double steerRad, double leanRad) {
        return Math.atan2(
                Math.sin(steerRad) * sinHead,
                Math.cos(leanRad) * Math.cos(steerRad) - Math.sin(leanRad) * Math.sin(steerRad) * cosHead);
    }

    /** Radius of the rear contact's track, kinematic: wheelbase / tan Δ. Infinite straight ahead. */
    public double turnRadiusMm(double groundSteerRad) {
        return wheelbaseMm() / Math.tan(groundSteerRad);
    }

    /**
     * A point of the steering axis.
     *
     * @param upMm along the axis from the head tube's top edge, upward
     */
    public Point onAxis(double upMm) {
        return new Point(reachMm - upMm * cosHead, stackMm + upMm * sinHead);
    }
}
