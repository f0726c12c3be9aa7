package rakeline.figure.paint;

import rakeline.quantity.Range;

/**
 * What of a chart is looked at: the window on x and the step under the crosshair.
 *
 * @param x {@link Range#ANY} for all steps
 * @param step the crosshair's, or -1 for none
 */
public record View(Range x, int step) {
    /** All steps, no crosshair. */
    public static final View WHOLE = new View(Range.ANY, -1);

    private static final int NONE = -1;

    /** The same with a window between two values of x, in either order; the whole where they are equal. */
    public View zoomed(double one, double other) {
        return one == other
                ? new View(Range.ANY, step)
                : new View(new Range(Math.min(one, other), Math.max(one, other)), step);
    }

    /** The same with the crosshair on a step. */
    public View at(int newStep) {
        return new View(x, newStep);
    }

    /** The same without a crosshair. */
    public View withoutCrosshair() {
        return at(NONE);
    }

    boolean isZoomed() {
        return !x.equals(Range.ANY);
    }
}
