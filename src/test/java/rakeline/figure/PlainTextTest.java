package rakeline.figure;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class PlainTextTest {
    @Test
    void markupStaysAsItIs() {
        assertThat(PlainText.oneLine("<b>&amp;</b>")).isEqualTo("<b>&amp;</b>");
    }

    @Test
    void otherScriptsStayAsTheyAre() {
        assertThat(PlainText.oneLine("דו\u202Eאופן 自転車 🚲")).isEqualTo("דו\u202Eאופן 自転車 🚲");
    }

    @Test
    void breaksAndControlCharactersBecomeBlanks() {
        assertThat(PlainText.oneLine("a\r\nb\tc\u0000d\u2028e")).isEqualTo("a  b c d e");
    }

    @Test
    void whatXmlForbidsIsReplaced() {
        assertThat(PlainText.oneLine("a\uFFFEb\uD800c")).isEqualTo("a\uFFFDb\uFFFDc");
    }
}
