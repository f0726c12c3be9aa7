package rakeline.shell.ledger;

import java.awt.Color;
import java.util.Optional;
import javax.swing.text.BadLocationException;
import org.fife.ui.rsyntaxtextarea.RSyntaxDocument;
import org.fife.ui.rsyntaxtextarea.RSyntaxTextArea;
import org.fife.ui.rsyntaxtextarea.parser.AbstractParser;
import org.fife.ui.rsyntaxtextarea.parser.DefaultParseResult;
import org.fife.ui.rsyntaxtextarea.parser.DefaultParserNotice;
import org.fife.ui.rsyntaxtextarea.parser.ParseResult;
import rakeline.engine.Spot;

/** Underlines the place that a row's message is about, as long as the text is the one that it was said of. */
final class Underline extends AbstractParser {
    private final Color colour;
    private String message = "";
    private String of = "";

    Underline(Color colour) {
        this.colour = colour;
    }

    /**
     * Shows another message; an empty one shows none.
     *
     * @param text that the message is about
     */
    void show(RSyntaxTextArea editor, String newMessage, String text) {
        if (!message.equals(newMessage) || !of.equals(text)) {
            message = newMessage;
            of = text;
            editor.getAccessibleContext().setAccessibleDescription(sentence());
            editor.forceReparsing(this);
        }
    }

    private String sentence() {
        return message.lines().findFirst().orElse("");
    }

    private Optional<Spot> spot(String text) {
        return message.isEmpty() || !text.equals(of) ? Optional.empty() : Spot.of(message, text);
    }

    @Override
    public ParseResult parse(RSyntaxDocument document, String style) {
        DefaultParseResult result = new DefaultParseResult(this);
        try {
            String text = document.getText(0, document.getLength());
            spot(text).ifPresent(spot -> result.addNotice(notice(document, spot)));
        } catch (BadLocationException e) {
            throw new IllegalStateException("all of a document can be read", e);
        }
        return result;
    }

    private DefaultParserNotice notice(RSyntaxDocument document, Spot spot) {
        int line = document.getDefaultRootElement().getElementIndex(spot.from());
        DefaultParserNotice notice =
                new DefaultParserNotice(this, sentence(), line, spot.from(), spot.to() - spot.from());
        notice.setColor(colour);
        return notice;
    }
}
