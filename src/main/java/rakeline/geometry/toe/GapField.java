package rakeline.geometry.toe;

/**
 * Distance from a toe to a point, with the crank at the angle where it comes nearest; negative where they overlap.
 *
 * <p>The middle of a ball of the toe runs round a circle, and the distance of a point from a circle has a closed form.
 * Outside the circle it is as for the filled circle, which is convex. Inside it bends the other way, at most as the
 * distance from an elliptic cylinder does from within, whose narrowest radius of curvature is crank · cos² of the angle
 * between toe and crank axis.
 */
record GapField(Toe toe) implements Field {
    /** Nearer to the circle's middle than this share of the crank, a toe can have two nearest places. */
    private static final double CENTRAL = 0.3;

    private static final double SPECK_MM = 1e-12;

    @Override
    public Sample at(Point point) {
        Point from = point.minus(toe.middle());
        double along = along(from);
        double distance = distance(from, along);
        Bend bend = Bend.of(beyond(from, along), distance, narrowest());
        return new Sample(distance - toe.radius(), slope(from, along, distance), bend);
    }

    @Override
    public double floor(Point point, Sample sample, double distance) {
        return sample.value() - distance;
    }

    @Override
    public double crankDeg(Point point) {
        Point from = point.minus(toe.middle());
        Point ball = from.minus(toe.across().times(along(from)));
        return Math.toDegrees(Math.atan2(ball.y(), ball.x()));
    }

    private double narrowest() {
        return toe.crank() * toe.across().z() * toe.across().z();
    }

    private Point slope(Point from, double along, double distance) {
        Point ball = from.minus(toe.across().times(along));
        double scale = Math.max(distance, SPECK_MM);
        double level = inward(from, along);
        return new Point(level * ball.x() / scale, level * ball.y() / scale, ball.z() / scale);
    }

    private double distance(Point from, double along) {
        return Math.hypot(beyond(from, along), from.z() - along * toe.across().z());
    }

    private double fromMiddle(Point from, double along) {
        double x = from.x() - along * toe.across().x();
        double y = from.y() - along * toe.across().y();
        return Math.sqrt(x * x + y * y);
    }

    /** How far outside the circle the point lies, seen from the side. */
    private double beyond(Point from, double along) {
        return fromMiddle(from, along) - toe.crank();
    }

    private double inward(Point from, double along) {
        return 1 - toe.crank() / Math.max(fromMiddle(from, along), SPECK_MM);
    }

    /** Where along the toe's axis, from its middle, the ball sits that comes nearest. */
    private double along(Point from) {
        double half = toe.halfWidth();
        double central = central(from);
        boolean one = Math.abs(central) >= half || fromMiddle(from, central) > CENTRAL * toe.crank();
        return one ? along(from, -half, half) : nearer(from, along(from, -half, central), along(from, central, half));
    }

    private double nearer(Point from, double one, double other) {
        return distance(from, one) <= distance(from, other) ? one : other;
    }

    /** Where the toe's axis comes nearest to the circle's middle, seen from the side; far off where it is seen as a point. */
    private double central(Point from) {
        Point across = toe.across();
        double slant = across.x() * across.x() + across.y() * across.y();
        return slant == 0 ? Double.MAX_VALUE : (from.x() * across.x() + from.y() * across.y()) / slant;
    }

    private double along(Point from, double low, double high) {
        double start = Math.max(low, Math.min(high, from.z() / toe.across().z()));
        double gain = gain(from, start);
        double end = gain > 0 ? high : low;
        if (gain == 0 || end == start) {
            return start;
        }
        return gain(from, end) * gain >= 0 ? end : Toe.turning(along -> gain(from, along), start, end);
    }

    /** Has the sign of the distance's fall along the toe's axis. */
    private double gain(Point from, double along) {
        Point across = toe.across();
        Point ball = from.minus(across.times(along));
        return inward(from, along) * (ball.x() * across.x() + ball.y() * across.y()) + ball.z() * across.z();
    }
}
