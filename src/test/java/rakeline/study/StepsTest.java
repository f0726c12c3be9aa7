package rakeline.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import rakeline.quantity.Refusal;

class StepsTest {
    @Test
    void stepsAreMadeByMultiplication() {
        double[] steps = Steps.of(69, 74, 0.1).toArray();
        assertThat(steps).hasSize(51);
        for (int i = 0; i < 50; i++) {
            assertThat(steps[i]).isEqualTo(69 + i * 0.1);
        }
    }

    @Test
    void theEndIsAlwaysLastAndExact() {
        assertThat(Steps.of(69, 74, 0.1).at(50)).isEqualTo(74);
        assertThat(Steps.of(0, 1, 0.3).toArray()).containsExactly(0, 0.3, 0.6, 3 * 0.3, 1);
    }

    @Test
    void aStepLongerThanTheWayLeavesTheEnds() {
        assertThat(Steps.of(69, 70, 5).toArray()).containsExactly(69, 70);
    }

    @Test
    void aSweepMayRunDownward() {
        assertThat(Steps.of(74, 73, 0.25).toArray()).containsExactly(74, 73.75, 73.5, 73.25, 73);
    }

    @Test
    void withoutAStepThereAre201Values() {
        assertThat(Steps.of(69, 74).size()).isEqualTo(201);
        assertThat(Steps.of(69, 74).at(0)).isEqualTo(69);
        assertThat(Steps.of(69, 74).at(200)).isEqualTo(74);
    }

    @Test
    void aWayOfWholeStepsHasNoSliverAtItsEnd() {
        assertThat(Steps.of(0, 0.3, 0.1).size()).isEqualTo(4);
        assertThat((74 - 69.3) / 0.1).isGreaterThan(47);
        assertThat(Steps.of(69.3, 74, 0.1).size()).isEqualTo(48);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -0.1, Double.NaN, Double.POSITIVE_INFINITY})
    void aStepNotAboveZeroIsRefused(double step) {
        assertThatThrownBy(() -> Steps.of(69, 74, step)).isInstanceOf(Refusal.class);
    }

    @ParameterizedTest
    @CsvSource({"70, 70", "NaN, 70", "70, Infinity"})
    void aWayThatGoesNowhereIsRefused(double from, double to) {
        assertThatThrownBy(() -> Steps.of(from, to, 1)).isInstanceOf(Refusal.class);
        assertThatThrownBy(() -> Steps.of(from, to)).isInstanceOf(Refusal.class);
    }

    @Test
    void tooManyStepsAreRefused() {
        assertThatThrownBy(() -> Steps.of(0, 100, 1e-9)).isInstanceOf(Refusal.class);
    }
}
