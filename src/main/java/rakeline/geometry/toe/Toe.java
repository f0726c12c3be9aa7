package rakeline.geometry.toe;

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
}
