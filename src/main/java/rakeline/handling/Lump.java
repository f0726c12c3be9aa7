package rakeline.handling;

import java.util.List;
import rakeline.rider.BodyPart;

/**
 * A rigid piece, or several as one, in the axes of {@code rakeline.geometry} but metres.
 *
 * @param mass kg
 * @param x centre of mass forward of BB, m
 * @param y above BB, m
 * @param z to the right, m
 * @param roll about the forward axis through the centre, kg m²
 * @param yaw about the upward axis
 * @param pitch about the axis to the right
 * @param product ∫ x y dm about the centre
 */
record Lump(double mass, double x, double y, double z, double roll, double yaw, double pitch, double product) {

    static Lump of(BodyPart part) {
        return new Lump(
                part.massKg(),
                part.xMm() / 1000,
                part.yMm() / 1000,
                part.zMm() / 1000,
                part.inertia().roll(),
                part.inertia().yaw(),
                part.inertia().pitch(),
                part.inertia().product());
    }

    /** The same piece with a share of its mass, in the same place. */
    Lump share(double share) {
        return new Lump(mass * share, x, y, z, roll * share, yaw * share, pitch * share, product * share);
    }

    /** Several as one: mass, centre and moments are those of the whole. */
    static Lump sum(List<Lump> lumps) {
        double mass = lumps.stream().mapToDouble(Lump::mass).sum();
        double x = lumps.stream().mapToDouble(lump -> lump.mass * lump.x).sum() / mass;
        double y = lumps.stream().mapToDouble(lump -> lump.mass * lump.y).sum() / mass;
        double z = lumps.stream().mapToDouble(lump -> lump.mass * lump.z).sum() / mass;
        double roll = 0;
        double yaw = 0;
        double pitch = 0;
        double product = 0;
        for (Lump lump : lumps) {
            double ahead = lump.x - x;
            double above = lump.y - y;
            double aside = lump.z - z;
            roll += lump.roll + lump.mass * (above * above + aside * aside);
            yaw += lump.yaw + lump.mass * (ahead * ahead + aside * aside);
            pitch += lump.pitch + lump.mass * (ahead * ahead + above * above);
            product += lump.product + lump.mass * ahead * above;
        }
        return new Lump(mass, x, y, z, roll, yaw, pitch, product);
    }

    /**
     * In the axes of the linear bicycle.
     *
     * @param rearX rear contact forward of BB, m
     * @param ground BB above the ground, m
     */
    BicycleParameters.Body body(String letter, double rearX, double ground) {
        return new BicycleParameters.Body(letter, x - rearX, -(y + ground), mass, roll, product, pitch, yaw);
    }
}
