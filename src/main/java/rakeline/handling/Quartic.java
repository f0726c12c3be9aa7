package rakeline.handling;

import org.hipparchus.complex.Complex;
import org.hipparchus.linear.EigenDecompositionNonSymmetric;
import org.hipparchus.linear.MatrixUtils;

/** s⁴ + a3 s³ + a2 s² + a1 s + a0. */
record Quartic(double a3, double a2, double a1, double a0) {

    /** Its four roots, in no order, as eigenvalues of the companion matrix: slow, but double roots do no harm. */
    Complex[] roots() {
        return new EigenDecompositionNonSymmetric(MatrixUtils.createRealMatrix(
                        new double[][] {{-a3, -a2, -a1, -a0}, {1, 0, 0, 0}, {0, 1, 0, 0}, {0, 0, 1, 0}}))
                .getEigenvalues();
    }
}
