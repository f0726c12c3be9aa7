package rakeline.shell.ledger;

import java.awt.Font;
import javax.swing.text.AttributeSet;
import javax.swing.text.BadLocationException;
import javax.swing.text.DefaultStyledDocument;
import javax.swing.text.MutableAttributeSet;
import javax.swing.text.SimpleAttributeSet;
import javax.swing.text.StyleConstants;

/** A document whose letters carry their font itself, not the name of one that the platform may lack. */
final class NoteDocument extends DefaultStyledDocument {
    /** The attribute that holds a font. */
    static final Object FONT = "note font";

    @Override
    public Font getFont(AttributeSet attributes) {
        boolean italic = StyleConstants.isItalic(attributes);
        if (attributes.getAttribute(FONT) instanceof Font font) {
            return italic ? font.deriveFont(Font.ITALIC) : font;
        }
        return super.getFont(attributes);
    }

    void append(String words, AttributeSet style) {
        try {
            insertString(getLength(), words, style);
        } catch (BadLocationException e) {
            throw new IllegalStateException("The end of a document is always a place in it.", e);
        }
    }

    /** Ends the last paragraph and begins another. */
    void endParagraph(AttributeSet paragraph) {
        setParagraphAttributes(getLength(), 0, paragraph, true);
        append("\n", SimpleAttributeSet.EMPTY);
    }

    /** Takes the last line end away, and the room below the last paragraph. */
    void endNote() {
        try {
            if (getLength() > 0 && getText(getLength() - 1, 1).equals("\n")) {
                remove(getLength() - 1, 1);
            }
        } catch (BadLocationException e) {
            throw new IllegalStateException("The last letter of a document is in it.", e);
        }
        MutableAttributeSet close = new SimpleAttributeSet();
        StyleConstants.setSpaceBelow(close, 0);
        setParagraphAttributes(getLength(), 0, close, false);
    }
}
