package rakeline.rider;

import rakeline.geometry.SideView;

/**
 * The bicycle's own mass where only its share on the wheels matters.
 *
 * @param massKg of the whole bicycle
 * @param centreXMm ahead of BB
 */
public record BicycleMass(double massKg, double centreXMm) {
    /** Common practice. */
    public static final double USUAL_KG = 9;

    /** Mean of specimens A and B, without rider, of Moore 2012, chapter Physical Parameters: 38 and 47 %. */
    public static final double USUAL_FRONT_SHARE = 0.43;

    /** What is assumed where no masses are given. */
    public static BicycleMass usual(SideView side) {
        return new BicycleMass(USUAL_KG, side.rearAxleXMm() + USUAL_FRONT_SHARE * side.wheelbaseMm());
    }
}
