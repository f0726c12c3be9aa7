package rakeline.geometry.toe;

import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.solvers.BrentSolver;

/**
 * What a crank carries round, swollen by the tyre's tube so that the tyre is a mere ring.
 *
 * @param crank radius of the circle that it is carried round, mm
 * @param middle its middle while the crank is taken as zero
 * @param across unit vector along its axis
 * @param halfWidth half the length of its axis, mm; 0 for a ball
 * @param radius around the axis, tube included, mm
 */
record Toe(double crank, Point middle, Point across, double halfWidth, double radius) {
    private static final Point SIDEWAYS = new Point(0, 0, 1);
    private static final double RELATIVE = 1e-14;
    private static final double ALONG_MM = 1e-11;
    private static final double SILENT = 1e-15;
    private static final int MOST_STEPS = 200;

    static Toe of(Shoe shoe, Pedals pedals, FrontWheel wheel) {
        return new Toe(
                pedals.crankMm(),
                pedals.middle().plus(shoe.toeCentre()),
                shoe.across(),
                shoe.toeHalfWidthMm(),
                shoe.toeRadiusMm() + wheel.tubeMm());
    }

    /** The bare centre of a pedal. */
    static Toe of(Pedals pedals, FrontWheel wheel) {
        return new Toe(pedals.crankMm(), pedals.middle(), SIDEWAYS, 0, wheel.tubeMm());
    }

    /** The same with the crank held straight forward. */
    Toe level() {
        return new Toe(0, middle.plus(new Point(crank, 0, 0)), across, halfWidth, radius);
    }

    Toe swollen(double by) {
        return new Toe(crank, middle, across, halfWidth, radius + by);
    }

    double within(double along) {
        return Math.max(-halfWidth, Math.min(halfWidth, along));
    }

    /** Where along a toe's axis, between two places, a gain changes its sign, mm. */
    static double turning(UnivariateFunction gain, double one, double other) {
        BrentSolver solver = new BrentSolver(RELATIVE, ALONG_MM, SILENT);
        return solver.solve(MOST_STEPS, gain, Math.min(one, other), Math.max(one, other));
    }
}
