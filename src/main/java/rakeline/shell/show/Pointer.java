package rakeline.shell.show;

import java.awt.AWTEvent;
import java.awt.BasicStroke;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.awt.event.MouseEvent;
import java.awt.geom.Ellipse2D;
import java.util.Optional;
import javax.swing.JComponent;
import javax.swing.JLayer;
import javax.swing.SwingUtilities;
import javax.swing.plaf.LayerUI;
import rakeline.shell.look.Look;

/** A ring around the pointer, large enough to be followed from the back of a room. */
final class Pointer extends LayerUI<JComponent> {
    private static final int RADIUS = 16;

    private final transient Look look;
    private transient Optional<Point> at = Optional.empty();
    private boolean shown = true;

    Pointer(Look look) {
        this.look = look;
    }

    @Override
    public void installUI(JComponent layer) {
        super.installUI(layer);
        ((JLayer<?>) layer).setLayerEventMask(AWTEvent.MOUSE_EVENT_MASK | AWTEvent.MOUSE_MOTION_EVENT_MASK);
    }

    @Override
    public void uninstallUI(JComponent layer) {
        ((JLayer<?>) layer).setLayerEventMask(0);
        super.uninstallUI(layer);
    }

    /** Shows the ring, or hides it. */
    void toggle(JComponent layer) {
        shown = !shown;
        layer.repaint();
    }

    boolean isShown() {
        return shown;
    }

    @Override
    protected void processMouseEvent(MouseEvent event, JLayer<? extends JComponent> layer) {
        move(event, layer);
    }

    @Override
    protected void processMouseMotionEvent(MouseEvent event, JLayer<? extends JComponent> layer) {
        move(event, layer);
    }

    private void move(MouseEvent event, JLayer<? extends JComponent> layer) {
        Point next = SwingUtilities.convertPoint(event.getComponent(), event.getPoint(), layer);
        boolean inside = layer.contains(next);
        at.map(this::around).ifPresent(layer::repaint);
        at = inside ? Optional.of(next) : Optional.empty();
        at.map(this::around).ifPresent(layer::repaint);
    }

    private Rectangle around(Point middle) {
        int reach = look.px(RADIUS + 4);
        return new Rectangle(middle.x - reach, middle.y - reach, 2 * reach, 2 * reach);
    }

    @Override
    public void paint(Graphics g, JComponent layer) {
        super.paint(g, layer);
        at.filter(middle -> shown).ifPresent(middle -> draw((Graphics2D) g.create(), middle));
    }

    private void draw(Graphics2D pen, Point middle) {
        int radius = look.px(RADIUS);
        pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        Ellipse2D ring = new Ellipse2D.Double(middle.x - radius, middle.y - radius, 2.0 * radius, 2.0 * radius);
        pen.setColor(look.paper());
        pen.setStroke(new BasicStroke(look.px(4)));
        pen.draw(ring);
        pen.setColor(look.accent());
        pen.setStroke(new BasicStroke(look.px(2)));
        pen.draw(ring);
        pen.dispose();
    }
}
