package rakeline.shell.ledger;

import java.awt.Cursor;
import java.awt.Point;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import javax.swing.SwingUtilities;

/** Moves rows by dragging the margin of one of them; a line shows where they would stand. */
final class RowDrag extends MouseAdapter {
    /** Takes part in a drag. */
    interface Ground {
        /** Shows where rows would stand that are let go at a height of the page. */
        void showPlace(int y);

        /** Moves the rows there. */
        void letGo();
    }

    private static final int BEGINS_AFTER = 6;

    private final Ground ground;
    private int pressedAt;
    private boolean dragging;

    RowDrag(Ground ground) {
        this.ground = ground;
    }

    @Override
    public void mousePressed(MouseEvent event) {
        pressedAt = event.getY();
        dragging = false;
    }

    @Override
    public void mouseDragged(MouseEvent event) {
        dragging = dragging || Math.abs(event.getY() - pressedAt) > BEGINS_AFTER;
        if (dragging) {
            event.getComponent().setCursor(Cursor.getPredefinedCursor(Cursor.MOVE_CURSOR));
            Ledger ledger = (Ledger) SwingUtilities.getAncestorOfClass(Ledger.class, event.getComponent());
            Point there = SwingUtilities.convertPoint(event.getComponent(), event.getPoint(), ledger);
            ground.showPlace(there.y);
        }
    }

    @Override
    public void mouseReleased(MouseEvent event) {
        event.getComponent().setCursor(Cursor.getDefaultCursor());
        if (dragging) {
            ground.letGo();
        }
        dragging = false;
    }
}
