package rakeline.handling;

import rakeline.handling.BicycleParameters.Body;
import rakeline.handling.BicycleParameters.Wheel;

/** Bicycles whose numbers are published. */
public final class PublishedBicycles {
    private PublishedBicycles() {}

    /** Meijaard, Papadopoulos, Ruina and Schwab 2007, table 1 (S). */
    public static BicycleParameters benchmark() {
        return new BicycleParameters(
                1.02,
                0.08,
                Math.PI / 10,
                9.81,
                new Wheel("R", 0.3, 2, 0.0603, 0.12),
                new Body("B", 0.3, -0.9, 85, 9.2, 2.4, 11, 2.8),
                new Body("H", 0.9, -0.7, 4, 0.05892, -0.00756, 0.06, 0.00708),
                new Wheel("F", 0.35, 3, 0.1405, 0.28));
    }

    /** Moore 2012, chapter Physical Parameters, without rider (S). */
    public static BicycleParameters specimenA() {
        return new BicycleParameters(
                1.121,
                0.069,
                0.400,
                9.81,
                new Wheel("R", 0.3410, 3.11, 0.0904, 0.152),
                new Body("B", 0.276, -0.538, 9.86, 0.530, -0.116, 1.316, 0.757),
                new Body("H", 0.867, -0.748, 3.22, 0.253, -0.0720, 0.246, 0.0956),
                new Wheel("F", 0.3435, 2.02, 0.0884, 0.149));
    }

    /** Moore 2012, chapter Physical Parameters, without rider (S). */
    public static BicycleParameters specimenB() {
        return new BicycleParameters(
                1.037,
                0.056,
                0.295,
                9.81,
                new Wheel("R", 0.3385, 3.96, 0.0939, 0.154),
                new Body("B", 0.326, -0.483, 7.22, 0.373, -0.0383, 0.717, 0.455),
                new Body("H", 0.911, -0.730, 3.04, 0.1768, -0.0273, 0.144, 0.0446),
                new Wheel("F", 0.3400, 3.33, 0.0916, 0.157));
    }
}
