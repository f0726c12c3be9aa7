package rakeline.geometry.toe;

/** A place on the swept ring, radians, and what a field is there, mm. */
record Spot(double value, double steer, double turn) {
    private static final Spot NONE = new Spot(Double.POSITIVE_INFINITY, Double.NaN, Double.NaN);

    static Spot none() {
        return NONE;
    }

    boolean found() {
        return value < Double.POSITIVE_INFINITY;
    }
}
