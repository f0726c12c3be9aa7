package rakeline.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NamedTest {
    @ParameterizedTest
    @CsvSource({
        "trailThenMm, 48.13053328, 48.1 mm",
        "computedDeg, 1.05046101, 1.1°",
        "contactKmh, 9.48027980, 9.5 km/h",
        "torqueNm, -0.31234, −0.31 N m",
        "stiffnessNmPerRad, 12.345, 12.35 N m/rad",
        "wanted, -9.07372722, −9.074"
    })
    void theNameSaysTheUnitAndTheUnitTheDecimals(String name, double value, String said) {
        assertThat(new Named(name, value).said()).isEqualTo(said);
    }

    @Test
    void aSizeAtTheEndOfANameIsNoUnit() {
        assertThat(Unit.of("reachM")).isEmpty();
    }

    @Test
    void soMuchPerMillimetreIsNoLength() {
        assertThat(Unit.of("trailPerMm")).isEmpty();
    }

    @Test
    void aUnitAloneIsAName() {
        assertThat(Unit.of("Mm")).isEmpty();
    }
}
