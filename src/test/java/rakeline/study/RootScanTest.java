package rakeline.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** All roots of a function; the values are those of the functions' own algebra. */
class RootScanTest {
    @Test
    void aSingleCrossingIsFound() {
        assertThat(roots(x -> x * x - 2)).hasSize(1).first().satisfies(x -> near(x, Math.sqrt(2)));
    }

    @ParameterizedTest
    @ValueSource(doubles = {1e-3, 1e-5, 1e-7})
    void twoRootsHoweverCloseAreTwo(double apart) {
        List<Double> roots = roots(x -> ((x - 3.3333) * (x - 3.3333) - apart * apart) / apart);
        assertThat(roots).hasSize(2);
        near(roots.get(1) - roots.get(0), 2 * apart);
    }

    @Test
    void aTouchingRootIsOne() {
        assertThat(roots(x -> -(x - 4.321) * (x - 4.321)))
                .singleElement()
                .satisfies(x -> assertThat(x).isCloseTo(4.321, within(1e-4)));
    }

    @Test
    void aTouchingKinkIsOne() {
        assertThat(roots(x -> Math.abs(x - 4.321))).singleElement().satisfies(x -> near(x, 4.321));
    }

    @Test
    void manyRootsComeUpward() {
        List<Double> roots = roots(x -> Math.sin(Math.PI * 2 * (x + 0.125)));
        assertThat(roots).hasSize(20).isSorted();
        near(roots.get(7), 3.875);
    }

    @Test
    void aJumpIsNoRoot() {
        assertThat(roots(x -> x < 5.55 ? -1 : 1)).isEmpty();
    }

    @Test
    void aRootBesideAJumpIsFound() {
        // between two places: up through zero at 5.551, down by a jump at 5.553, up through zero again at 5.5575
        assertThat(roots(x -> x < 5.553 ? x - 5.551 : x - 5.5575)).hasSize(2);
    }

    @Test
    void aRootHardByTheEdgeOfAGapIsFound() {
        assertThat(roots(x -> x > 6.0001 ? Double.NaN : 6 - x - 1e-5))
                .singleElement()
                .satisfies(x -> near(x, 6 - 1e-5));
    }

    @Test
    void aRootInANarrowIslandBetweenGapsIsFound() {
        assertThat(roots(x -> Math.abs(x - 6) > 0.02 ? Double.NaN : x - 6.015))
                .singleElement()
                .satisfies(x -> near(x, 6.015));
    }

    @Test
    void rootsAtTheEndsCount() {
        assertThat(roots(x -> x * (x - 10))).containsExactly(0.0, 10.0);
    }

    @Test
    void aStretchOfRootsIsKnownByItsEnds() {
        RootScan scan = scan(x -> Math.max(0, Math.abs(x - 5) - 1.2345));
        assertThat(scan.roots().size()).isEqualTo(2);
        assertThat(scan.stretches()).singleElement().satisfies(stretch -> {
            assertThat(stretch.from()).isCloseTo(3.7655, within(1e-7));
            assertThat(stretch.to()).isCloseTo(6.2345, within(1e-7));
        });
    }

    @Test
    void withoutARootTheNearestIsKnown() {
        RootScan scan = scan(x -> 0.5 + (x - 7.7777) * (x - 7.7777));
        assertThat(scan.roots().size()).isZero();
        assertThat(scan.nearest()).hasValueCloseTo(7.7777, within(1e-6));
    }

    @Test
    void withoutAnyValueThereIsNoNearest() {
        RootScan scan = scan(x -> Double.NaN);
        assertThat(scan.roots().size()).isZero();
        assertThat(scan.nearest()).isEmpty();
    }

    private static List<Double> roots(DoubleUnaryOperator function) {
        return scan(function).roots().stream().boxed().toList();
    }

    private static RootScan scan(DoubleUnaryOperator function) {
        return RootScan.of(function, Steps.evenly(0, 10, Seek.PLACES), 1e-8);
    }

    private static void near(double value, double wanted) {
        assertThat(value).isCloseTo(wanted, within(1e-9));
    }
}
