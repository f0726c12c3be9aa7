package rakeline.benchmark;

import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.openjdk.jmh.infra.Blackhole;
import rakeline.geometry.toe.FrontWheel;
import rakeline.geometry.toe.PedalClearance;
import rakeline.geometry.toe.Pedals;
import rakeline.geometry.toe.Shoe;
import rakeline.geometry.toe.ToeClearance;

/**
 * All toe numbers of one bike, beside the plain way: a grid of 0.05° of steer by 0.5° of crank, at each of which the
 * toe's axis is met in closed form and the ring is closed in on from a coarse round.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 1)
public class ToeBenchmark {
    /** How far the toes are turned outward, degrees: with none, more of the work has a closed form. */
    @Param({"0", "7"})
    public double toeOutDeg;

    /** Pedal axis to the foremost point of the shoe, mm: one that overlaps and one that does not. */
    @Param({"105", "80"})
    public double toeForwardMm;

    private final FrontWheel wheel = wheel();
    private final Pedals pedals = new Pedals(165, 230);

    @Benchmark
    public void everyToeNumber(Blackhole hole) {
        PedalClearance pedal = new PedalClearance(wheel, pedals);
        ToeClearance toe = toe();
        hole.consume(pedal.pedalToTyre());
        hole.consume(pedal.pedalToTyreLevel());
        hole.consume(toe.toeRoom());
        hole.consume(toe.toeGapLeast());
        hole.consume(toe.toeGapStraightMm());
        hole.consume(toe.toeContact());
    }

    @Benchmark
    public void toeRoomAlone(Blackhole hole) {
        hole.consume(toe().toeRoom());
    }

    @Benchmark
    public void toeRoomSwept101(Blackhole hole) {
        for (int i = 0; i <= 100; i++) {
            Shoe shoe = new Shoe(toeForwardMm - 20 + 0.4 * i, 30, 25, 20, toeOutDeg, 0);
            hole.consume(new ToeClearance(wheel, pedals, shoe).toeRoom());
        }
    }

    /** The grid for a single number, the least gap; the others would each cost as much again. */
    @Benchmark
    @Warmup(iterations = 1, time = 1)
    @Measurement(iterations = 2, time = 1)
    public double gridForOneNumber() {
        return new ToeGrid(wheel, pedals, new Shoe(toeForwardMm, 30, 25, 20, toeOutDeg, 0)).leastGapMm();
    }

    private ToeClearance toe() {
        return new ToeClearance(wheel, pedals, new Shoe(toeForwardMm, 30, 25, 20, toeOutDeg, 0));
    }

    /** Stack 515, reach 366, head angle 70.5°, offset 47, drop 74, wheels 622 × 28. */
    private static FrontWheel wheel() {
        double head = Math.toRadians(70.5);
        double axleX = 366 + (515 - 74) / Math.tan(head) + 47 / Math.sin(head);
        return new FrontWheel(70.5, axleX, 74, 47, 339, 28, 0, 90);
    }

    /** The plain way, with nothing computed twice that a loop further out can compute once. */
    private static final class ToeGrid {
        private static final int ROUND = 24;
        /** Radians of the ring: within 0.01 mm of the least distance. */
        private static final double CLOSE = 1e-3;

        private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;

        private final FrontWheel wheel;
        private final Pedals pedals;
        private final Shoe shoe;
        private final double ring;
        private final double sinHead;
        private final double cosHead;
        private final double sinOut;
        private final double cosOut;
        private final double reach;

        ToeGrid(FrontWheel wheel, Pedals pedals, Shoe shoe) {
            this.wheel = wheel;
            this.pedals = pedals;
            this.shoe = shoe;
            ring = wheel.radiusMm() - wheel.tyreMm() / 2;
            sinHead = Math.sin(Math.toRadians(wheel.headAngleDeg()));
            cosHead = Math.cos(Math.toRadians(wheel.headAngleDeg()));
            sinOut = Math.sin(Math.toRadians(shoe.toeOutDeg()));
            cosOut = Math.cos(Math.toRadians(shoe.toeOutDeg()));
            reach = shoe.toeForwardMm() - shoe.toeRadiusMm();
        }

        double leastGapMm() {
            double least = Double.POSITIVE_INFINITY;
            for (int steer = 0; steer <= 1800; steer++) {
                double steerRad = Math.toRadians(steer * 0.05);
                double sin = Math.sin(steerRad);
                double cos = Math.cos(steerRad);
                for (int crank = -180; crank <= 180; crank++) {
                    least = Math.min(
                            least, spot(sin, cos, Math.toRadians(crank * 0.5)).leastOnRing());
                }
            }
            return Math.max(0, least - shoe.toeRadiusMm() - wheel.tyreMm() / 2);
        }

        /** The middle of the toe's axis seen from the wheel's axle, everything turned as it stands. */
        private Spot spot(double sinSteer, double cosSteer, double crank) {
            double x = pedals.crankMm() * Math.cos(crank) + reach * cosOut - wheel.axleXMm();
            double y = pedals.crankMm() * Math.sin(crank) + shoe.toeHeightMm() - wheel.axleYMm();
            return new Spot(sinSteer, cosSteer, x, y, pedals.stanceWidthMm() / 2 + reach * sinOut);
        }

        /** One steer and one crank angle. */
        private final class Spot {
            private final double sinSteer;
            private final double cosSteer;
            private final double toeX;
            private final double toeY;
            private final double toeZ;

            Spot(double sinSteer, double cosSteer, double toeX, double toeY, double toeZ) {
                this.sinSteer = sinSteer;
                this.cosSteer = cosSteer;
                this.toeX = toeX;
                this.toeY = toeY;
                this.toeZ = toeZ;
            }

            double leastOnRing() {
                double step = 2 * Math.PI / ROUND;
                double best = 0;
                double least = distance(0);
                for (int i = 1; i < ROUND; i++) {
                    double here = distance(i * step);
                    best = here < least ? i * step : best;
                    least = Math.min(least, here);
                }
                return closeIn(best - step, best + step);
            }

            private double closeIn(double from, double to) {
                double low = from;
                double high = to;
                double left = high - GOLDEN * (high - low);
                double right = low + GOLDEN * (high - low);
                double atLeft = distance(left);
                double atRight = distance(right);
                while (high - low > CLOSE) {
                    if (atLeft < atRight) {
                        high = right;
                        right = left;
                        atRight = atLeft;
                        left = high - GOLDEN * (high - low);
                        atLeft = distance(left);
                    } else {
                        low = left;
                        left = right;
                        atLeft = atRight;
                        right = low + GOLDEN * (high - low);
                        atRight = distance(right);
                    }
                }
                return Math.min(atLeft, atRight);
            }

            /** From a place of the ring to the toe's axis, in closed form. */
            private double distance(double turn) {
                double out = wheel.offsetMm() + ring * Math.cos(turn);
                double rise = ring * Math.sin(turn);
                double forward = out * cosSteer - wheel.offsetMm();
                double x = forward * sinHead - rise * cosHead - toeX;
                double y = forward * cosHead + rise * sinHead - toeY;
                double z = -out * sinSteer - toeZ;
                double half = shoe.toeHalfWidthMm();
                double along = Math.max(-half, Math.min(half, z * cosOut - x * sinOut));
                return Math.sqrt(square(x + along * sinOut) + square(y) + square(z - along * cosOut));
            }
        }

        private static double square(double value) {
            return value * value;
        }
    }
}
