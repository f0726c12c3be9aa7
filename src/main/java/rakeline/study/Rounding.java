package rakeline.study;

import java.util.List;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.DecompositionSolver;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import rakeline.quantity.Input;

/**
 * How the differences of a chart scatter where nothing but rounding is at work: every printed number off by anything
 * within half its step, all alike likely (variance step²/12), carried to the differences by first order.
 */
final class Rounding {
    private final DecompositionSolver solver;

    private Rounding(RealMatrix covariance) {
        this.solver = new CholeskyDecomposition(covariance).getSolver();
    }

    static Rounding of(ChartedBike chart) {
        int size = chart.checks().size();
        double[][] covariance = new double[size][size];
        for (int i = 0; i < size; i++) {
            for (int k = 0; k < size; k++) {
                covariance[i][k] = shared(chart, i, k);
            }
            covariance[i][i] += variance(chart.step(chart.checks().get(i).charted()));
        }
        return new Rounding(MatrixUtils.createRealMatrix(covariance));
    }

    /** The product of two vectors of differences, in units of the scatter. */
    double product(double[] one, double[] other) {
        return MatrixUtils.createRealVector(one).dotProduct(solver.solve(MatrixUtils.createRealVector(other)));
    }

    /** The square of a vector's length, in units of the scatter. */
    double square(double[] of) {
        return product(of, of);
    }

    private static double shared(ChartedBike chart, int one, int other) {
        List<Input> rounded = chart.rounded();
        double sum = 0;
        for (int j = 0; j < rounded.size(); j++) {
            sum += chart.slopes(one)[j] * chart.slopes(other)[j] * variance(chart.step(rounded.get(j)));
        }
        return sum;
    }

    private static double variance(double step) {
        return step * step / 12;
    }
}
