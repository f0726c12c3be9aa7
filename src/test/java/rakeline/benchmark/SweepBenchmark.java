package rakeline.benchmark;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.Stream;
import org.hipparchus.analysis.solvers.AllowedSolution;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import rakeline.geometry.Bike;
import rakeline.geometry.Geometry;
import rakeline.geometry.Inputs;
import rakeline.geometry.Setting;
import rakeline.handling.Ride;
import rakeline.quantity.Measure;
import rakeline.study.Hold;
import rakeline.study.Mode;
import rakeline.study.Steps;
import rakeline.study.Sweep;
import rakeline.study.Swept;
import rakeline.study.Vocabulary;

/**
 * A sweep of the head angle in 500 steps, three measures, trail held by the fork's offset; beside the same solves by
 * the same root finder in two bare loops: one over bikes, which shows what a sweep adds to them, and one over plain
 * numbers that knows these three formulas and no others, which shows what it costs that any input can be swept.
 */
@State(Scope.Benchmark)
@BenchmarkMode(org.openjdk.jmh.annotations.Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(2)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
public class SweepBenchmark {
    private static final int STEPS = 500;
    private static final double FROM = 69;
    private static final double TO = 74;

    private final Bike bike = DemoBikes.read("road-m");
    private final BareBike bare = BareBike.of(bike);
    private final Sweep sweep = new Sweep(
            Ride.of(bike),
            Setting.of("frame.headAngleDeg"),
            Steps.of(FROM, TO, (TO - FROM) / (STEPS - 1)),
            Mode.REDRAW,
            Optional.of(new Hold(Vocabulary.standard().measure("trailMm"), Double.NaN, Setting.of("fork.offsetMm"))),
            tracks("trailMm", "wheelbaseMm", "handLeverMm"));

    @Benchmark
    public Swept library() {
        return sweep.run();
    }

    @Benchmark
    public double[][] bareLoop() {
        double target = bare.trail(bare.headAngle, bare.offset);
        double[][] columns = new double[3][STEPS];
        int first = (int) Math.round((bare.headAngle - FROM) / (TO - FROM) * (STEPS - 1));
        double offset = bare.offset;
        for (int i = first; i < STEPS; i++) {
            offset = bare.solved(i, offset, target, columns);
        }
        offset = bare.offset;
        for (int i = first - 1; i >= 0; i--) {
            offset = bare.solved(i, offset, target, columns);
        }
        return columns;
    }

    /** The same bikes, drawn one after another, without a sweep around them. */
    @Benchmark
    public double[][] loopOverBikes() {
        double target = Geometry.of(bike).side().trailMm();
        double[][] columns = new double[3][STEPS];
        double offset = bare.offset;
        for (int i = 0; i < STEPS; i++) {
            double head = FROM + i * (TO - FROM) / (STEPS - 1);
            offset = BareBike.nearestRoot(by -> drawn(head, by).side().trailMm() - target, offset);
            Geometry found = drawn(head, offset);
            columns[0][i] = found.side().trailMm();
            columns[1][i] = found.side().wheelbaseMm();
            columns[2][i] = found.handPoint().orElseThrow().leverMm();
        }
        return columns;
    }

    private Geometry drawn(double head, double offset) {
        return Geometry.of(bike.redraw(Map.of(Inputs.HEAD_ANGLE, head, Inputs.FORK_OFFSET, offset)));
    }

    private static List<Measure<Ride>> tracks(String... keys) {
        return Stream.of(keys).map(Vocabulary.standard()::tracked).toList();
    }

    /** The numbers of a bike that the three measures need. */
    private record BareBike(
            double stack,
            double reach,
            double headAngle,
            double drop,
            double chainstay,
            double offset,
            double frontRadius,
            double rearRadius,
            double stemUp,
            double stemLength,
            double stemAngle,
            double halfWidth,
            double hoodForward,
            double hoodRise) {
        private static final double LEAST_OFFSET = -100;
        private static final double MOST_OFFSET = 120;
        private static final double FIRST_STEP = 0.22;
        private static final double GROWTH = 1.5;

        static BareBike of(Bike bike) {
            return new BareBike(
                    bike.get("frame.stackMm"),
                    bike.get("frame.reachMm"),
                    bike.get("frame.headAngleDeg"),
                    bike.get("frame.bbDropMm"),
                    bike.get("frame.chainstayMm"),
                    bike.get("fork.offsetMm"),
                    bike.get("wheels.front.radiusMm"),
                    bike.get("wheels.rear.radiusMm"),
                    bike.get("cockpit.headsetCoverMm")
                            + bike.get("cockpit.spacersMm")
                            + bike.get("cockpit.stemClampHeightMm") / 2,
                    bike.get("cockpit.stemLengthMm"),
                    bike.get("cockpit.stemAngleDeg"),
                    bike.get("cockpit.bar.widthMm") / 2,
                    bike.get("cockpit.bar.hoodForwardMm"),
                    bike.get("cockpit.bar.hoodRiseMm"));
        }

        double solved(int step, double guess, double target, double[][] columns) {
            double head = FROM + step * (TO - FROM) / (STEPS - 1);
            double found = nearestRoot(by -> trail(head, by) - target, guess);
            columns[0][step] = trail(head, found);
            columns[1][step] = wheelbase(head, found);
            columns[2][step] = lever(head);
            return found;
        }

        double trail(double head, double by) {
            double headRad = Math.toRadians(head);
            return (frontRadius * Math.cos(headRad) - by) / Math.sin(headRad);
        }

        private double wheelbase(double head, double by) {
            double sin = Math.sin(Math.toRadians(head));
            double cos = Math.cos(Math.toRadians(head));
            double axleY = frontRadius - rearRadius + drop;
            return reach
                    + by * sin
                    + (stack + by * cos - axleY) / sin * cos
                    + Math.sqrt(chainstay * chainstay - drop * drop);
        }

        private double lever(double head) {
            double sin = Math.sin(Math.toRadians(head));
            double cos = Math.cos(Math.toRadians(head));
            double ahead = stemLength * Math.cos(Math.toRadians(stemAngle));
            double rise = stemLength * Math.sin(Math.toRadians(stemAngle));
            double x = -stemUp * cos + ahead * sin - rise * cos + hoodForward;
            double y = stemUp * sin + ahead * cos + rise * sin + hoodRise;
            return Math.hypot(x * sin + y * cos, halfWidth);
        }

        /** Outward on both sides in growing steps until the sign changes, then the library's root finder. */
        private static double nearestRoot(DoubleUnaryOperator function, double guess) {
            double atGuess = function.applyAsDouble(guess);
            if (atGuess == 0) {
                return guess;
            }
            double low = guess;
            double high = guess;
            double atLow = atGuess;
            double atHigh = atGuess;
            for (double step = FIRST_STEP; low > LEAST_OFFSET || high < MOST_OFFSET; step *= GROWTH) {
                double up = Math.min(MOST_OFFSET, high + step);
                double atUp = function.applyAsDouble(up);
                if (atHigh * atUp <= 0) {
                    return within(function, high, up);
                }
                double down = Math.max(LEAST_OFFSET, low - step);
                double atDown = function.applyAsDouble(down);
                if (atLow * atDown <= 0) {
                    return within(function, down, low);
                }
                high = up;
                atHigh = atUp;
                low = down;
                atLow = atDown;
            }
            return Double.NaN;
        }

        private static double within(DoubleUnaryOperator function, double low, double high) {
            return new BracketingNthOrderBrentSolver(1e-14, 1e-10, 1e-13, 5)
                    .solve(200, function::applyAsDouble, low, high, AllowedSolution.ANY_SIDE);
        }
    }
}
