package rakeline.shell.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.swing.text.AttributeSet;
import javax.swing.text.BadLocationException;
import javax.swing.text.Element;
import javax.swing.text.StyleConstants;
import javax.swing.text.StyledDocument;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import rakeline.figure.paint.Palette;
import rakeline.shell.look.Look;

/** A note from elsewhere shows as words, whatever it holds: nothing in it is fetched, run, or takes for ever. */
class HostileNoteTest {
    private static StyledDocument write(String note) {
        return NoteWriter.write(note, new Look(Palette.LIGHT, 1));
    }

    private static String text(String note) throws BadLocationException {
        StyledDocument document = write(note);
        return document.getText(0, document.getLength());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "<script>alert(1)</script>",
                "<img src=x onerror=alert(1)>",
                "<iframe src=\"https://example.org\"></iframe>",
                "<object data=\"file:///etc/passwd\"></object>",
                "<html><body>x</body></html>",
                "<!-- hidden -->",
                "<?php echo 1 ?>",
                "<![CDATA[x]]>"
            })
    void htmlShowsAsItIsWritten(String html) throws BadLocationException {
        assertThat(text(html)).isEqualTo(html);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "[x](javascript:alert(1))",
                "[x](JaVaScRiPt:alert(1))",
                "[x](data:text/html,<script>alert(1)</script>)",
                "[x](file:///etc/passwd)",
                "[x](vbscript:x)",
                "[x][a]\n\n[a]: javascript:alert(1)",
                "<javascript:alert(1)>",
                "![x](file:///etc/passwd)",
                "![x](https://example.org/track.png)",
                "[x](https://example.org)"
            })
    void aLinkOrAPictureIsWordsAndNothingToPressOrToLoad(String note) {
        assertThat(runs(write(note).getDefaultRootElement())).allSatisfy(run -> {
            assertThat(StyleConstants.getIcon(run)).isNull();
            assertThat(StyleConstants.getComponent(run)).isNull();
            assertThat(run.getAttribute(javax.swing.text.html.HTML.Tag.A)).isNull();
        });
    }

    private static List<AttributeSet> runs(Element element) {
        List<AttributeSet> all = new ArrayList<>();
        if (element.isLeaf()) {
            all.add(element.getAttributes());
        }
        IntStream.range(0, element.getElementCount()).forEach(i -> all.addAll(runs(element.getElement(i))));
        return all;
    }

    static Stream<String> monsters() {
        return Stream.of(
                "x".repeat(1_000_000),
                "word ".repeat(200_000),
                ">".repeat(50_000) + " deep",
                "- ".repeat(20_000) + "deep",
                "[".repeat(50_000),
                "*a _b ".repeat(20_000),
                "**a *b ".repeat(5_000) + "* **".repeat(5_000),
                "![".repeat(20_000) + "](a)".repeat(20_000),
                "`".repeat(50_000) + "a" + "`".repeat(40_000),
                "*".repeat(20_000) + "a" + "*".repeat(20_000),
                "![[]()".repeat(10_000),
                "<".repeat(50_000),
                "&".repeat(50_000),
                "\u202Edesrever\u0000\uD800");
    }

    @ParameterizedTest
    @MethodSource("monsters")
    void whatIsHugeOrDeepIsStillWords(String note) throws BadLocationException {
        assertThat(text(note)).isNotBlank();
    }
}
