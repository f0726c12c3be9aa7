package rakeline.geometry;

/** Cautions that several declarations share. */
final class Cautions {
    static final String TOE = "Toe contact can throw a rider. A drawing is no safety certificate: try it in person, and"
            + " check the current local standard; 89 mm (16 CFR 1512.17(d)) applies without foot retention.";

    private Cautions() {}
}
