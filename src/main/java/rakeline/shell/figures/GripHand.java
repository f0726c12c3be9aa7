package rakeline.shell.figures;

import java.awt.BasicStroke;
import java.awt.Cursor;
import java.awt.Graphics2D;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Point2D;
import java.util.List;
import java.util.Optional;
import javax.swing.SwingUtilities;
import rakeline.figure.paint.Grip;
import rakeline.shell.look.Look;

/**
 * The pointer where a figure can be taken hold of: the line through a chart at the present value, and the ends of a
 * drawing's dimensions, as far as a dial of the page is bound to their number.
 */
final class GripHand extends MouseAdapter {
    private static final int REACH = 7;

    private final FigureView figure;
    private Optional<Held> held = Optional.empty();
    private List<Grip> grips = List.of();
    private Object drawn = List.of();

    /** A grip taken hold of at a place, the dial standing at a value. */
    private record Held(Grip grip, Point2D from, double value) {}

    GripHand(FigureView figure) {
        this.figure = figure;
    }

    private List<Grip> grips() {
        Object now = figure.drawn();
        if (!now.equals(drawn)) {
            drawn = now;
            grips = figure.grips();
        }
        return grips;
    }

    private Optional<Grip> near(MouseEvent event) {
        return grips().stream()
                .filter(grip -> grip.isNear(event.getPoint(), REACH))
                .findFirst();
    }

    private Optional<Handles.Bound> bound(Grip grip) {
        return Handles.of(figure).flatMap(handles -> handles.bound(grip.key()));
    }

    /** Whether a press here takes hold of something. */
    boolean takes(MouseEvent event) {
        return near(event).flatMap(this::bound).isPresent();
    }

    /** What is to be said of the place under the pointer, or nothing. */
    Optional<String> words(MouseEvent event) {
        return near(event)
                .map(grip -> bound(grip)
                        .map(dial -> "Drag to move the dial “" + dial.label() + "”")
                        .orElse("It cannot be dragged: no dial of this page is bound to " + grip.key()));
    }

    @Override
    public void mouseMoved(MouseEvent event) {
        if (takes(event)) {
            figure.setCursor(Cursor.getPredefinedCursor(Cursor.HAND_CURSOR));
        }
    }

    @Override
    public void mousePressed(MouseEvent event) {
        held = SwingUtilities.isLeftMouseButton(event)
                ? near(event).flatMap(grip -> bound(grip).map(dial -> new Held(grip, event.getPoint(), dial.value())))
                : Optional.empty();
    }

    @Override
    public void mouseDragged(MouseEvent event) {
        held.ifPresent(hold -> Handles.of(figure)
                .ifPresent(handles -> handles.move(
                        hold.grip().key(),
                        hold.grip()
                                .moved(
                                        hold.value(),
                                        event.getX() - hold.from().getX(),
                                        event.getY() - hold.from().getY()))));
    }

    @Override
    public void mouseReleased(MouseEvent event) {
        held.flatMap(hold -> Handles.of(figure)).ifPresent(Handles::rest);
        held = Optional.empty();
    }

    /** A ring at each grip that a dial is bound to. */
    void draw(Graphics2D pen, Look look) {
        pen.setStroke(new BasicStroke(look.px(2)));
        double radius = look.px(4);
        grips().stream().filter(grip -> bound(grip).isPresent()).forEach(grip -> {
            Ellipse2D ring =
                    new Ellipse2D.Double(grip.at().getX() - radius, grip.at().getY() - radius, 2 * radius, 2 * radius);
            pen.setColor(look.card());
            pen.fill(ring);
            pen.setColor(look.accent());
            pen.draw(ring);
        });
    }
}
