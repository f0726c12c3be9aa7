package rakeline.handling;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.hipparchus.complex.Complex;

/**
 * The speeds at which the linear bicycle changes its ways, in m/s, from the coefficients of its characteristic polynomial.
 *
 * <p>Source: Meijaard, Papadopoulos, Ruina and Schwab 2007: the capsize speed is where the constant term vanishes, the
 * weave speed where the Hurwitz determinant does with a pair ±iω, ω² = D/B above 0, whose real part falls.
 */
final class CriticalSpeeds {
    private static final double BEYOND = 1.5;
    private static final int LOOKED_AT = 400;
    private static final double TOP_OF_SEARCH = 4;

    private final LinearBicycle bicycle;
    private final Characteristic poly;

    private CriticalSpeeds(LinearBicycle bicycle) {
        this.bicycle = bicycle;
        this.poly = Characteristic.of(bicycle);
    }

    static CriticalSpeeds of(LinearBicycle bicycle) {
        return new CriticalSpeeds(bicycle);
    }

    /** The highest at which an oscillation stops to grow. */
    OptionalDouble weave() {
        return hurwitzZeros().filter(this::oscillationCalms).max();
    }

    /** The angular frequency at a weave speed, rad/s. */
    double frequency(double weaveMps) {
        return Math.sqrt(frequencySquared(weaveMps * weaveMps));
    }

    /** Where an upright fall begins, −g det K0 / (K0₁₁ K2₂₂ − K0₂₁ K2₁₂) under the root. */
    OptionalDouble capsize() {
        double square = -poly.e0() / poly.e2();
        return square > 0 && Double.isFinite(square) ? OptionalDouble.of(Math.sqrt(square)) : OptionalDouble.empty();
    }

    /** Where two real roots of the weave pair meet and begin to oscillate, the lowest. */
    OptionalDouble doubleRoot() {
        double top = TOP_OF_SEARCH
                * Math.sqrt(bicycle.parameters().g() * bicycle.parameters().w());
        double last = 0;
        for (int i = 1; i <= LOOKED_AT; i++) {
            double next = top * i / LOOKED_AT;
            if (discriminant(last) > 0 && discriminant(next) <= 0) {
                return OptionalDouble.of(
                        new BracketingNthOrderBrentSolver(1e-15, 1e-15, 5).solve(200, this::discriminant, last, next));
            }
            last = next;
        }
        return OptionalDouble.empty();
    }

    /** The first stretch of speeds, from 0 up, at which every motion dies out. */
    Optional<SelfStable> selfStable() {
        double[] edges = edges();
        for (int i = 0; i < edges.length; i++) {
            if (calmAfter(edges, i)) {
                int end = i + 1;
                while (end < edges.length && calmAfter(edges, end)) {
                    end++;
                }
                double to = end < edges.length ? edges[end] : Double.POSITIVE_INFINITY;
                return Optional.of(new SelfStable(edges[i], to));
            }
        }
        return Optional.empty();
    }

    /** The speeds at which stability can change, by Routh and Hurwitz. */
    private double[] edges() {
        return Stream.of(
                        hurwitzZeros(),
                        zero(poly.e0(), poly.e2()),
                        zero(poly.d1(), poly.d3()),
                        zero(poly.c0(), poly.c2()),
                        DoubleStream.of(0))
                .flatMapToDouble(zeros -> zeros)
                .sorted()
                .distinct()
                .toArray();
    }

    private boolean calmAfter(double[] edges, int i) {
        return isCalm(i + 1 < edges.length ? (edges[i] + edges[i + 1]) / 2 : edges[i] * BEYOND + 1);
    }

    private boolean isCalm(double v) {
        Quartic at = poly.at(v);
        double hurwitz = at.a3() * at.a2() * at.a1() - at.a1() * at.a1() - at.a0() * at.a3() * at.a3();
        return at.a3() > 0 && at.a2() > 0 && at.a1() > 0 && at.a0() > 0 && hurwitz > 0;
    }

    /** Speeds at which BCD − AD² − EB² vanishes: over v², a quadratic in u = v². */
    private DoubleStream hurwitzZeros() {
        Characteristic c = poly;
        double two = c.d3() * (c.b() * c.c2() - c.a() * c.d3());
        double one = c.b() * (c.c0() * c.d3() + c.c2() * c.d1() - c.e2() * c.b()) - 2 * c.a() * c.d1() * c.d3();
        double none = c.b() * c.c0() * c.d1() - c.a() * c.d1() * c.d1() - c.e0() * c.b() * c.b();
        double discriminant = one * one - 4 * two * none;
        if (discriminant < 0) {
            return DoubleStream.empty();
        }
        double far = -(one + Math.copySign(Math.sqrt(discriminant), one)) / 2;
        return DoubleStream.of(far / two, none / far)
                .filter(u -> u > 0 && Double.isFinite(u))
                .map(Math::sqrt);
    }

    private static DoubleStream zero(double constant, double square) {
        double u = -constant / square;
        return u > 0 && Double.isFinite(u) ? DoubleStream.of(Math.sqrt(u)) : DoubleStream.empty();
    }

    private double frequencySquared(double u) {
        return (poly.d1() + poly.d3() * u) / poly.b();
    }

    /** Whether a pair crosses the imaginary axis here, downward as speed rises. */
    private boolean oscillationCalms(double v) {
        double square = frequencySquared(v * v);
        return square > 0 && growthChange(v, Math.sqrt(square)) < 0;
    }

    /** Re ds/dv of the root s = iω, by implicit differentiation. */
    private double growthChange(double v, double omega) {
        Complex s = new Complex(0, omega);
        Complex bySpeed = s.multiply(poly.b())
                .add(2 * v * poly.c2())
                .multiply(s)
                .add(poly.d1() + 3 * v * v * poly.d3())
                .multiply(s)
                .add(2 * v * poly.e2());
        Complex byRoot = s.multiply(4 * poly.a())
                .add(3 * v * poly.b())
                .multiply(s)
                .add(2 * (poly.c0() + v * v * poly.c2()))
                .multiply(s)
                .add(v * (poly.d1() + v * v * poly.d3()));
        return -bySpeed.divide(byRoot).getReal();
    }

    private double discriminant(double v) {
        return ModeWalk.factorsAt(bicycle, v).weaveDiscriminant();
    }
}
