package rakeline.geometry.toe;

/** One point of the swept ring with the directions it can move in. */
record RingPoint(SweptRing ring, double sinSteer, double cosSteer, double sinTurn, double cosTurn) {

    Point point() {
        double out = swing();
        double rise = ring.radius() * sinTurn;
        return new Point(
                ring.onAxis().x()
                        + out * cosSteer * ring.ahead().x()
                        + rise * ring.up().x(),
                ring.onAxis().y()
                        + out * cosSteer * ring.ahead().y()
                        + rise * ring.up().y(),
                ring.onAxis().z() - out * sinSteer);
    }

    /** Distance ahead of the steering axis, mm: the radius of the circle on which steering moves the point. */
    double swing() {
        return ring.offset() + ring.radius() * cosTurn;
    }

    /** No point of the patch around this one is farther away than this, mm. */
    double spread(double halfSteer, double halfTurn) {
        double along = ring.radius() * halfTurn;
        double across = (Math.abs(swing()) + along) * halfSteer;
        return Math.sqrt(along * along + across * across);
    }

    /**
     * The least of a linear function over the patch around this point, less its value here, or something lower: second
     * order in the half widths, and the largest that the third can be.
     */
    double leastRise(Point slope, double halfSteer, double halfTurn) {
        double forward = cosSteer * slope.dot(ring.ahead()) - sinSteer * slope.z();
        double left = -sinSteer * slope.dot(ring.ahead()) - cosSteer * slope.z();
        double upward = slope.dot(ring.up());
        double alongRing = ring.radius() * (cosTurn * upward - sinTurn * forward);
        double alongRingTwice = -ring.radius() * (cosTurn * forward + sinTurn * upward);
        double mixed = ring.radius() * sinTurn * left;
        return leastOfParabola(alongRing, alongRingTwice, halfTurn)
                + leastOfParabola(swing() * left, -swing() * forward, halfSteer)
                - Math.abs(mixed) * halfSteer * halfTurn
                - slope.length() * thirdOrder(halfSteer, halfTurn);
    }

    private double thirdOrder(double halfSteer, double halfTurn) {
        double cube = halfTurn + 3 * halfSteer;
        double across = (Math.abs(swing()) + ring.radius() * halfTurn) * halfSteer * halfSteer * halfSteer;
        return (ring.radius() * halfTurn * (halfTurn * cube + 3 * halfSteer * halfSteer) + across) / 6;
    }

    /** The least of s·d + c·d²/2 for |d| up to a half width. */
    private static double leastOfParabola(double slope, double curvature, double half) {
        double steep = Math.abs(slope);
        return steep < curvature * half
                ? -steep * steep / (2 * curvature)
                : -steep * half + curvature * half * half / 2;
    }
}
