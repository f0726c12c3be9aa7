package rakeline.rider;

import rakeline.geometry.Point;

/** A segment in space as a body of revolution about the line between its joints; z to the rider's right, all mm. */
record Rod(Point from, double fromZ, Point to, double toZ) {
    private static final double MM_PER_M = 1000;

    double lengthMm() {
        return Math.hypot(to.minus(from).length(), toZ - fromZ);
    }

    /** This rod as a part of a body of so many kilograms. */
    BodyPart part(String name, double massKg, SegmentMass spread) {
        Point centre = from.plus(to.minus(from).times(spread.centre()));
        double z = fromZ + (toZ - fromZ) * spread.centre();
        return new BodyPart(name, massKg, centre.x(), centre.y(), z, inertia(massKg, spread));
    }

    private BodyPart.Inertia inertia(double massKg, SegmentMass spread) {
        double across = squared(spread.across());
        double along = squared(spread.along());
        double x = (to.x() - from.x()) / lengthMm();
        double y = (to.y() - from.y()) / lengthMm();
        double z = (toZ - fromZ) / lengthMm();
        return new BodyPart.Inertia(
                massKg * (across + (along - across) * x * x),
                massKg * (across + (along - across) * y * y),
                massKg * (across + (along - across) * z * z),
                massKg * (across - along) * x * y);
    }

    private double squared(double radius) {
        double metres = radius * lengthMm() / MM_PER_M;
        return metres * metres;
    }
}
