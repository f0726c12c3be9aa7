package rakeline.geometry.toe;

import java.util.OptionalDouble;

/**
 * The lowest pedal, level, above level ground.
 *
 * <p>Source: 16 CFR 1512.17(c).
 *
 * @param heightMm of the pedal's lower edge above the ground, the bike upright; negative: below it
 * @param outMm from the bike's middle plane to the pedal's outer edge
 * @param tyreSectionRadiusMm of the round tyres that the bike leans over on, as it is at the bottom bracket
 */
public record PedalStrike(double heightMm, double outMm, double tyreSectionRadiusMm) {
    /**
     * A section radius between two tyres.
     *
     * @param rearMm section radius of the rear tyre
     * @param frontMm section radius of the front tyre
     * @param rearCentreXMm rear axle to bottom bracket, horizontal
     * @param wheelbaseMm axle to axle, horizontal
     */
    public static double sectionRadiusMm(double rearMm, double frontMm, double rearCentreXMm, double wheelbaseMm) {
        return rearMm + (frontMm - rearMm) * rearCentreXMm / wheelbaseMm;
    }

    /**
     * The lean at which the pedal's outer lower edge meets the ground, degrees: θ in t + (z − t) cos θ = y sin θ with
     * section radius t, height z and distance out y. Negative where the pedal is below the ground already; nothing
     * where it stays clear at any lean.
     */
    public OptionalDouble leanDeg() {
        double above = heightMm - tyreSectionRadiusMm;
        double lever = Math.hypot(outMm, above);
        if (tyreSectionRadiusMm > lever) {
            return OptionalDouble.empty();
        }
        double lean = Math.atan2(above, outMm) + Math.asin(tyreSectionRadiusMm / lever);
        return OptionalDouble.of(Math.toDegrees(lean));
    }
}
