package rakeline.shell.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import javax.swing.text.Segment;
import org.fife.ui.rsyntaxtextarea.Token;
import org.fife.ui.rsyntaxtextarea.TokenTypes;
import org.junit.jupiter.api.Test;

class SnippetTokensTest {
    @Test
    void aWordOfModuleDeclarationsIsAName() {
        assertThat(type("small.with(head)", "with")).isEqualTo(TokenTypes.IDENTIFIER);
    }

    @Test
    void aWordOfTheLanguageStaysReserved() {
        assertThat(type("return small;", "return")).isIn(TokenTypes.RESERVED_WORD, TokenTypes.RESERVED_WORD_2);
    }

    private static int type(String line, String word) {
        char[] letters = line.toCharArray();
        Token token = new SnippetTokens().getTokenList(new Segment(letters, 0, letters.length), TokenTypes.NULL, 0);
        while (!word.equals(token.getLexeme())) {
            token = token.getNextToken();
        }
        return token.getType();
    }
}
