package rakeline.rider;

/**
 * A rigid piece of the rider in the posture on the bicycle, both sides of a limb apart.
 *
 * @param name as in {@code "left thigh"}
 * @param massKg its mass
 * @param xMm centre of mass, forward of BB
 * @param yMm centre of mass, above BB
 * @param zMm centre of mass, to the rider's right
 * @param inertia about its own centre of mass
 */
public record BodyPart(String name, double massKg, double xMm, double yMm, double zMm, Inertia inertia) {
    /**
     * Moments about axes parallel to the frame of reference, kg m².
     *
     * @param roll about the forward axis
     * @param yaw about the upward axis
     * @param pitch about the axis to the right
     * @param product ∫ x y dm about the centre, forward and up
     */
    public record Inertia(double roll, double yaw, double pitch, double product) {}
}
