package rakeline.geometry;

/** A point or a vector of the side view, in millimetres: x forward, y up. */
public record Point(double x, double y) {
    public Point plus(Point other) {
        return new Point(x + other.x, y + other.y);
    }

    public Point minus(Point other) {
        return new Point(x - other.x, y - other.y);
    }

    public Point times(double factor) {
        return new Point(x * factor, y * factor);
    }

    /** Turned about the origin, nose up. */
    public Point turned(double angleRad) {
        double sin = Math.sin(angleRad);
        double cos = Math.cos(angleRad);
        return new Point(x * cos - y * sin, x * sin + y * cos);
    }

    public double length() {
        return Math.hypot(x, y);
    }
}
