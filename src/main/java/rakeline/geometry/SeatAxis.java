package rakeline.geometry;

/**
 * The line along which the seat post slides.
 *
 * @param foot the foot of the perpendicular from BB
 * @param up the unit vector up the line
 */
public record SeatAxis(Point foot, Point up) {
    /** The line at seatTubeAngle through the point, at height seatAngleAt, of the line from BB at seatAngle. */
    public static SeatAxis of(Bike bike) {
        double at = bike.get(Inputs.SEAT_ANGLE_AT);
        Point on = new Point(-at / Math.tan(Math.toRadians(bike.get(Inputs.SEAT_ANGLE))), at);
        double tubeRad = Math.toRadians(bike.get(Inputs.SEAT_TUBE_ANGLE));
        return through(on, new Point(-Math.cos(tubeRad), Math.sin(tubeRad)));
    }

    private static SeatAxis through(Point on, Point up) {
        double along = on.x() * up.x() + on.y() * up.y();
        return new SeatAxis(on.minus(up.times(along)), up);
    }

    /** A point so far up the line from the foot. */
    public Point at(double alongMm) {
        return foot.plus(up.times(alongMm));
    }

    /** How far up the line from the foot a height above BB lies. */
    public double alongAtHeight(double yMm) {
        return (yMm - foot.y()) / up.y();
    }

    public double xAtHeight(double yMm) {
        return at(alongAtHeight(yMm)).x();
    }

    /** The unit vector square to the line, rearward. */
    public Point rearward() {
        return new Point(-up.y(), up.x());
    }

    public SeatAxis turned(double angleRad) {
        return new SeatAxis(foot.turned(angleRad), up.turned(angleRad));
    }
}
