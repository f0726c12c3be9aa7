package rakeline.shell.ledger;

import javax.swing.Timer;
import javax.swing.text.BadLocationException;
import javax.swing.text.Document;
import javax.swing.text.JTextComponent;
import rakeline.shell.look.TextChange;
import rakeline.shell.page.Bench;

/** Keeps a text component and a row's text the same: what is typed goes to the bench, what the bench has is shown. */
final class TypedText {
    private static final int BURST_ENDS_AFTER_MS = 1200;

    private final JTextComponent component;
    private final Bench bench;
    private final String id;
    private final Timer burst;
    private boolean showing;

    TypedText(JTextComponent component, Bench bench, String id) {
        this.component = component;
        this.bench = bench;
        this.id = id;
        burst = new Timer(BURST_ENDS_AFTER_MS, event -> bench.commit());
        burst.setRepeats(false);
        TextChange.in(component, this::typed);
    }

    /** Shows a text, touching only what differs, so that the caret stays where it is. */
    void show(String text) {
        String shown = component.getText();
        if (!shown.equals(text)) {
            showing = true;
            replaceDifference(shown, text);
            showing = false;
        }
    }

    private void replaceDifference(String before, String after) {
        int most = Math.min(before.length(), after.length());
        int head = 0;
        while (head < most && before.charAt(head) == after.charAt(head)) {
            head++;
        }
        int tail = 0;
        while (tail < most - head
                && before.charAt(before.length() - 1 - tail) == after.charAt(after.length() - 1 - tail)) {
            tail++;
        }
        replace(head, before.length() - head - tail, after.substring(head, after.length() - tail));
    }

    private void replace(int from, int length, String text) {
        try {
            Document document = component.getDocument();
            document.remove(from, length);
            document.insertString(from, text, null);
        } catch (BadLocationException e) {
            throw new IllegalStateException("A difference of two texts lies inside the first.", e);
        }
    }

    private void typed() {
        if (!showing) {
            bench.type(id, component.getText());
            burst.restart();
        }
    }
}
