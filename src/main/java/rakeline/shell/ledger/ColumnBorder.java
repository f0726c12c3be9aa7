package rakeline.shell.ledger;

import java.awt.Graphics;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.function.IntConsumer;
import javax.swing.JComponent;
import javax.swing.SwingUtilities;
import rakeline.shell.look.Look;

/** The border between text and results in one row: it shows itself under the pointer and can be dragged. */
final class ColumnBorder extends JComponent {
    private final transient Look look;
    private boolean under;

    /**
     * @param dragged takes the x in the row to which the border is dragged
     */
    ColumnBorder(Look look, IntConsumer dragged) {
        this.look = look;
        setToolTipText("Drag to resize the columns");
        MouseAdapter mouse = new MouseAdapter() {
            @Override
            public void mouseEntered(MouseEvent event) {
                setUnder(true);
            }

            @Override
            public void mouseExited(MouseEvent event) {
                setUnder(false);
            }

            @Override
            public void mouseDragged(MouseEvent event) {
                dragged.accept(SwingUtilities.convertPoint(ColumnBorder.this, event.getPoint(), getParent()).x);
            }
        };
        addMouseListener(mouse);
        addMouseMotionListener(mouse);
    }

    private void setUnder(boolean now) {
        under = now;
        repaint();
    }

    @Override
    protected void paintComponent(Graphics g) {
        if (under) {
            g.setColor(look.edge());
            g.fillRect(getWidth() / 2, 0, look.px(1), getHeight());
        }
    }
}
