package rakeline.benchmark;

import java.util.List;
import java.util.concurrent.TimeUnit;
import org.hipparchus.complex.Complex;
import org.hipparchus.linear.EigenDecompositionNonSymmetric;
import org.hipparchus.linear.MatrixUtils;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import rakeline.handling.LinearBicycle;
import rakeline.handling.Modes;
import rakeline.handling.PublishedBicycles;
import rakeline.handling.Root;
import rakeline.handling.Square;
import rakeline.handling.Stability;
import rakeline.quantity.Numbers;

/** Eigenvalues at 500 speeds, modes followed, beside a library's general dense solver called once for each speed. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(2)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
public class EigenvalueBenchmark {
    private static final double TOLERANCE = 1e-9;

    private final Stability stability = Stability.of(PublishedBicycles.benchmark());
    private final Numbers speeds = Numbers.generate(500, i -> 1 + 0.018 * i);

    /** Both find the same, or neither is timed. */
    @Setup
    public void check() {
        List<Modes> followed = followed();
        List<Complex[]> dense = dense();
        for (int i = 0; i < speeds.size(); i++) {
            for (Root root : followed.get(i).all()) {
                if (nearest(root, dense.get(i)) > TOLERANCE) {
                    throw new IllegalStateException("at " + speeds.at(i) + " m/s the solvers differ");
                }
            }
        }
    }

    @Benchmark
    public List<Modes> followed() {
        return stability.modes(speeds);
    }

    @Benchmark
    public List<Complex[]> dense() {
        return speeds.stream().mapToObj(this::dense).toList();
    }

    private Complex[] dense(double speed) {
        LinearBicycle bicycle = stability.bicycle();
        Square inverse = new Square(
                        bicycle.m().a22(),
                        -bicycle.m().a12(),
                        -bicycle.m().a21(),
                        bicycle.m().a11())
                .times(1 / bicycle.m().determinant());
        double[] spring = product(inverse, bicycle.stiffness(speed));
        double[] damper = product(inverse, bicycle.damping(speed));
        return new EigenDecompositionNonSymmetric(MatrixUtils.createRealMatrix(new double[][] {
                    {0, 0, 1, 0},
                    {0, 0, 0, 1},
                    {-spring[0], -spring[1], -damper[0], -damper[1]},
                    {-spring[2], -spring[3], -damper[2], -damper[3]}
                }))
                .getEigenvalues();
    }

    private static double[] product(Square a, Square b) {
        return new double[] {
            a.a11() * b.a11() + a.a12() * b.a21(),
            a.a11() * b.a12() + a.a12() * b.a22(),
            a.a21() * b.a11() + a.a22() * b.a21(),
            a.a21() * b.a12() + a.a22() * b.a22()
        };
    }

    private static double nearest(Root root, Complex... others) {
        double least = Double.POSITIVE_INFINITY;
        for (Complex other : others) {
            least = Math.min(
                    least, other.subtract(new Complex(root.re(), root.im())).norm());
        }
        return least;
    }
}
