package rakeline.engine;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SpotTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Line 1, column 5: nothing is called dobule here.|int dobule = 1;|dobule",
                "Line 2, column 3: Java cannot read this here.|one\\nab=cd|=",
                "Line 1, column 3: there is no wit in what stands before it.|xs.wit|wit",
                "Line 2: the code ran out of memory.|one\\n  two three|two three",
                "Line 1, column 9: something is missing here.|'int a = '|' '",
                "a bike has no \"frame.headAngel\"; did you mean \"frame.headAngleDeg\"?|xs.with(\"frame.headAngel\", 70)|frame.headAngel"
            })
    void theWordThatAMessageIsAboutIsFound(String message, String text, String word) {
        String whole = text.replace("\\n", "\n");
        Spot spot = Spot.of(message, whole).orElseThrow();
        assertThat(whole.substring(spot.from(), spot.to())).isEqualTo(word);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Line 7: what may go wrong here must be caught.|one line",
                "In row \"xs\", line 1: it ran out of memory.|Bike it = xs;",
                "the row was stopped.|while (true) {}"
            })
    void aMessageWithoutAPlaceInTheTextHasNone(String message, String text) {
        assertThat(Spot.of(message, text)).isEmpty();
    }
}
