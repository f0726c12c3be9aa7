package rakeline.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import rakeline.geometry.Bike;
import rakeline.geometry.Bikes;

/** Charted numbers against derived ones. */
class ReconcileTest {
    /** Half a printed step of 1 mm, and what half a step of each number of the chart can move the wheelbase by. */
    @Test
    void theToleranceGrowsWithTheStepsOfTheChart() {
        double fine = only(Bikes.plain().with("charted.wheelbaseMm", 975)).tolerance();
        double coarse = only(Bikes.plain().with("charted.wheelbaseMm", 975).with("charted.stepMm", 5))
                .tolerance();
        assertThat(coarse).isGreaterThan(3 * fine);
    }

    /** The trail's slopes in closed form: by head angle −(R − f cos α)/sin² α, by offset −1/sin α; tyre and rim are sizes by name. */
    @Test
    void theToleranceOfTheTrailIsTheSumOfItsSlopes() {
        Residual trail = only(Bikes.plain().with("charted.trailMm", 70));
        double head = Math.toRadians(70.5);
        double byDegree = Math.toRadians((339 - 47 * Math.cos(head)) / Math.pow(Math.sin(head), 2));
        double byOffset = 1 / Math.sin(head);
        double expected = 0.5 + byDegree * 0.05 + byOffset * 0.5;
        assertThat(trail.tolerance()).isCloseTo(expected, within(1e-6));
    }

    /** By radius cot α. */
    @Test
    void aRadiusThatIsGivenIsRounded() {
        Bike nominal = Bikes.plain().with("charted.trailMm", 70);
        double more = only(nominal.with("wheels.front.radiusMm", 339)).tolerance()
                - only(nominal).tolerance();
        assertThat(more).isCloseTo(0.5 / Math.tan(Math.toRadians(70.5)), within(1e-6));
    }

    @Test
    void theResidualIsChartedMinusDerived() {
        Residual wheelbase = only(Bikes.plain().with("charted.wheelbaseMm", 985));
        assertThat(wheelbase.residual()).isCloseTo(985 - 975.2928405226467, within(1e-9));
        assertThat(wheelbase.isWithin()).isFalse();
    }

    @Test
    void aChartedNumberThatCannotBeDerivedIsLeftOut() {
        assertThat(Reconcile.residuals(Vocabulary.standard(), Bikes.plain().with("charted.standoverMm", 700)))
                .isEmpty();
    }

    private static Residual only(Bike bike) {
        List<Residual> residuals = Reconcile.residuals(Vocabulary.standard(), bike);
        assertThat(residuals).hasSize(1);
        return residuals.get(0);
    }
}
