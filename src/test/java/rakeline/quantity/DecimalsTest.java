package rakeline.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class DecimalsTest {
    @ParameterizedTest
    @CsvSource({"71.3, 71.3", "165, 165", "-0.0, 0", "0.001, 0.001", "1e21, 1000000000000000000000", "1e-7, 0.0000001"})
    void theShortestTextHasAPointAndNoExponent(double value, String text) {
        assertThat(Decimals.shortest(value)).isEqualTo(text);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.1, 1 / 3.0, 1234567.891, Double.MIN_VALUE, Double.MAX_VALUE, 71.3, 2e-3})
    void theShortestTextReadsBackAsTheSameNumber(double value) {
        assertThat(Double.parseDouble(Decimals.shortest(value))).isEqualTo(value);
    }

    @ParameterizedTest
    @CsvSource({"1.25, 1, 1.3", "-1.25, 1, −1.3", "-0.04, 1, 0.0", "71.3, 2, 71.30", "1e6, 0, 1000000"})
    void aFixedNumberIsRoundedHalfAwayFromZero(double value, int decimals, String text) {
        assertThat(Decimals.fixed(value, decimals)).isEqualTo(text);
    }

    @Test
    void noNumberIsADash() {
        assertThat(Decimals.fixed(Double.NaN, 1)).isEqualTo("–");
    }

    @ParameterizedTest
    @CsvSource({"65.12577540367904, 3, 65.126", "58, 3, 58", "-0.0001, 3, 0", "71.35, 1, 71.4", "NaN, 2, NaN"})
    void theShortestTextMayBeBounded(double value, int most, String text) {
        assertThat(Decimals.shortest(value, most)).isEqualTo(text);
    }

    @Test
    void peopleReadAMinusSignAndProgramsAHyphen() {
        assertThat(List.of(Decimals.shown(-17), Decimals.fixed(-17, 0), Decimals.shortest(-17)))
                .containsExactly("−17", "−17", "-17");
    }

    @ParameterizedTest
    @CsvSource({"toe room −23.0 mm, toe room -23.0 mm", "− first, − first", "90 − α, 90 − α", "−.5, -.5"})
    void onlyTheSignOfANumberIsTyped(String read, String typed) {
        assertThat(Decimals.typed(read)).isEqualTo(typed);
    }

    @ParameterizedTest
    @CsvSource({"57.29999999, 57.3", "-9.07372722, −9.074", "0.01381234, 0.0138", "1234567, 1234567", "0, 0", "3, 3"})
    void aNumberWithoutAUnitIsReadWithFewDigits(double value, String read) {
        assertThat(Decimals.brief(value)).isEqualTo(read);
    }
}
