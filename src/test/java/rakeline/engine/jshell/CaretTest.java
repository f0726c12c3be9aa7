package rakeline.engine.jshell;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import rakeline.engine.jshell.Caret.Place;

class CaretTest {
    @ParameterizedTest
    @CsvSource(
            quoteCharacter = '~',
            delimiter = ';',
            value = {
                "0 ; bike(\"",
                "0 ; bike(\"demo-data/b",
                "2 ; f(1, 2,\"",
                "1 ; f(g(1,2),\"",
                "0 ; f(\"a,\\\"b\", 1) + g(\"c",
                "0 ; s = \"\"\"text",
                "0 ; /* \" */ f(1) \"x",
                "1 ; f('\"',\"x"
            })
    void aTextThatIsOpenBeginsBehindItsQuotes(int argument, String code) {
        assertThat(Caret.atEndOf(code)).isEqualTo(new Caret(Place.TEXT, code.lastIndexOf('"') + 1, argument));
    }

    @Test
    void aQuoteBehindABackslashEndsNoText() {
        assertThat(Caret.atEndOf("f(\"a\\\"")).isEqualTo(new Caret(Place.TEXT, 3, 0));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "f(", "f(\"a\"", "f('\"'", "x = \"\"\"a\"\"\"", "\"a\nb", "/* \" */", "// \"\nf("})
    void codeIsCode(String code) {
        assertThat(Caret.atEndOf(code).place()).isEqualTo(Place.CODE);
    }

    @ParameterizedTest
    @ValueSource(strings = {"// a", "f(); // \"a", "/* a", "/* \"a\" *"})
    void aCommentIsAComment(String code) {
        assertThat(Caret.atEndOf(code).place()).isEqualTo(Place.COMMENT);
    }

    @Test
    void aLongTextIsRead() {
        String code = "f(\"" + "a\\n".repeat(100_000);
        assertThat(Caret.atEndOf(code)).isEqualTo(new Caret(Place.TEXT, 3, 0));
    }

    @Test
    void bracketsThatNothingOpenedDoNoHarm() {
        assertThat(Caret.atEndOf(")}], ").argument()).isEqualTo(1);
    }
}
