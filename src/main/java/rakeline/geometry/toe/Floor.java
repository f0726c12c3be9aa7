package rakeline.geometry.toe;

/** Lower bounds of a field on patches around one point. */
record Floor(Field field, RingPoint middle, Point point, Sample sample) {
    /** A lower bound; the dearer of two is only asked for where the other lies below a ceiling. */
    double of(Patch patch, double spread, double ceiling) {
        double plane = abovePlane(patch, spread);
        return plane >= ceiling ? plane : Math.max(plane, field.floor(point, sample, spread));
    }

    private double abovePlane(Patch patch, double spread) {
        if (sample.value() == Double.POSITIVE_INFINITY) {
            return Double.NEGATIVE_INFINITY;
        }
        double rise = middle.leastRise(sample.slope(), patch.halfSteer(), patch.halfTurn());
        double floor = sample.value() + rise - sample.bend().sag(spread);
        return Double.isNaN(floor) ? Double.NEGATIVE_INFINITY : floor;
    }
}
