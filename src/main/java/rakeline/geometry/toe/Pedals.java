package rakeline.geometry.toe;

/**
 * Where the pedals go.
 *
 * @param crankMm bottom bracket to pedal axis
 * @param stanceWidthMm pedal centre to pedal centre, across
 */
public record Pedals(double crankMm, double stanceWidthMm) {
    /** The right pedal's centre while its crank is taken as zero: the middle of its circle. */
    Point middle() {
        return new Point(0, 0, stanceWidthMm / 2);
    }
}
