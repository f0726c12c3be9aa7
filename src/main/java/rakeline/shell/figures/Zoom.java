package rakeline.shell.figures;

import java.awt.geom.Rectangle2D;
import java.util.OptionalDouble;
import rakeline.figure.paint.ChartPainter;
import rakeline.figure.paint.View;

/** Looking closer at a chart, and back. */
final class Zoom {
    private Zoom() {}

    /**
     * Scales the window on x about a place.
     *
     * @param factor below 1 looks closer
     * @param px the place that stays, in pixels; none for the middle
     */
    static void by(FigureView chart, double factor, OptionalDouble px) {
        chart.chartPainter().ifPresent(painter -> {
            Rectangle2D data = painter.dataArea(chart.area(), chart.view());
            double about = painter.valueAt(chart.area(), chart.view(), px.orElse(data.getCenterX()));
            double from = painter.valueAt(chart.area(), chart.view(), data.getX());
            double to = painter.valueAt(chart.area(), chart.view(), data.getMaxX());
            chart.look(within(chart, painter, about + (from - about) * factor, about + (to - about) * factor));
        });
    }

    private static View within(FigureView chart, ChartPainter painter, double from, double to) {
        Rectangle2D whole = painter.dataArea(chart.area(), View.WHOLE);
        double least = painter.valueAt(chart.area(), View.WHOLE, whole.getX());
        double most = painter.valueAt(chart.area(), View.WHOLE, whole.getMaxX());
        boolean all = from <= least && to >= most;
        return all ? View.WHOLE : chart.view().zoomed(Math.max(least, from), Math.min(most, to));
    }
}
