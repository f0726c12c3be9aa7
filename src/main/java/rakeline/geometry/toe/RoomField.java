package rakeline.geometry.toe;

/**
 * How far a toe behind could move straight forward before it touches a point, with the crank at the angle where it
 * comes first.
 *
 * <p>For a ball the front half of the crank's circle and the ball's own section add up to a circle of radius crank +
 * √(radius² − z²). All that lies behind the swept front is convex, so the field is too wherever it has a value, and
 * stays above its tangent planes.
 */
record RoomField(Toe toe) implements Field {
    @Override
    public Sample at(Point point) {
        Point from = point.minus(toe.middle());
        double along = along(from);
        return Double.isNaN(along) ? Sample.none() : new Sample(room(from, along), slope(from, along), Bend.NONE);
    }

    @Override
    public double floor(Point point, Sample sample, double distance) {
        return new RoomField(toe.swollen(distance)).room(point);
    }

    private double room(Point point) {
        Point from = point.minus(toe.middle());
        double along = along(from);
        return Double.isNaN(along) ? Double.POSITIVE_INFINITY : room(from, along);
    }

    @Override
    public double crankDeg(Point point) {
        if (toe.crank() == 0) {
            return 0;
        }
        Point from = point.minus(toe.middle());
        double along = along(from);
        return Math.toDegrees(Math.asin(up(from, along) / (toe.crank() + half(from, along))));
    }

    private double room(Point from, double along) {
        return from.x() - along * toe.across().x() - front(from, along);
    }

    private Point slope(Point from, double along) {
        double front = front(from, along);
        double half = half(from, along);
        return new Point(1, up(from, along) / front, out(from, along) * (toe.crank() + half) / (front * half));
    }

    private double up(Point from, double along) {
        return from.y() - along * toe.across().y();
    }

    private double out(Point from, double along) {
        return from.z() - along * toe.across().z();
    }

    /** Half height of the ball's section in the point's upright plane; NaN where it misses that plane. */
    private double half(Point from, double along) {
        double out = out(from, along);
        return Math.sqrt(toe.radius() * toe.radius() - out * out);
    }

    /** How far the ball's section gets ahead of the circle's middle at the point's height; NaN where it never does. */
    private double front(Point from, double along) {
        double whole = toe.crank() + half(from, along);
        double up = up(from, along);
        return Math.sqrt(whole * whole - up * up);
    }

    /** Where along the toe's axis, from its middle, the ball sits that comes first; NaN where all pass by. */
    private double along(Point from) {
        double safe = passing(from);
        double gain = gain(from, safe);
        if (Double.isNaN(gain) || gain == 0) {
            return Double.isNaN(gain) ? Double.NaN : safe;
        }
        double end = Math.copySign(toe.halfWidth(), gain);
        double gainAtEnd = gain(from, end);
        if (end == safe || gainAtEnd * gain >= 0) {
            return end;
        }
        return Toe.turning(along -> inside(gain(from, along), -gain), safe, end);
    }

    private static double inside(double gain, double otherwise) {
        return Double.isNaN(gain) ? otherwise : gain;
    }

    /** Has the sign of the front's growth along the toe's axis; NaN where the ball passes by. */
    private double gain(Point from, double along) {
        double half = half(from, along);
        double front = front(from, along);
        Point across = toe.across();
        return across.x() * front * half
                + across.z() * out(from, along) * (toe.crank() + half)
                + across.y() * up(from, along) * half;
    }

    /** Where along the toe's axis the ball's centre comes nearest to the point's line of travel. */
    private double passing(Point from) {
        double level = toe.within(from.z() / toe.across().z());
        double beyond = up(from, level);
        if (Math.abs(beyond) <= toe.crank() || toe.across().y() == 0) {
            return level;
        }
        return passingBeyond(from, Math.copySign(toe.crank(), beyond));
    }

    private double passingBeyond(Point from, double edge) {
        double y = toe.across().y();
        double z = toe.across().z();
        double nearest = toe.within(((from.y() - edge) * y + from.z() * z) / (y * y + z * z));
        boolean stillBeyond = Math.abs(up(from, nearest)) >= toe.crank() && up(from, nearest) * edge >= 0;
        return stillBeyond ? nearest : toe.within((from.y() - edge) / y);
    }
}
