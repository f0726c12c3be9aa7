package rakeline.geometry.toe;

/** A field seen from the middle of a patch. */
record View(Field field, Patch patch, RingPoint middle, Point point, Sample sample) {
    private static final double SMALLEST_MM = 1e-5;

    static View of(SweptRing ring, Field field, Patch patch) {
        RingPoint middle = ring.at(patch.steer(), patch.turn());
        Point point = middle.point();
        return new View(field, patch, middle, point, field.at(point));
    }

    Spot spot() {
        return new Spot(sample.value(), patch.steer(), patch.turn());
    }

    /** Too small to be worth halving. */
    boolean tiny() {
        return spread() < SMALLEST_MM;
    }

    /** The patch with a lower bound of the field on it; the dearer of two only where the other is below a ceiling. */
    Patch floored(double ceiling) {
        double plane = Math.max(patch.floor(), abovePlane());
        return patch.withFloor(plane < ceiling ? Math.max(plane, field.floor(point, sample, spread())) : plane);
    }

    private double abovePlane() {
        if (sample.value() == Double.POSITIVE_INFINITY) {
            return Double.NEGATIVE_INFINITY;
        }
        double rise = middle.leastRise(sample.slope(), patch.halfSteer(), patch.halfTurn());
        double floor = sample.value() + rise - sample.bend().sag(spread());
        return Double.isNaN(floor) ? Double.NEGATIVE_INFINITY : floor;
    }

    private double spread() {
        return middle.spread(patch.halfSteer(), patch.halfTurn());
    }
}
