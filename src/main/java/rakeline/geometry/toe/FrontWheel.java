package rakeline.geometry.toe;

import rakeline.quantity.Decimals;
import rakeline.quantity.Refusal;

/**
 * The front wheel and the axis it turns about.
 *
 * @param headAngleDeg steering axis to the ground
 * @param axleXMm axle ahead of the bottom bracket, steering straight
 * @param axleYMm axle above the bottom bracket, steering straight
 * @param offsetMm steering axis to axle, perpendicular; negative for a reversed fork
 * @param radiusMm outer radius of the wheel
 * @param tyreMm section width of the tyre
 * @param mudguardGapMm tread to the outside of the guard; 0 without one
 * @param steeringLimitDeg how far the bar can turn, 0..90
 */
public record FrontWheel(
        double headAngleDeg,
        double axleXMm,
        double axleYMm,
        double offsetMm,
        double radiusMm,
        double tyreMm,
        double mudguardGapMm,
        double steeringLimitDeg) {

    /**
     * Checks the one shape that cannot be.
     *
     * @throws Refusal where the tyre is too wide for the wheel's radius to leave a ring
     */
    public FrontWheel {
        if (!(radiusMm > tyreMm / 2)) {
            throw new Refusal("A wheel radius of " + Decimals.shortest(radiusMm) + " mm does not fit a tyre of "
                    + Decimals.shortest(tyreMm) + " mm; accepted is more than half the tyre's width.");
        }
    }

    /** From the axle to the middle of the tyre's section. */
    double ringMm() {
        return radiusMm - tyreMm / 2;
    }

    /** From the middle of the tyre's section to the outside of tyre or guard. */
    double tubeMm() {
        return tyreMm / 2 + mudguardGapMm;
    }

    double steeringLimit() {
        return Math.toRadians(steeringLimitDeg);
    }
}
