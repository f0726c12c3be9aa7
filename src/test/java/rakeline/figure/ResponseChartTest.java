package rakeline.figure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import rakeline.handling.LinearBicycle;
import rakeline.handling.PublishedBicycles;
import rakeline.handling.Response;
import rakeline.handling.Response.Torque;
import rakeline.handling.Square;
import rakeline.quantity.Numbers;
import rakeline.study.Steps;

/** Figures of the answer to a torque, upon the published bicycle of Meijaard et al. 2007, table 1 (S). */
class ResponseChartTest {
    private static final LinearBicycle BICYCLE = LinearBicycle.of(PublishedBicycles.benchmark());
    private static final Response AT_5 = new Response(BICYCLE, 5, Torque.STEER);

    private static Numbers panel(Chart chart, String key) {
        return chart.panels().stream()
                .filter(panel -> panel.quantity().key().equals(key))
                .findFirst()
                .orElseThrow()
                .values();
    }

    @Test
    void aSwingIsSoManyDegreesForANewtonMetre() {
        Chart chart = ResponseChart.swing("Published", AT_5, Steps.of(0, 20));
        assertThat(chart.x().heading()).isEqualTo("Angular frequency, rad/s");
        assertThat(chart.panels().get(0).quantity().heading()).isEqualTo("Lean, °/(N m)");
    }

    @Test
    void aStepBeginsAtRestAndEndsOnTheStaticSolutionInDegrees() {
        Chart chart = ResponseChart.step("Published", AT_5, Steps.of(0, 120));
        Numbers steer = panel(chart, "steerDeg");
        Square k = BICYCLE.stiffness(5);
        assertThat(steer.at(0)).isZero();
        assertThat(steer.at(steer.size() - 1)).isCloseTo(Math.toDegrees(k.a11() / k.determinant()), within(1e-9));
    }

    @Test
    void aVerySlowSwingHasTheAmplitudeOfTheStaticSolution() {
        Square k = BICYCLE.stiffness(5);
        Chart chart = ResponseChart.swing("Published", AT_5, Steps.of(0, 20));
        assertThat(panel(chart, "leanDegPerNm").at(0))
                .isCloseTo(Math.abs(Math.toDegrees(k.a12() / k.determinant())), within(1e-9));
    }

    /** Far above every eigenvalue only the masses count: amplitude falls with the square, half a turn behind or ahead. */
    @Test
    void aVeryFastSwingIsCarriedByTheMassesAlone() {
        double omega = 1e5;
        Chart chart = ResponseChart.swing("Published", AT_5, Numbers.of(omega));
        Square m = BICYCLE.m();
        assertThat(panel(chart, "steerDegPerNm").at(0) * omega * omega)
                .isCloseTo(Math.toDegrees(m.a11() / m.determinant()), within(1e-3));
        assertThat(Math.abs(panel(chart, "steerPhaseDeg").at(0))).isCloseTo(180, within(0.1));
    }

    @Test
    void aPhaseRunsOnWithoutAJump() {
        Chart chart = ResponseChart.swing("Published", AT_5, Steps.of(0, 30));
        Numbers phase = panel(chart, "leanPhaseDeg");
        for (int i = 1; i < phase.size(); i++) {
            assertThat(Math.abs(phase.at(i) - phase.at(i - 1))).isLessThan(180);
        }
    }

    @Test
    void theTitleSaysTorqueAndSpeedAndTheCautionWhatIsLeftOut() {
        Chart chart = ResponseChart.step("Published", AT_5, Steps.of(0, 0.1));
        assertThat(chart.title()).isEqualTo("Published: a step of 1 N m of steer torque at 5.00 m/s");
        assertThat(chart.cautions()).containsExactly(StabilityChart.LEFT_OUT);
    }
}
