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
        assertThat(roots(x -> -(x - 4.321) * (x - 4.321))).singleElement().satisfies(x -> near(x, 4.321));
        assertThat(scan(x -> -(x - 4.321) * (x - 4.321)).roots()).allMatch(RootScan.Root::touching);
    }

    @Test
    void aTouchThatIsNoParabolaIsSharpToo() {
        // D: (1 − cos((x − c)/2)) · (2 + x) turns at c, where it is 0
        assertThat(roots(x -> (1 - Math.cos((x - 6.54321) / 2)) * (2 + x)))
                .hasSize(1)
                .first()
                .satisfies(x -> near(x, 6.54321));
    }

    @Test
    void aCrossingIsNotATouch() {
        assertThat(scan(x -> x * x - 2).roots()).noneMatch(RootScan.Root::touching);
    }

    @ParameterizedTest
    @ValueSource(doubles = {1e-12, 1e-10, 1e-7, 1e-3})
    void aTurnThatPassesZeroByMoreThanRoundingIsTwoRoots(double by) {
        List<Double> roots = roots(x -> (x - 4.321) * (x - 4.321) - by);
        assertThat(roots).hasSize(2);
        assertThat(roots.get(1) - roots.get(0)).isCloseTo(2 * Math.sqrt(by), within(1e-3 * Math.sqrt(by)));
    }

    @ParameterizedTest
    @ValueSource(doubles = {1e-12, 1e-10, 1e-7, 1e-3})
    void aTurnThatStopsBeforeZeroByMoreThanRoundingIsNone(double by) {
        assertThat(roots(x -> (x - 4.321) * (x - 4.321) + by)).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(doubles = {4.3, 4.325, 4.321, 5.0000005, 4.9999995, 1e-9, 10 - 1e-9})
    void aRootBesideAPlaceIsWhereItIs(double root) {
        assertThat(roots(x -> 3 * (x - root)))
                .singleElement()
                .satisfies(x -> assertThat(x).isCloseTo(root, within(1e-14)));
        assertThat(roots(x -> Math.pow(x - root, 3) + 0.3 * (x - root)))
                .singleElement()
                .satisfies(x -> assertThat(x).isCloseTo(root, within(1e-14)));
    }

    @ParameterizedTest
    @ValueSource(doubles = {-1e-6, -1e-9, 10 + 1e-9, 10 + 1e-6})
    void aRootHardByTheRangeIsNotInIt(double root) {
        assertThat(roots(x -> 3 * (x - root))).isEmpty();
    }

    @Test
    void anEndIsARootToRoundingAndOnlyOnce() {
        double third = 1.0 / 3;
        assertThat(roots(x -> x * third * 3 - 10 + Math.ulp(10.0)))
                .singleElement()
                .satisfies(x -> near(x, 10));
        assertThat(roots(x -> x * x)).containsExactly(0.0);
    }

    @Test
    void whatIsNothingButRoundingIsAStretchAndNotManyRoots() {
        RootScan scan = scan(x -> (x * 0.1 + 7) - x * 0.1 - 7);
        assertThat(scan.roots()).hasSize(2);
        assertThat(scan.stretches()).containsExactly(new RootScan.Stretch(0, 10));
    }

    @Test
    void aSteepRootIsFoundAndASteepJumpIsNone() {
        assertThat(roots(x -> Math.cbrt(x - 4.321))).singleElement().satisfies(x -> near(x, 4.321));
        assertThat(roots(x -> (x < 4.321 ? -1 : 1) * (1e-4 + Math.sqrt(Math.abs(x - 4.321)))))
                .isEmpty();
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
        assertThat(scan.roots()).hasSize(2);
        assertThat(scan.stretches()).singleElement().satisfies(stretch -> {
            assertThat(stretch.from()).isCloseTo(3.7655, within(1e-7));
            assertThat(stretch.to()).isCloseTo(6.2345, within(1e-7));
        });
    }

    @Test
    void withoutARootTheNearestIsKnown() {
        RootScan scan = scan(x -> 0.5 + (x - 7.7777) * (x - 7.7777));
        assertThat(scan.roots()).isEmpty();
        assertThat(scan.nearest()).hasValueCloseTo(7.7777, within(1e-6));
    }

    @Test
    void withoutAnyValueThereIsNoNearest() {
        RootScan scan = scan(x -> Double.NaN);
        assertThat(scan.roots()).isEmpty();
        assertThat(scan.nearest()).isEmpty();
    }

    private static List<Double> roots(DoubleUnaryOperator function) {
        return scan(function).roots().stream().map(RootScan.Root::at).toList();
    }

    private static RootScan scan(DoubleUnaryOperator function) {
        return RootScan.of(function, Steps.evenly(0, 10, Seek.PLACES), 10);
    }

    private static void near(double value, double wanted) {
        assertThat(value).isCloseTo(wanted, within(1e-9));
    }
}
