package rakeline.shell.look;

import java.awt.Component;
import javax.swing.JComponent;
import javax.swing.JOptionPane;
import javax.swing.SwingUtilities;
import javax.swing.event.AncestorEvent;
import javax.swing.event.AncestorListener;

/** Questions to the person, each answer in words of its own. */
public final class Ask {
    private Ask() {}

    /**
     * Asks, and waits for the answer.
     *
     * @param asked a sentence, or what is to be filled in
     * @param usual the place of the answer that Enter gives, from 0
     * @return the place of the answer given; -1 where the question was put away
     */
    public static int among(Component over, Object asked, String title, int usual, String... answers) {
        return JOptionPane.showOptionDialog(
                over,
                asked,
                title,
                JOptionPane.DEFAULT_OPTION,
                JOptionPane.PLAIN_MESSAGE,
                null,
                answers,
                answers[usual]);
    }

    /** Gives the keys to a part of what is to be filled in, once it is asked. */
    public static void first(JComponent part) {
        part.addAncestorListener(new AncestorListener() {
            @Override
            public void ancestorAdded(AncestorEvent event) {
                SwingUtilities.invokeLater(part::requestFocusInWindow);
            }

            @Override
            public void ancestorRemoved(AncestorEvent event) {
                // it was given the keys once
            }

            @Override
            public void ancestorMoved(AncestorEvent event) {
                // it has them already
            }
        });
    }
}
