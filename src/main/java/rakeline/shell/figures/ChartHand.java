package rakeline.shell.figures;

import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.event.MouseWheelEvent;
import java.awt.geom.Rectangle2D;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import javax.swing.SwingUtilities;
import rakeline.figure.paint.ChartPainter;
import rakeline.figure.paint.View;

/**
 * The pointer on a chart: over it the crosshair, a drag zooms into a stretch of x, the wheel with Ctrl zooms about the
 * pointer, a double click returns to the whole. The wheel alone scrolls the page.
 */
final class ChartHand extends MouseAdapter {
    private static final int LEAST_DRAG = 6;

    private final FigureView chart;
    private OptionalInt pressedAt = OptionalInt.empty();

    ChartHand(FigureView chart) {
        this.chart = chart;
    }

    @Override
    public void mouseMoved(MouseEvent event) {
        chart.chartPainter().ifPresent(painter -> point(painter, event));
    }

    private void point(ChartPainter painter, MouseEvent event) {
        boolean over = painter.dataArea(chart.area(), chart.view()).contains(event.getPoint());
        OptionalInt step = over ? painter.nearestStep(chart.area(), chart.view(), event.getX()) : OptionalInt.empty();
        chart.look(
                step.isPresent()
                        ? chart.view().at(step.getAsInt())
                        : chart.view().withoutCrosshair());
    }

    @Override
    public void mouseExited(MouseEvent event) {
        chart.look(chart.view().withoutCrosshair());
    }

    @Override
    public void mousePressed(MouseEvent event) {
        boolean over = SwingUtilities.isLeftMouseButton(event)
                && !chart.takes(event)
                && chart.chartPainter()
                        .map(painter ->
                                painter.dataArea(chart.area(), chart.view()).contains(event.getPoint()))
                        .orElse(false);
        pressedAt = over ? OptionalInt.of(event.getX()) : OptionalInt.empty();
    }

    @Override
    public void mouseDragged(MouseEvent event) {
        if (pressedAt.isPresent()) {
            chart.mark(chart.chartPainter().map(painter -> stretch(painter, event.getX())));
        }
    }

    private Rectangle2D stretch(ChartPainter painter, int x) {
        Rectangle2D data = painter.dataArea(chart.area(), chart.view());
        double left = Math.max(data.getX(), Math.min(x, pressedAt.getAsInt()));
        double right = Math.min(data.getMaxX(), Math.max(x, pressedAt.getAsInt()));
        return new Rectangle2D.Double(left, data.getY(), Math.max(0, right - left), data.getHeight());
    }

    @Override
    public void mouseReleased(MouseEvent event) {
        if (pressedAt.isPresent() && Math.abs(event.getX() - pressedAt.getAsInt()) >= LEAST_DRAG) {
            chart.chartPainter().ifPresent(painter -> zoomTo(painter, stretch(painter, event.getX())));
        }
        pressedAt = OptionalInt.empty();
        chart.mark(Optional.empty());
    }

    private void zoomTo(ChartPainter painter, Rectangle2D stretch) {
        double from = painter.valueAt(chart.area(), chart.view(), stretch.getX());
        double to = painter.valueAt(chart.area(), chart.view(), stretch.getMaxX());
        chart.look(chart.view().zoomed(from, to));
    }

    @Override
    public void mouseClicked(MouseEvent event) {
        if (event.getClickCount() == 2) {
            chart.look(View.WHOLE);
        }
    }

    @Override
    public void mouseWheelMoved(MouseWheelEvent event) {
        if (event.isControlDown() && chart.chartPainter().isPresent()) {
            double factor = Math.pow(1.25, event.getPreciseWheelRotation());
            Zoom.by(chart, factor, OptionalDouble.of(event.getX()));
        } else if (!event.isControlDown() || !chart.isDrawing()) {
            pass(event);
        }
    }

    /** Lets the page scroll. */
    private void pass(MouseWheelEvent event) {
        if (chart.getParent() != null) {
            chart.getParent().dispatchEvent(SwingUtilities.convertMouseEvent(chart, event, chart.getParent()));
        }
    }
}
