package rakeline.worksheet;

import static org.assertj.core.api.Assertions.assertThat;

import org.commonmark.node.FencedCodeBlock;
import org.commonmark.node.Node;
import org.commonmark.node.Paragraph;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class NoteTextTest {
    @ParameterizedTest
    @ValueSource(ints = {NoteText.DEEPEST, 50_000})
    void quotesOneInAnotherBeyondTheBoundAreTextAsItIsWritten(int depth) {
        String note = ">".repeat(depth) + " deep";
        assertThat(literal(NoteText.parse(note))).isEqualTo(note);
    }

    @Test
    void quotesWithinTheBoundAreRead() {
        assertThat(NoteText.parse(">".repeat(NoteText.DEEPEST - 2) + " deep").getFirstChild())
                .isNotInstanceOf(FencedCodeBlock.class);
    }

    @Test
    void manyShallowBlocksAreRead() {
        assertThat(NoteText.parse("> a\n\n- b\n\n".repeat(1_000)).getFirstChild())
                .isNotInstanceOf(FencedCodeBlock.class);
    }

    @ParameterizedTest
    @ValueSource(strings = {"<", "[", "*", "_"})
    void moreOpeningSignsThanTheBoundAreTextAsItIsWritten(String sign) {
        String note = sign.repeat(NoteText.MOST_SIGNS + 1);
        assertThat(literal(NoteText.parse(note))).isEqualTo(note);
    }

    @Test
    void aUsualNoteIsRead() {
        assertThat(NoteText.parse("Trail [explained](https://example.org) <b>").getFirstChild())
                .isInstanceOf(Paragraph.class);
    }

    private static String literal(Node note) {
        return ((FencedCodeBlock) note.getFirstChild()).getLiteral();
    }
}
