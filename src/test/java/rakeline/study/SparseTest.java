package rakeline.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import rakeline.quantity.Numbers;

/** Columns that are read at few steps and filled between. */
class SparseTest {
    private static final Numbers STEPS = Steps.of(0, 2);

    private final AtomicInteger reads = new AtomicInteger();

    private double[] filled(DoubleUnaryOperator column, DoubleUnaryOperator course) {
        return new Sparse(
                        STEPS,
                        step -> {
                            reads.incrementAndGet();
                            return new double[] {column.applyAsDouble(STEPS.at(step))};
                        },
                        List.of(STEPS.map(course)))
                .columns(Crew.of(1), Progress.UNWATCHED)[0];
    }

    private static double worst(double[] filled, DoubleUnaryOperator column) {
        return IntStream.range(0, filled.length)
                .mapToDouble(step -> Math.abs(filled[step] - column.applyAsDouble(STEPS.at(step))))
                .max()
                .orElseThrow();
    }

    private static double smooth(double x) {
        return 2 + Math.sin(2 * x);
    }

    private static double kinked(double x) {
        return 1 + Math.abs(x - 0.777);
    }

    private static double stepped(double x) {
        return x < 1.234 ? 1 : 1.5;
    }

    private static double torn(double x) {
        return x > 0.5 && x < 0.53 ? Double.NaN : smooth(x);
    }

    @Test
    void aSmoothColumnIsReadAtFewSteps() {
        filled(SparseTest::smooth, SparseTest::smooth);
        assertThat(reads.get()).isLessThan(STEPS.size() / 3);
    }

    @Test
    void aSmoothColumnIsFilledCloserThanWhatIsProvedOnIt() {
        assertThat(worst(filled(SparseTest::smooth, SparseTest::smooth), SparseTest::smooth))
                .isLessThan(3 * Sparse.NEAR);
    }

    @Test
    void aKinkIsMetByWhatIsReadThere() {
        assertThat(worst(filled(SparseTest::kinked, SparseTest::kinked), SparseTest::kinked))
                .isCloseTo(0, within(3 * Sparse.NEAR));
    }

    @Test
    void aJumpStaysBetweenTheStepsWhereItIs() {
        assertThat(worst(filled(SparseTest::stepped, x -> 1), SparseTest::stepped))
                .isCloseTo(0, within(1e-14));
    }

    /** The column that belongs to a measure has no value where that has none, though no stretch is read there. */
    @Test
    void aGapBetweenTheStepsThatAreReadFirstIsFound() {
        double[] torn = filled(SparseTest::torn, SparseTest::torn);
        assertThat(IntStream.range(0, torn.length).filter(step -> Double.isNaN(torn[step])))
                .isNotEmpty()
                .allMatch(step -> Double.isNaN(torn(STEPS.at(step))));
    }

    @Test
    void aShortSweepIsReadAtEveryStep() {
        Numbers few = Steps.of(0, 2, 0.1);
        new Sparse(
                        few,
                        step -> {
                            reads.incrementAndGet();
                            return new double[] {1};
                        },
                        List.of(few))
                .columns(Crew.of(2), Progress.UNWATCHED);
        assertThat(reads.get()).isEqualTo(few.size());
    }
}
