package rakeline.shell.dials;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ScaleTest {
    private static final Scale HEAD = scale("69", "74", "0.1");
    private static final Scale CRANK = scale("145", "176", "2.5");

    private static Scale scale(String min, String max, String step) {
        return new Scale(new BigDecimal(min), new BigDecimal(max), new BigDecimal(step));
    }

    @Test
    void aPlaceIsMinAndWholeStepsWithoutBinaryNoise() {
        assertThat(HEAD.at(23)).isEqualTo(71.3);
    }

    @Test
    void bothEndsArePlaces() {
        assertThat(HEAD.at(0)).isEqualTo(69);
        assertThat(HEAD.at(HEAD.last())).isEqualTo(74);
    }

    @Test
    void theLastStepMayBeAShortOne() {
        assertThat(CRANK.at(CRANK.last() - 1)).isEqualTo(175);
        assertThat(CRANK.at(CRANK.last())).isEqualTo(176);
    }

    @ParameterizedTest
    @CsvSource({"145, 0", "146.2, 0", "146.3, 1", "175.4, 12", "175.6, 13", "200, 13", "100, 0"})
    void theNearestPlaceIsFound(double value, int place) {
        assertThat(CRANK.nearest(value)).isEqualTo(place);
    }

    @Test
    void aStepFromBetweenPlacesKeepsTheDistanceAndStaysInRange() {
        assertThat(HEAD.stepped(71.35, 1)).isEqualTo(71.45);
        assertThat(HEAD.stepped(73.95, 1)).isEqualTo(74);
    }
}
