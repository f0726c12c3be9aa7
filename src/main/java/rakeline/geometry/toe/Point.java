package rakeline.geometry.toe;

/** A point or a vector, mm. */
record Point(double x, double y, double z) {
    Point plus(Point other) {
        return new Point(x + other.x, y + other.y, z + other.z);
    }

    Point minus(Point other) {
        return new Point(x - other.x, y - other.y, z - other.z);
    }

    Point times(double factor) {
        return new Point(x * factor, y * factor, z * factor);
    }

    double dot(Point other) {
        return x * other.x + y * other.y + z * other.z;
    }

    double length() {
        return Math.sqrt(dot(this));
    }
}
