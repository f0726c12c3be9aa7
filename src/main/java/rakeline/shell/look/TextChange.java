package rakeline.shell.look;

import javax.swing.event.DocumentEvent;
import javax.swing.event.DocumentListener;
import javax.swing.text.JTextComponent;

/** Tells when the text of a field has become another. */
public final class TextChange implements DocumentListener {
    private final Runnable told;

    private TextChange(Runnable told) {
        this.told = told;
    }

    /** Tells of every change from now on. */
    public static void in(JTextComponent field, Runnable told) {
        field.getDocument().addDocumentListener(new TextChange(told));
    }

    @Override
    public void insertUpdate(DocumentEvent event) {
        told.run();
    }

    @Override
    public void removeUpdate(DocumentEvent event) {
        told.run();
    }

    @Override
    public void changedUpdate(DocumentEvent event) {
        // styles alone
    }
}
