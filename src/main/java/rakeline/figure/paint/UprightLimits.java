package rakeline.figure.paint;

import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.stream.Stream;
import rakeline.figure.Chart;
import rakeline.quantity.Limit;

/** The swept quantity's own limits, as thin upright lines through all panels; notes beneath the chart name them. */
record UprightLimits(Chart chart, ChartLayout layout, Palette palette) {

    /** What each line in the chart is. */
    static Stream<LimitNotes.Limited> all(Chart chart) {
        return PanelRange.limitsIn(chart.x(), Steps.of(chart, View.WHOLE).range()).stream()
                .map(limit -> new LimitNotes.Limited(chart.x(), limit));
    }

    void draw(Graphics2D pen) {
        PanelRange.limitsIn(chart.x(), layout.x()).forEach(limit -> draw(pen, limit));
    }

    private void draw(Graphics2D pen, Limit limit) {
        Rectangle2D data = layout.data();
        double x = ChartAxes.crisp(layout.toX(limit.value()));
        LimitLines.drawLine(pen, new Line2D.Double(x, data.getY(), x, data.getMaxY()), palette);
    }
}
