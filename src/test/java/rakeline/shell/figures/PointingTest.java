package rakeline.shell.figures;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import rakeline.quantity.Numbers;

class PointingTest {
    private final Numbers steps = Numbers.of(69, 70, 71, 72);

    @Test
    void anotherChartPointsAtItsNearestStep() {
        assertThat(Pointing.nearest(steps, 70.6)).isEqualTo(2);
    }

    @Test
    void aChartThatDoesNotReachThereDoesNotPoint() {
        assertThat(Pointing.nearest(steps, 72.5)).isEqualTo(-1);
    }

    @Test
    void aChartThatRunsDownwardPointsToo() {
        assertThat(Pointing.nearest(Numbers.of(72, 71, 70), 70.9)).isEqualTo(1);
    }
}
