package rakeline.rider;

import rakeline.geometry.Point;

/**
 * Two rods joined end to end between two points.
 *
 * @param first from {@code from} to the joint, mm
 * @param second from the joint to {@code to}, mm
 */
record TwoLinks(Point from, Point to, double first, double second) {
    double distanceMm() {
        return to.minus(from).length();
    }

    /** How far the points are too far apart (positive) or too near (negative) for the rods; 0 where they close. */
    double missMm() {
        double distance = distanceMm();
        double far = distance - (first + second);
        double near = distance - Math.abs(first - second);
        return far > 0 ? far : Math.min(near, 0);
    }

    boolean closes() {
        return missMm() == 0 && distanceMm() > 0;
    }

    /** Angle between the rods at the joint. */
    double includedRad() {
        double distance = distanceMm();
        return Math.acos(within((first * first + second * second - distance * distance) / (2 * first * second)));
    }

    /** The joint to the left of the way from the one point to the other. */
    Point left() {
        return joint(1);
    }

    /** The joint to the right of it. */
    Point right() {
        return joint(-1);
    }

    private Point joint(int side) {
        double distance = distanceMm();
        Point along = to.minus(from).times(1 / distance);
        double foot = (first * first + distance * distance - second * second) / (2 * distance);
        double off = side * Math.sqrt(Math.max(0, first * first - foot * foot));
        return from.plus(along.times(foot)).plus(new Point(-along.y(), along.x()).times(off));
    }

    private static double within(double cosine) {
        return Math.max(-1, Math.min(1, cosine));
    }
}
