package rakeline.shell.ledger;

import javax.swing.JTextPane;
import rakeline.shell.look.Look;
import rakeline.shell.look.Words;

/** A note set as text to read. */
public final class NotePane extends JTextPane {
    private final transient Look look;

    public NotePane(Look look) {
        this.look = look;
        setEditorKit(new NoteKit());
        Words.still(this);
        setEditable(false);
        setOpaque(false);
        setBorder(null);
        setFocusable(false);
    }

    /** Shows a note written in CommonMark. */
    public void show(String commonMark) {
        setDocument(NoteWriter.write(commonMark, look));
    }
}
