package rakeline.shell.ledger;

import java.awt.event.ActionEvent;
import javax.swing.InputMap;
import javax.swing.KeyStroke;
import javax.swing.SwingUtilities;
import javax.swing.ToolTipManager;
import javax.swing.UIManager;
import javax.swing.plaf.InputMapUIResource;
import org.fife.ui.rsyntaxtextarea.RSyntaxDocument;
import org.fife.ui.rsyntaxtextarea.RSyntaxTextArea;
import org.fife.ui.rsyntaxtextarea.RSyntaxTextAreaEditorKit;
import org.fife.ui.rsyntaxtextarea.Style;
import org.fife.ui.rsyntaxtextarea.SyntaxConstants;
import org.fife.ui.rsyntaxtextarea.SyntaxScheme;
import org.fife.ui.rsyntaxtextarea.TokenTypes;
import rakeline.shell.look.Look;
import rakeline.shell.look.Pointed;

/** The text of a snippet in the colours of the page; undo belongs to the page, not to it. */
final class SnippetEditor extends RSyntaxTextArea {
    private final transient Underline underline;

    SnippetEditor(Look look) {
        underline = new Underline(look.caution());
        setSyntaxEditingStyle(SyntaxConstants.SYNTAX_STYLE_JAVA);
        ((RSyntaxDocument) getDocument()).setSyntaxStyle(new SnippetTokens());
        setSyntaxScheme(scheme(look));
        setFont(look.code());
        setForeground(look.ink());
        setCaretColor(look.ink());
        setSelectionColor(look.hairline());
        setUseSelectedTextColor(false);
        setBorder(null);
        setHighlightCurrentLine(false);
        setBracketMatchingEnabled(true);
        setMatchedBracketBGColor(look.wash());
        setMatchedBracketBorderColor(look.edge());
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
        addParser(underline);
        ToolTipManager.sharedInstance().registerComponent(this);
        addKeyListener(new Pairs(this));
        TextDrop.install(this);
        Pointed.at(this, this::word);
    }

    /** Underlines the place that a message is about, until the text is another. */
    void underline(String message, String text) {
        underline.show(this, message, text);
    }

    /** The word at the caret, to both sides, as keys have them: with dots. */
    String word() {
        String text = getText();
        int start = Math.min(getCaretPosition(), text.length());
        int end = start;
        while (start > 0 && isOfWord(text.charAt(start - 1))) {
            start--;
        }
        while (end < text.length() && isOfWord(text.charAt(end))) {
            end++;
        }
        String word = text.substring(start, end);
        boolean key = start > 0 && text.charAt(start - 1) == '"';
        return key ? word : word.substring(word.lastIndexOf('.') + 1);
    }

    private static boolean isOfWord(char letter) {
        return Character.isJavaIdentifierPart(letter) || letter == '.';
    }

    /** The end of the word at the caret, behind its opening bracket where it has one. */
    int wordEnd() {
        String text = getText();
        int end = Math.min(getCaretPosition(), text.length());
        while (end < text.length() && Character.isJavaIdentifierPart(text.charAt(end))) {
            end++;
        }
        return end < text.length() && text.charAt(end) == '(' ? end + 1 : end;
    }

    /** Puts the lines of the selection behind comment marks, or takes those away. */
    void toggleComment() {
        ActionEvent event = new ActionEvent(this, ActionEvent.ACTION_PERFORMED, "");
        getActionMap().get(RSyntaxTextAreaEditorKit.rstaToggleCommentAction).actionPerformed(event);
    }

    /** Plain editing keys alone: all others mean an action on the page. */
    private void leaveKeysToThePage() {
        InputMap plain = new InputMapUIResource();
        plain.setParent((InputMap) UIManager.get("TextArea.focusInputMap"));
        plain.put(KeyStroke.getKeyStroke("shift TAB"), RSyntaxTextAreaEditorKit.rstaDecreaseIndentAction);
        plain.put(KeyStroke.getKeyStroke('}'), RSyntaxTextAreaEditorKit.rstaCloseCurlyBraceAction);
        SwingUtilities.replaceUIInputMap(this, WHEN_FOCUSED, plain);
    }

    /** Names stand in ink; numbers by weight, texts by slant and colour, words of Java and comments step back. */
    private static SyntaxScheme scheme(Look look) {
        SyntaxScheme scheme = new SyntaxScheme(false);
        for (int type = 0; type < scheme.getStyleCount(); type++) {
            scheme.setStyle(type, style(type, look));
        }
        return scheme;
    }

    private static Style style(int type, Look look) {
        return switch (type) {
            case TokenTypes.LITERAL_STRING_DOUBLE_QUOTE, TokenTypes.LITERAL_CHAR, TokenTypes.LITERAL_BACKQUOTE ->
                new Style(look.quoted(), null, look.codeSlanted());
            case TokenTypes.LITERAL_NUMBER_DECIMAL_INT,
                    TokenTypes.LITERAL_NUMBER_FLOAT,
                    TokenTypes.LITERAL_NUMBER_HEXADECIMAL -> new Style(look.ink(), null, look.codeStrong());
            case TokenTypes.COMMENT_EOL, TokenTypes.COMMENT_MULTILINE, TokenTypes.COMMENT_DOCUMENTATION ->
                new Style(look.soft(), null, look.codeSlanted());
            case TokenTypes.RESERVED_WORD, TokenTypes.RESERVED_WORD_2, TokenTypes.DATA_TYPE ->
                new Style(look.soft(), null, look.code());
            default -> new Style(look.ink(), null, look.code());
        };
    }
}
