package rakeline.geometry.toe;

/**
 * A field at a point, with the plane that it stays above or bends below by a known amount.
 *
 * @param value mm; infinite where the field has no value
 * @param slope gradient; of no meaning where there is no value
 * @param bend how the field may bend below that plane
 */
record Sample(double value, Point slope, Bend bend) {
    private static final Sample NONE = new Sample(Double.POSITIVE_INFINITY, new Point(0, 0, 0), Bend.NONE);

    static Sample none() {
        return NONE;
    }
}
