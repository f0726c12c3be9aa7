package rakeline.geometry;

/**
 * The front wheel turned about the steering axis, seen from above: x forward, z to the rider's right.
 *
 * @param side the bicycle's side view
 * @param steerRad steering angle, positive to the left
 */
public record SteeredWheel(SideView side, double steerRad) {
    /**
     * A point of the front assembly, given on the wheel's plane while it steers straight, seen from above.
     *
     * @return x forward of BB, y to the rider's right
     */
    public Point fromAbove(Point onPlane) {
        double dx = onPlane.x() - side.reachMm();
        double dy = onPlane.y() - side.stackMm();
        double ahead = dx * side.sinHead() + dy * side.cosHead();
        double up = dy * side.sinHead() - dx * side.cosHead();
        double x = side.reachMm() - up * side.cosHead() + ahead * Math.cos(steerRad) * side.sinHead();
        return new Point(x, -ahead * Math.sin(steerRad));
    }

    /** A point of the wheel at a radius from the axle, so far round from straight ahead. */
    public Point rim(double radiusMm, double roundRad) {
        return fromAbove(new Point(
                side.frontAxleXMm() + radiusMm * Math.cos(roundRad),
                side.frontAxleYMm() + radiusMm * Math.sin(roundRad)));
    }
}
