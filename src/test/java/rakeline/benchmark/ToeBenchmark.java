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
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;
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

    /** Runs every benchmark of this class, or those that the arguments name. */
    public static void main(String[] arguments) throws RunnerException {
        OptionsBuilder options = new OptionsBuilder();
        String name = ToeBenchmark.class.getSimpleName();
        options.include(arguments.length == 0 ? name : name + "." + arguments[0]);
        new Runner(options.build()).run();
    }

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

    /** The plain way. */
    private record ToeGrid(FrontWheel wheel, Pedals pedals, Shoe shoe) {
        private static final int ROUND = 24;
        private static final double CLOSE = 1e-5;
        private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;

        double leastGapMm() {
            double least = Double.POSITIVE_INFINITY;
            for (int steer = 0; steer <= 1800; steer++) {
                for (int crank = -180; crank <= 180; crank++) {
                    least = Math.min(least, leastOnRing(Math.toRadians(steer * 0.05), Math.toRadians(crank * 0.5)));
                }
            }
            return Math.max(0, least - shoe.toeRadiusMm() - wheel.tyreMm() / 2);
        }

        private double leastOnRing(double steer, double crank) {
            double step = 2 * Math.PI / ROUND;
            double best = 0;
            double least = distance(steer, crank, 0);
            for (int i = 1; i < ROUND; i++) {
                double here = distance(steer, crank, i * step);
                best = here < least ? i * step : best;
                least = Math.min(least, here);
            }
            return closeIn(steer, crank, best - step, best + step);
        }

        private double closeIn(double steer, double crank, double from, double to) {
            double low = from;
            double high = to;
            while (high - low > CLOSE) {
                double inner = GOLDEN * (high - low);
                boolean left = distance(steer, crank, high - inner) < distance(steer, crank, low + inner);
                low = left ? low : high - inner;
                high = left ? low + inner : high;
            }
            return distance(steer, crank, (low + high) / 2);
        }

        private double distance(double steer, double crank, double turn) {
            double head = Math.toRadians(wheel.headAngleDeg());
            double ring = wheel.radiusMm() - wheel.tyreMm() / 2;
            double out = wheel.offsetMm() + ring * Math.cos(turn);
            double forward = out * Math.cos(steer) - wheel.offsetMm();
            double rise = ring * Math.sin(turn);
            double x = wheel.axleXMm() + forward * Math.sin(head) - rise * Math.cos(head);
            double y = wheel.axleYMm() + forward * Math.cos(head) + rise * Math.sin(head);
            return toAxis(
                    x - pedals.crankMm() * Math.cos(crank),
                    y - pedals.crankMm() * Math.sin(crank) - shoe.toeHeightMm(),
                    -out * Math.sin(steer) - pedals.stanceWidthMm() / 2);
        }

        private double toAxis(double fromX, double y, double fromZ) {
            double sin = Math.sin(Math.toRadians(shoe.toeOutDeg()));
            double cos = Math.cos(Math.toRadians(shoe.toeOutDeg()));
            double reach = shoe.toeForwardMm() - shoe.toeRadiusMm();
            double x = fromX - reach * cos;
            double z = fromZ - reach * sin;
            double half = shoe.toeHalfWidthMm();
            double along = Math.max(-half, Math.min(half, z * cos - x * sin));
            return Math.sqrt(square(x + along * sin) + square(y) + square(z - along * cos));
        }

        private static double square(double value) {
            return value * value;
        }
    }
}
