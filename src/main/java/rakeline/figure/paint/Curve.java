package rakeline.figure.paint;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.SamplingXYLineRenderer;
import org.jfree.chart.ui.RectangleInsets;
import org.jfree.data.xy.XYDataset;
import rakeline.quantity.Range;

/** One curve in its area, with gaps as gaps. Points closer than a px are drawn as one, so many cost little. */
record Curve(XYDataset points, Range x, Range y, SeriesStyle style, float width) {

    void draw(Graphics2D pen, Rectangle2D area) {
        SamplingXYLineRenderer renderer = new SamplingXYLineRenderer();
        renderer.setSeriesPaint(0, style.colour());
        renderer.setSeriesStroke(0, style.stroke(width));
        XYPlot plot = new XYPlot(points, axis(x), axis(y), renderer);
        plot.setInsets(RectangleInsets.ZERO_INSETS);
        plot.setAxisOffset(RectangleInsets.ZERO_INSETS);
        plot.setBackgroundPaint(null);
        plot.setOutlineVisible(false);
        plot.setDomainGridlinesVisible(false);
        plot.setRangeGridlinesVisible(false);
        plot.draw(pen, area, null, null, null);
    }

    private static NumberAxis axis(Range range) {
        NumberAxis axis = new NumberAxis();
        axis.setVisible(false);
        axis.setRange(range.from(), range.to());
        return axis;
    }
}
