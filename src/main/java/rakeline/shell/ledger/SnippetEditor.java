package rakeline.shell.ledger;

import java.awt.Color;
import java.awt.Font;
import javax.swing.InputMap;
import javax.swing.SwingUtilities;
import javax.swing.UIManager;
import javax.swing.plaf.InputMapUIResource;
import org.fife.ui.rsyntaxtextarea.RSyntaxTextArea;
import org.fife.ui.rsyntaxtextarea.Style;
import org.fife.ui.rsyntaxtextarea.SyntaxConstants;
import org.fife.ui.rsyntaxtextarea.SyntaxScheme;
import org.fife.ui.rsyntaxtextarea.TokenTypes;
import rakeline.shell.look.Look;
import rakeline.study.Vocabulary;

/** The text of a snippet in the colours of the page; undo belongs to the page, not to it. */
final class SnippetEditor extends RSyntaxTextArea {
    SnippetEditor(Look look) {
        setSyntaxEditingStyle(SyntaxConstants.SYNTAX_STYLE_JAVA);
        setSyntaxScheme(scheme(look));
        setFont(look.code());
        setForeground(look.ink());
        setCaretColor(look.ink());
        setSelectionColor(look.hairline());
        setUseSelectedTextColor(false);
        setBorder(null);
        setHighlightCurrentLine(false);
        setBracketMatchingEnabled(false);
        setMarkOccurrences(false);
        setCodeFoldingEnabled(false);
        setLineWrap(true);
        setWrapStyleWord(true);
        setTabsEmulated(true);
        setTabSize(4);
        setAntiAliasingEnabled(true);
        setPopupMenu(null);
        getAccessibleContext().setAccessibleName("Snippet, Java");
        leaveKeysToThePage();
        WordHelp.install(this, Vocabulary.standard());
    }

    /** Plain editing keys alone: all others mean an action on the page. */
    private void leaveKeysToThePage() {
        InputMap plain = new InputMapUIResource();
        plain.setParent((InputMap) UIManager.get("TextArea.focusInputMap"));
        SwingUtilities.replaceUIInputMap(this, WHEN_FOCUSED, plain);
    }

    private static SyntaxScheme scheme(Look look) {
        SyntaxScheme scheme = new SyntaxScheme(false);
        Font plain = look.code();
        for (int type = 0; type < scheme.getStyleCount(); type++) {
            scheme.setStyle(type, new Style(colour(type, look), null, font(type, plain)));
        }
        return scheme;
    }

    private static Color colour(int type, Look look) {
        return switch (type) {
            case TokenTypes.LITERAL_STRING_DOUBLE_QUOTE, TokenTypes.LITERAL_CHAR, TokenTypes.LITERAL_BACKQUOTE ->
                look.quoted();
            case TokenTypes.LITERAL_NUMBER_DECIMAL_INT,
                    TokenTypes.LITERAL_NUMBER_FLOAT,
                    TokenTypes.LITERAL_NUMBER_HEXADECIMAL -> look.number();
            case TokenTypes.COMMENT_EOL, TokenTypes.COMMENT_MULTILINE, TokenTypes.COMMENT_DOCUMENTATION -> look.soft();
            default -> look.ink();
        };
    }

    private static Font font(int type, Font plain) {
        boolean keyword = type == TokenTypes.RESERVED_WORD || type == TokenTypes.RESERVED_WORD_2;
        return keyword || type == TokenTypes.DATA_TYPE ? plain.deriveFont(Font.BOLD) : plain;
    }
}
