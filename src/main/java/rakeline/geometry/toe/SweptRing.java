package rakeline.geometry.toe;

/**
 * The surface that the middle of the tyre's section sweeps while the bar turns: a circle turned about an axis in its
 * plane. A point of it has a steering angle and a turn, the angle on the ring from straight ahead towards the steering
 * axis' upper end, both in radians.
 *
 * @param onAxis the point of the steering axis nearest to the front axle
 * @param up along the steering axis
 * @param ahead perpendicular to it, in the bike's plane
 * @param offset steering axis to axle, mm
 * @param radius of the ring, mm
 */
record SweptRing(Point onAxis, Point up, Point ahead, double offset, double radius) {
    static SweptRing of(FrontWheel wheel) {
        double head = Math.toRadians(wheel.headAngleDeg());
        Point ahead = new Point(Math.sin(head), Math.cos(head), 0);
        Point up = new Point(-Math.cos(head), Math.sin(head), 0);
        Point axle = new Point(wheel.axleXMm(), wheel.axleYMm(), 0);
        return new SweptRing(axle.minus(ahead.times(wheel.offsetMm())), up, ahead, wheel.offsetMm(), wheel.ringMm());
    }

    RingPoint at(double steer, double turn) {
        return new RingPoint(this, Math.sin(steer), Math.cos(steer), Math.sin(turn), Math.cos(turn));
    }

    /** A spot as it is told to people. */
    Place place(Spot spot, Field field) {
        double crankDeg = field.crankDeg(at(spot.steer(), spot.turn()).point());
        return new Place(spot.value(), Math.toDegrees(spot.steer()), crankDeg);
    }
}
