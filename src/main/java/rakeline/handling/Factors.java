package rakeline.handling;

import java.util.Arrays;
import java.util.Comparator;
import java.util.Optional;
import org.hipparchus.complex.Complex;

/**
 * A quartic as two real quadratics, {@code (s² + p s + q)(s² + r s + t)}: the first holds the weave pair, the second
 * capsize and castering. They change smoothly with speed, also where two real roots of one become a pair.
 */
record Factors(double p, double q, double r, double t) {
    private static final int MOST_STEPS = 12;
    private static final double SETTLED = 1e-9;

    /** At standstill, where the quartic is {@code s⁴ + a2 s² + a0}: what grows or oscillates first, then the rest. */
    static Factors atRest(Quartic quartic) {
        double root = Math.sqrt(Math.max(0, quartic.a0()));
        double square = 2 * root - quartic.a2();
        if (quartic.a0() > 0 && square >= 0) {
            double p = Math.sqrt(square);
            return new Factors(-p, root, p, root);
        }
        double half = quartic.a2() / 2;
        double larger = half + Math.copySign(Math.sqrt(half * half - quartic.a0()), half);
        double smaller = larger == 0 ? 0 : quartic.a0() / larger;
        return new Factors(0, Math.max(larger, smaller), 0, Math.min(larger, smaller));
    }

    /** From the roots: a pair, where there is one, else the two largest, before the rest. */
    static Factors fromRoots(Quartic quartic) {
        Complex[] roots = quartic.roots();
        Arrays.sort(roots, Comparator.comparingDouble(root -> -Math.abs(root.getImaginary())));
        double scale = 1e-7 * (1 + roots[0].norm());
        if (Math.abs(roots[0].getImaginary()) < scale) {
            Arrays.sort(roots, Comparator.comparingDouble(root -> -root.getReal()));
            return product(roots[0].getReal(), roots[1].getReal(), 0, roots[2].getReal(), roots[3].getReal());
        }
        double re = roots[0].getReal();
        double im = roots[0].getImaginary();
        double p = -2 * re;
        double q = re * re + im * im;
        double r = quartic.a3() - p;
        return new Factors(p, q, r, quartic.a2() - q - p * r);
    }

    private static Factors product(double one, double two, double im, double three, double four) {
        return new Factors(-(one + two), one * two + im * im, -(three + four), three * four);
    }

    /** Solved for a quartic by Newton's method from here; empty where that does not settle. */
    Optional<Factors> solved(Quartic quartic) {
        Factors now = this;
        for (int step = 0; step < MOST_STEPS; step++) {
            Factors next = now.stepped(quartic);
            double moved = now.distance(next);
            if (moved <= SETTLED * (1 + Math.abs(next.p) + Math.abs(next.r))) {
                return Optional.of(next);
            }
            if (!Double.isFinite(moved)) {
                return Optional.empty();
            }
            now = next;
        }
        return Optional.empty();
    }

    /** The largest change of a sum of roots, or of a product by the size of its roots, 1/s. */
    double distance(Factors other) {
        double linear = Math.max(Math.abs(other.p - p), Math.abs(other.r - r));
        double size = 1 + Math.abs(p) + Math.abs(r);
        return Math.max(linear, Math.max(Math.abs(other.q - q), Math.abs(other.t - t)) / size);
    }

    /** One step of Newton's method on the four coefficients, two of the unknowns eliminated. */
    private Factors stepped(Quartic quartic) {
        double f1 = p + r - quartic.a3();
        double f2 = Math.fma(p, r, q + t - quartic.a2());
        double f3 = Math.fma(p, t, Math.fma(q, r, -quartic.a1()));
        double f4 = Math.fma(q, t, -quartic.a0());
        double apart = r - p;
        double level = t - q;
        double tilted = level - p * apart;
        double rest = f2 - p * f1;
        double h3 = q * f1 + p * rest - f3;
        double h4 = q * rest - f4;
        double resultant = tilted * level + q * apart * apart;
        double dp = (h3 * level - h4 * apart) / resultant;
        double dq = (h4 * tilted + h3 * q * apart) / resultant;
        return new Factors(p + dp, q + dq, r - f1 - dp, t - rest - apart * dp - dq);
    }

    /** As modes, each pair with its positive frequency or its greater root first. */
    Modes modes(double speedMps) {
        double weave = Math.fma(p / 2, p / 2, -q);
        double rest = Math.fma(r / 2, r / 2, -t);
        return new Modes(speedMps, first(p, q, weave), second(p, q, weave), first(r, t, rest), second(r, t, rest));
    }

    /** Above 0 where the weave pair is two real roots, below where it oscillates. */
    double weaveDiscriminant() {
        return Math.fma(p / 2, p / 2, -q);
    }

    private static Root first(double sum, double product, double discriminant) {
        if (discriminant < 0) {
            return new Root(-sum / 2, Math.sqrt(-discriminant));
        }
        double far = far(sum, discriminant);
        return new Root(far > 0 || far == 0 ? far : product / far, 0);
    }

    private static Root second(double sum, double product, double discriminant) {
        if (discriminant < 0) {
            return new Root(-sum / 2, -Math.sqrt(-discriminant));
        }
        double far = far(sum, discriminant);
        return new Root(far > 0 ? product / far : far, 0);
    }

    /** The real root farther from 0, which loses no digits. */
    private static double far(double sum, double discriminant) {
        return -sum / 2 - Math.copySign(Math.sqrt(discriminant), sum);
    }
}
