package rakeline.geometry.toe;

import java.util.Random;

/** A made-up bike and shoe. */
record ToeCase(FrontWheel wheel, Pedals pedals, Shoe shoe) {
    private static final int KINDS = 6;

    /** Kinds in turn: near overlap, overlapping, toes out and pitched, guarded, little steering, anything a file accepts. */
    static ToeCase seeded(long seed) {
        Random random = new Random(seed * 7919 + 17);
        return switch ((int) (seed % KINDS)) {
            case 0 -> ordinary(random, 0, 60, 90, 0, 0, 0);
            case 1 -> ordinary(random, -120, 0, 90, 0, 0, 0);
            case 2 -> ordinary(random, -60, 60, 90, 0, 15, 30);
            case 3 -> ordinary(random, -60, 60, 90, 40, 10, 10);
            case 4 -> ordinary(random, -80, 40, between(random, 20, 45), 20, 10, 10);
            default -> anything(random);
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

    private static ToeCase anything(Random random) {
        double head = between(random, 50, 85);
        double radius = between(random, 100, 450);
        double offset = between(random, -100, 120);
        double axleY = radius - between(random, 100, 450) + between(random, -150, 150);
        double slope = Math.toRadians(head);
        double axleX = between(random, 120, 650)
                + (between(random, 200, 800) - axleY) / Math.tan(slope)
                + offset / Math.sin(slope);
        double tyre = between(random, 15, 130);
        FrontWheel wheel = new FrontWheel(
                head, axleX, axleY, offset, radius, tyre, between(random, 0, 60), between(random, 20, 90));
        Pedals pedals = new Pedals(between(random, 60, 220), between(random, 100, 450));
        Shoe shoe = new Shoe(
                between(random, 40, 200),
                between(random, -20, 80),
                between(random, 5, 60),
                between(random, 0, 60),
                between(random, -30, 30),
                between(random, -60, 60));
        return new ToeCase(wheel, pedals, shoe);
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
}
