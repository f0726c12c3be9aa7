package rakeline.shell.ledger;

import java.awt.Cursor;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.SwingConstants;
import rakeline.shell.look.Look;

/** The line that stands for a folded answer, opens it and closes it; it says nothing of what is in it. */
final class FoldLine extends JButton {
    private static final String CLOSED = "Answer";

    FoldLine(Look look, Runnable turn) {
        setFont(look.strong());
        setForeground(look.accent());
        setHorizontalAlignment(SwingConstants.LEADING);
        setContentAreaFilled(false);
        setBorder(BorderFactory.createEmptyBorder());
        setFocusPainted(true);
        setCursor(Cursor.getPredefinedCursor(Cursor.HAND_CURSOR));
        addActionListener(event -> turn.run());
        setName("fold");
    }

    void say(boolean closed) {
        setText((closed ? "→ " : "↓ ") + CLOSED);
        setToolTipText(closed ? "Open the answer" : "Close the answer");
        getAccessibleContext().setAccessibleName(closed ? "Answer, closed" : "Answer, open");
    }
}
