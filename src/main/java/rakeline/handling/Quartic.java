package rakeline.handling;

import org.hipparchus.analysis.solvers.LaguerreSolver;
import org.hipparchus.complex.Complex;

/** s⁴ + a3 s³ + a2 s² + a1 s + a0. */
record Quartic(double a3, double a2, double a1, double a0) {

    /** Its four roots, in no order. */
    Complex[] roots() {
        return new LaguerreSolver(1e-15, 1e-14).solveAllComplex(new double[] {a0, a1, a2, a3, 1}, 0);
    }
}
