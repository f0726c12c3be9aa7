package rakeline.geometry.toe;

/**
 * A field at a point, with the plane that it stays above.
 *
 * @param value mm; infinite where the field has no value
 * @param slope gradient; of no meaning where there is no value
 * @param reach how far away the field may bend below that plane: by at most d²/2/(reach − d) at distance d, mm;
 *     infinite where it never does
 */
record Sample(double value, Point slope, double reach) {
    private static final Sample NONE = new Sample(Double.POSITIVE_INFINITY, new Point(0, 0, 0), 0);

    static Sample none() {
        return NONE;
    }

    /** The most that the field falls below its plane within a distance, mm. */
    double sag(double distance) {
        return reach > distance ? distance * distance / 2 / (reach - distance) : Double.POSITIVE_INFINITY;
    }
}
