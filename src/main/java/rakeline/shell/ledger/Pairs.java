package rakeline.shell.ledger;

import java.awt.event.KeyAdapter;
import java.awt.event.KeyEvent;
import javax.swing.text.JTextComponent;

/**
 * Brackets and quotes in pairs: one that is opened is closed at once, one that is closed where it stands already is
 * stepped over, one that is taken away takes its partner along.
 */
final class Pairs extends KeyAdapter {
    private static final String OPENING = "([{\"";
    private static final String CLOSING = ")]}\"";
    private static final String ENDS = ")]};,. \n";

    private final JTextComponent editor;

    Pairs(JTextComponent editor) {
        this.editor = editor;
    }

    @Override
    public void keyTyped(KeyEvent event) {
        boolean selected = editor.getSelectionStart() != editor.getSelectionEnd();
        char typed = event.getKeyChar();
        if (selected || event.isControlDown() || event.isAltDown() || event.isMetaDown()) {
            return;
        }
        if (CLOSING.indexOf(typed) >= 0 && next() == typed) {
            editor.setCaretPosition(editor.getCaretPosition() + 1);
            event.consume();
        } else if (OPENING.indexOf(typed) >= 0 && ENDS.indexOf(next()) >= 0 && !(typed == '"' && isQuoted())) {
            editor.replaceSelection("" + typed + CLOSING.charAt(OPENING.indexOf(typed)));
            editor.setCaretPosition(editor.getCaretPosition() - 1);
            event.consume();
        }
    }

    /** The letter behind the caret; a line's end at the end of the text. */
    private char next() {
        int caret = editor.getCaretPosition();
        String text = editor.getText();
        return caret < text.length() ? text.charAt(caret) : '\n';
    }

    private boolean isQuoted() {
        String before = editor.getText().substring(0, editor.getCaretPosition());
        String line = before.substring(before.lastIndexOf('\n') + 1);
        return line.chars().filter(letter -> letter == '"').count() % 2 == 1;
    }

    /** A pair that is empty goes as a whole. */
    @Override
    public void keyPressed(KeyEvent event) {
        int caret = editor.getCaretPosition();
        boolean plain = event.getKeyCode() == KeyEvent.VK_BACK_SPACE
                && event.getModifiersEx() == 0
                && editor.getSelectionStart() == editor.getSelectionEnd();
        if (plain && caret > 0) {
            int kind = OPENING.indexOf(editor.getText().charAt(caret - 1));
            if (kind >= 0 && next() == CLOSING.charAt(kind)) {
                editor.select(caret - 1, caret + 1);
            }
        }
    }
}
