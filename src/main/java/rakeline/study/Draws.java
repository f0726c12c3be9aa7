package rakeline.study;

import java.util.Random;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;

/**
 * Seeded normal deviates. Every draw comes with its mirror image and all are straightened, so that over the whole their
 * means are 0, their deviations 1 and their correlations 0 exactly: a measure that is linear in its inputs gets
 * its exact deviation, whatever the seed.
 */
final class Draws {
    private Draws() {}

    /**
     * Rows of deviates, a row a draw.
     *
     * @param count even, more than twice the doubts
     */
    static double[][] of(int count, int doubts, long seed) {
        double[][] rows = new double[count][doubts];
        if (doubts == 0) {
            return rows;
        }
        RealMatrix half = straightened(random(count / 2, doubts, seed));
        for (int i = 0; i < count / 2; i++) {
            rows[2 * i] = half.getRow(i);
            rows[2 * i + 1] = half.getRowMatrix(i).scalarMultiply(-1).getRow(0);
        }
        return rows;
    }

    private static RealMatrix random(int rows, int columns, long seed) {
        Random random = new Random(seed);
        double[][] numbers = new double[rows][columns];
        for (double[] row : numbers) {
            for (int i = 0; i < columns; i++) {
                row[i] = random.nextGaussian();
            }
        }
        return new Array2DRowRealMatrix(numbers, false);
    }

    /** With X'X/n = L L' the rows of X L'⁻¹ have the unit matrix in its place. */
    private static RealMatrix straightened(RealMatrix drawn) {
        RealMatrix covariance = drawn.transpose().multiply(drawn).scalarMultiply(1.0 / drawn.getRowDimension());
        RealMatrix upper = new CholeskyDecomposition(covariance).getLT();
        return drawn.multiply(MatrixUtils.inverse(upper));
    }
}
