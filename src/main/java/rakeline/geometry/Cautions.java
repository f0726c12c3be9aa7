package rakeline.geometry;

import rakeline.quantity.Caution;

/** The cautions that belong to dimensions, parts and clearances. Common practice of the trade unless a source is named. */
public final class Cautions {
    public static final Caution TOE = new Caution(
            "toe contact",
            "Toe contact can throw a rider. A drawing is no safety certificate: try it in person, and check the current"
                    + " local standard; 89 mm (16 CFR 1512.17(d)) applies without foot retention.");
    public static final Caution PEDAL_STRIKE = new Caution(
            "pedal strike",
            "A pedal that meets the ground can throw a rider; 25° (16 CFR 1512.17(c)) is measured with the crank lowest"
                    + " and the pedal level.");
    public static final Caution STANDOVER = new Caution(
            "standover",
            "Straddle the bicycle in riding shoes: makers' manuals ask for 50 mm to spare on the road, 75 unpaved, 100"
                    + " off road (common practice).");
    public static final Caution MAKERS_LIMITS = new Caution(
            "makers' limits",
            "The maker's mark and limit win over any number here; a qualified mechanic does the work.");
    public static final Caution SEAT_POST = new Caution(
            "seat post",
            "The mark on the post and the frame maker's own minimum insertion both hold: whichever asks for more. The"
                    + " makers' limits win over any number here.");
    public static final Caution STEM_AND_BAR = new Caution(
            "stem and bar",
            "Another stem or bar has to fit the steerer and the clamp, and the makers' limits for steerer, spacers, stem"
                    + " and bar win over any number here; a qualified mechanic does the work, with a torque wrench.");
    public static final Caution FORK = new Caution(
            "fork",
            "Another fork changes stresses and clearances as well as geometry: ask the frame maker, and let a qualified"
                    + " mechanic fit it.");
    public static final Caution WHEELS = new Caution(
            "wheels and tyres",
            "Another wheel or tyre changes clearances as well as geometry: keep the tyre clear of fork, frame and guard,"
                    + " and ask the frame maker.");
    public static final Caution RIM_BRAKES = new Caution(
            "rim brakes",
            "A rim brake reaches rims of one size: with a smaller or a larger wheel its pads miss the rim. Another wheel"
                    + " size needs disc brakes or brakes made for it, fitted by a qualified mechanic.");
    public static final Caution MUDGUARD =
            new Caution("mudguard", "A mudguard can jam in the wheel: use breakaway stays and keep it clear.");

    private Cautions() {}
}
