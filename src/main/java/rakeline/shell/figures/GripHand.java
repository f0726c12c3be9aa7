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
 * drawing's dimensions, as far as a number that can be moved is bound to them.
 */
final class GripHand extends MouseAdapter {
    private static final int REACH = 7;

    /** Less than this is no difference between a number and what the figure shows of it. */
    private static final double SAME = 1e-9;

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

    /** What can be taken hold of before what cannot. */
    private Optional<Grip> near(MouseEvent event) {
        List<Grip> near = grips().stream()
                .filter(grip -> grip.isNear(event.getPoint(), REACH))
                .toList();
        return near.stream()
                .filter(grip -> bound(grip).isPresent())
                .findFirst()
                .or(() -> near.stream().findFirst());
    }

    /** The number that a grip stands for, as long as the figure shows that very number. */
    private Optional<Handles.Bound> bound(Grip grip) {
        return Handles.of(figure)
                .flatMap(handles -> handles.bound(grip))
                .filter(bound -> Double.isNaN(grip.value()) || Math.abs(bound.value() - grip.value()) < SAME);
    }

    /** What can be taken hold of, in the order of the figure. */
    List<Grip> movable() {
        return grips().stream().filter(grip -> bound(grip).isPresent()).toList();
    }

    /** Whether a press here takes hold of something. */
    boolean takes(MouseEvent event) {
        return near(event).flatMap(this::bound).isPresent();
    }

    /** What is to be said of the place under the pointer, or nothing. */
    Optional<String> words(MouseEvent event) {
        return near(event).flatMap(this::words);
    }

    private Optional<String> words(Grip grip) {
        return bound(grip)
                .map(bound -> "Drag to move " + bound.label())
                .or(() -> Handles.of(figure).map(handles -> handles.whyNot(grip)));
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
        if (held.isPresent()) {
            figure.requestFocusInWindow(); // an undo is then of what the hand moves
        }
    }

    @Override
    public void mouseDragged(MouseEvent event) {
        held.ifPresent(hold -> Handles.of(figure)
                .ifPresent(handles -> handles.move(
                        hold.grip(),
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

    /** A ring at each grip that a number is bound to, a disc at the one that the keys move. */
    void draw(Graphics2D pen, Look look, Optional<Grip> taken) {
        pen.setStroke(new BasicStroke(look.px(2)));
        grips().stream()
                .filter(grip ->
                        isTaken(grip, taken) || isHeld(grip) || bound(grip).isPresent())
                .forEach(grip -> draw(pen, look, grip, isTaken(grip, taken) || isHeld(grip)));
    }

    private static boolean isTaken(Grip grip, Optional<Grip> taken) {
        return taken.filter(grip::isOf).isPresent();
    }

    private boolean isHeld(Grip grip) {
        return held.filter(hold -> grip.isOf(hold.grip())).isPresent();
    }

    private static void draw(Graphics2D pen, Look look, Grip grip, boolean full) {
        double radius = look.px(4);
        Ellipse2D ring =
                new Ellipse2D.Double(grip.at().getX() - radius, grip.at().getY() - radius, 2 * radius, 2 * radius);
        pen.setColor(full ? look.accent() : look.card());
        pen.fill(ring);
        pen.setColor(look.accent());
        pen.draw(ring);
    }
}
