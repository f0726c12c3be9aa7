package rakeline.geometry;

/**
 * A vector of three numbers for the brute force of the tests: x forward, y up, z to the rider's right. Shares no code
 * with what it checks.
 */
record Space(double x, double y, double z) {
    static Space of(double x, double y, double z) {
        return new Space(x, y, z);
    }

    Space plus(Space o) {
        return new Space(x + o.x, y + o.y, z + o.z);
    }

    Space minus(Space o) {
        return new Space(x - o.x, y - o.y, z - o.z);
    }

    Space times(double k) {
        return new Space(k * x, k * y, k * z);
    }

    double dot(Space o) {
        return x * o.x + y * o.y + z * o.z;
    }

    Space cross(Space o) {
        return new Space(y * o.z - z * o.y, z * o.x - x * o.z, x * o.y - y * o.x);
    }

    double length() {
        return Math.sqrt(dot(this));
    }

    Space unit() {
        return times(1 / length());
    }

    /** Turned about an axis through the origin by the right-hand rule (Rodrigues). */
    Space turned(Space unitAxis, double rad) {
        return times(Math.cos(rad))
                .plus(unitAxis.cross(this).times(Math.sin(rad)))
                .plus(unitAxis.times(unitAxis.dot(this) * (1 - Math.cos(rad))));
    }

    /** Turned about an axis through a point. */
    Space turnedAbout(Space point, Space unitAxis, double rad) {
        return minus(point).turned(unitAxis, rad).plus(point);
    }

    /** Where two lines of the side view, each a point and a direction, meet (Cramer). */
    static Space meeting(Space p, Space u, Space q, Space v) {
        double determinant = v.x * u.y - u.x * v.y;
        Space between = q.minus(p);
        double along = (v.x * between.y - v.y * between.x) / determinant;
        return p.plus(u.times(along));
    }
}
