package rakeline.geometry.toe;

import java.util.Random;
import java.util.function.DoubleSupplier;

/** A made-up bike and shoe. */
record ToeCase(FrontWheel wheel, Pedals pedals, Shoe shoe) {
    private static final int KINDS = 7;

    /**
     * Kinds in turn: near overlap, overlapping, toes out and pitched, guarded, little steering, anything that a file
     * accepts, the ends and middles of what it accepts.
     */
    static ToeCase seeded(long seed) {
        Random random = new Random(seed * 7919 + 17);
        return switch ((int) (seed % KINDS)) {
            case 0 -> ordinary(random, 0, 60, 90, 0, 0, 0);
            case 1 -> ordinary(random, -120, 0, 90, 0, 0, 0);
            case 2 -> ordinary(random, -60, 60, 90, 0, 15, 30);
            case 3 -> ordinary(random, -60, 60, 90, 40, 10, 10);
            case 4 -> ordinary(random, -80, 40, between(random, 20, 45), 20, 10, 10);
            case 5 -> anything(() -> random.nextDouble());
            default -> anything(() -> random.nextInt(3) / 2.0);
        };
    }

    private static ToeCase ordinary(
            Random random, double from, double to, double limit, double guard, double out, double pitch) {
        double radius = between(random, 230, 370);
        double tyre = between(random, 20, 65);
        double crank = between(random, 150, 180);
        double forward = between(random, 70, 130);
        double axleX = radius + crank + forward + between(random, from, to);
        double axleY = between(random, 40, 90);
        double offset = between(random, 30, 60);
        FrontWheel wheel = new FrontWheel(
                between(random, 66, 75), axleX, axleY, offset, radius, tyre, between(random, 0, guard), limit);
        Shoe shoe = new Shoe(
                forward,
                between(random, 10, 50),
                between(random, 15, 35),
                between(random, 10, 40),
                between(random, -out, out),
                between(random, -pitch, pitch));
        return new ToeCase(wheel, new Pedals(crank, between(random, 200, 320)), shoe);
    }

    private static ToeCase anything(DoubleSupplier share) {
        double head = between(share, 50, 85);
        double radius = between(share, 100, 450);
        double offset = between(share, -120, 120);
        double axleY = radius - between(share, 100, 450) + between(share, -150, 150);
        double slope = Math.toRadians(head);
        double axleX = between(share, 120, 650)
                + (between(share, 200, 800) - axleY) / Math.tan(slope)
                + offset / Math.sin(slope);
        double tyre = between(share, 15, 130);
        FrontWheel wheel =
                new FrontWheel(head, axleX, axleY, offset, radius, tyre, between(share, 0, 60), between(share, 20, 90));
        Pedals pedals = new Pedals(between(share, 60, 220), between(share, 100, 450));
        Shoe shoe = new Shoe(
                between(share, 40, 200),
                between(share, -20, 80),
                between(share, 5, 60),
                between(share, 0, 60),
                between(share, -30, 30),
                between(share, -60, 60));
        return new ToeCase(wheel, pedals, shoe);
    }

    private static double between(DoubleSupplier share, double from, double to) {
        return from + (to - from) * share.getAsDouble();
    }

    private static double between(Random random, double from, double to) {
        return from + (to - from) * random.nextDouble();
    }

    BruteForce bruteForce(BruteForce.Length length) {
        return new BruteForce(wheel, pedals, shoe, length);
    }

    PedalClearance pedal() {
        return new PedalClearance(wheel, pedals);
    }

    ToeClearance toe() {
        return new ToeClearance(wheel, pedals, shoe);
    }

    /** With every length multiplied. */
    ToeCase scaled(double k) {
        FrontWheel w = wheel;
        FrontWheel wheels = new FrontWheel(
                w.headAngleDeg(),
                k * w.axleXMm(),
                k * w.axleYMm(),
                k * w.offsetMm(),
                k * w.radiusMm(),
                k * w.tyreMm(),
                k * w.mudguardGapMm(),
                w.steeringLimitDeg());
        return new ToeCase(wheels, new Pedals(k * pedals.crankMm(), k * pedals.stanceWidthMm()), scaled(shoe, k));
    }

    private static Shoe scaled(Shoe s, double k) {
        return new Shoe(
                k * s.toeForwardMm(),
                k * s.toeHeightMm(),
                k * s.toeRadiusMm(),
                k * s.toeHalfWidthMm(),
                s.toeOutDeg(),
                s.pitchDeg());
    }

    ToeCase axleAhead(double byMm) {
        return with(wheel.axleXMm() + byMm, wheel.mudguardGapMm(), wheel.steeringLimitDeg());
    }

    ToeCase guarded(double byMm) {
        return with(wheel.axleXMm(), wheel.mudguardGapMm() + byMm, wheel.steeringLimitDeg());
    }

    /** With a share of its steering. */
    ToeCase limited(double share) {
        return with(wheel.axleXMm(), wheel.mudguardGapMm(), share * wheel.steeringLimitDeg());
    }

    private ToeCase with(double axleXMm, double mudguardGapMm, double steeringLimitDeg) {
        FrontWheel changed = new FrontWheel(
                wheel.headAngleDeg(),
                axleXMm,
                wheel.axleYMm(),
                wheel.offsetMm(),
                wheel.radiusMm(),
                wheel.tyreMm(),
                mudguardGapMm,
                steeringLimitDeg);
        return new ToeCase(changed, pedals, shoe);
    }
}
