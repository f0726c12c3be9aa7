package rakeline.shell.figures;

import java.awt.Cursor;
import java.awt.Graphics2D;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.event.MouseWheelEvent;
import java.awt.geom.AffineTransform;
import java.awt.geom.Point2D;
import java.util.Optional;
import javax.swing.SwingUtilities;
import rakeline.figure.paint.Grip;

/** The pointer on a drawing: the wheel with Ctrl looks closer, a drag then moves the sheet, a double click returns. */
final class DrawingHand extends MouseAdapter {
    private static final double CLOSEST = 12;
    private static final double STEP = 1.25;

    private final FigureView drawing;
    private AffineTransform sheet = new AffineTransform();
    private Optional<Point2D> held = Optional.empty();

    DrawingHand(FigureView drawing) {
        this.drawing = drawing;
    }

    /** Draws what follows as it is looked at. */
    void apply(Graphics2D pen) {
        if (isClose()) {
            pen.transform(sheet);
        }
    }

    /** A place on the whole, as it is looked at. */
    Grip seen(Grip grip) {
        return grip.seen(sheet);
    }

    AffineTransform sheet() {
        return sheet;
    }

    boolean isClose() {
        return !sheet.isIdentity();
    }

    void whole() {
        become(new AffineTransform());
    }

    private void become(AffineTransform next) {
        if (!next.equals(sheet)) {
            sheet = next;
            drawing.setCursor(Cursor.getPredefinedCursor(isClose() ? Cursor.MOVE_CURSOR : Cursor.DEFAULT_CURSOR));
            drawing.repaint();
        }
    }

    /** Looks closer by a factor above 1, the place staying where it is; never from further than the whole. */
    void zoom(double factor, Point2D about) {
        double scale = Math.max(1, Math.min(CLOSEST, sheet.getScaleX() * factor));
        double by = scale / sheet.getScaleX();
        AffineTransform next = AffineTransform.getTranslateInstance(about.getX(), about.getY());
        next.scale(by, by);
        next.translate(-about.getX(), -about.getY());
        next.concatenate(sheet);
        become(within(scale, next.getTranslateX(), next.getTranslateY()));
    }

    /** The sheet covers what is seen. */
    private AffineTransform within(double scale, double x, double y) {
        double left = Math.max(drawing.getWidth() * (1 - scale), Math.min(0, x));
        double top = Math.max(drawing.getHeight() * (1 - scale), Math.min(0, y));
        return new AffineTransform(scale, 0, 0, scale, left, top);
    }

    @Override
    public void mousePressed(MouseEvent event) {
        boolean holds =
                drawing.isDrawing() && isClose() && SwingUtilities.isLeftMouseButton(event) && !drawing.takes(event);
        held = holds ? Optional.of(event.getPoint()) : Optional.empty();
    }

    @Override
    public void mouseDragged(MouseEvent event) {
        held.ifPresent(from -> {
            become(within(
                    sheet.getScaleX(),
                    sheet.getTranslateX() + event.getX() - from.getX(),
                    sheet.getTranslateY() + event.getY() - from.getY()));
            held = Optional.of(event.getPoint());
        });
    }

    @Override
    public void mouseReleased(MouseEvent event) {
        held = Optional.empty();
    }

    @Override
    public void mouseClicked(MouseEvent event) {
        if (event.getClickCount() == 2 && drawing.isDrawing()) {
            whole();
        }
    }

    @Override
    public void mouseWheelMoved(MouseWheelEvent event) {
        if (event.isControlDown() && drawing.isDrawing()) {
            zoom(Math.pow(STEP, -event.getPreciseWheelRotation()), event.getPoint());
        }
    }
}
