package rakeline.shell.figures;

import java.awt.Cursor;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import javax.swing.JRootPane;
import javax.swing.SwingUtilities;
import rakeline.figure.paint.ChartPainter;

/** The line under a chart that says what was held: a click on it lets the person hold something else. */
final class HeldHand extends MouseAdapter {
    static final String WORDS = "Hold something else…";

    private final FigureView figure;

    HeldHand(FigureView figure) {
        this.figure = figure;
    }

    /** Whether the pointer is on that line, in a window where it can be changed. */
    static boolean isOnHeld(FigureView figure, MouseEvent event) {
        return asked(figure) != null
                && figure.chartPainter()
                        .map(painter -> isBeneath(painter, figure, event))
                        .orElse(false);
    }

    private static boolean isBeneath(ChartPainter painter, FigureView figure, MouseEvent event) {
        return painter.heldArea(figure.area()).contains(event.getPoint());
    }

    private static Runnable asked(FigureView figure) {
        JRootPane root = SwingUtilities.getRootPane(figure);
        return root == null ? null : (Runnable) root.getClientProperty(HeldHand.class);
    }

    /** Asks, whichever chart it is; the window knows whose row is at hand. */
    static void ask(FigureView figure) {
        Runnable work = asked(figure);
        if (work != null) {
            SwingUtilities.invokeLater(work);
        }
    }

    @Override
    public void mouseMoved(MouseEvent event) {
        if (figure.chart().isPresent()) {
            boolean on = isOnHeld(figure, event);
            figure.setCursor(Cursor.getPredefinedCursor(on ? Cursor.HAND_CURSOR : Cursor.CROSSHAIR_CURSOR));
        }
    }

    @Override
    public void mouseClicked(MouseEvent event) {
        if (event.getClickCount() == 1 && SwingUtilities.isLeftMouseButton(event) && isOnHeld(figure, event)) {
            ask(figure);
        }
    }
}
