package rakeline.shell.look;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class NumeralsTest {
    private final Locale before = Locale.getDefault(Locale.Category.FORMAT);

    @AfterEach
    void putTheLocaleBack() {
        Locale.setDefault(Locale.Category.FORMAT, before);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {"71.3|71.3", "71,3|71.3", " 72 |72", "-20|-20", "−20|-20", ",5|0.5", "+3.|3"})
    void aPointAndACommaAreTaken(String typed, double value) {
        assertThat(Numerals.read(typed)).hasValue(value);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "71.3°", "1.234,5", "NaN", "1e3", "seven", "0x10"})
    void whatIsNoPlainNumberIsNotTaken(String typed) {
        assertThat(Numerals.read(typed)).isEmpty();
    }

    @Test
    void theLocalesSignIsShown() {
        Locale.setDefault(Locale.Category.FORMAT, Locale.GERMANY);
        assertThat(Numerals.show(71.3, 1)).isEqualTo("71,3");
        Locale.setDefault(Locale.Category.FORMAT, Locale.UK);
        assertThat(Numerals.show(71.3, 1)).isEqualTo("71.3");
    }

    @Test
    void moreDecimalsThanUsualAreNotHidden() {
        Locale.setDefault(Locale.Category.FORMAT, Locale.UK);
        assertThat(Numerals.show(71.35, 1)).isEqualTo("71.35");
    }

    @Test
    void degreesAloneStandWithoutABlank() {
        assertThat(Numerals.withUnit("71", "°")).isEqualTo("71°");
        assertThat(Numerals.withUnit("58", "mm")).isEqualTo("58 mm");
    }
}
