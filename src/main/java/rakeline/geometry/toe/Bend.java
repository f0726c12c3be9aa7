package rakeline.geometry.toe;

/**
 * How a distance from a curve bends downward inside the curve's round. Across the curve's plane and at right angles to
 * the way to it, the distance has the curvature −(depth/distance)/(narrowest − depth).
 *
 * @param depth how far inside the curve the point lies, seen along the axis it is curved about, mm; 0 outside
 * @param distance of the point, mm
 * @param narrowest radius of curvature, mm
 */
record Bend(double depth, double distance, double narrowest) {
    /** Of a convex field. */
    static final Bend NONE = new Bend(0, 1, Double.POSITIVE_INFINITY);

    /** While a point moves, the depth may grow this many times as fast. */
    private static final double GROWTH = 3;

    static Bend of(double beyond, double distance, double narrowest) {
        return beyond >= 0 ? NONE : new Bend(-beyond, distance, narrowest);
    }

    /** The most that the field falls below its plane within a way, mm. */
    double sag(double way) {
        if (depth == 0) {
            return 0;
        }
        double deepest = depth + GROWTH * way;
        double share = distance > way ? Math.min(1, deepest / (distance - way)) : 1;
        return deepest < narrowest ? share * way * way / 2 / (narrowest - deepest) : Double.POSITIVE_INFINITY;
    }
}
