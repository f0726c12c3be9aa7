package rakeline.figure.paint;

import java.awt.Graphics2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import rakeline.figure.Chart;
import rakeline.figure.Chart.Panel;

/** Draws a chart: one panel for each measure, stacked, sharing x; a view may look at part of it and point at a step. */
public final class ChartPainter extends FigurePainter {
    private static final double NARROWEST = 270;

    private final Chart chart;
    private final List<SeriesStyle> styles;

    ChartPainter(Chart chart, Palette palette, double scale, Assignment assignment) {
        super(chart, palette, scale);
        this.chart = chart;
        List<String> keys =
                chart.panels().stream().map(panel -> panel.quantity().key()).toList();
        this.styles = assignment.places(keys).stream().map(palette::style).toList();
    }

    /** Draws what a view shows of the chart. */
    public void draw(Graphics2D graphics, Rectangle2D area, View view) {
        drawAround(graphics, area, (pen, body) -> paint(pen, body, view));
    }

    /** Where in the area the curves are, from the first panel's top to the last one's bottom. */
    public Rectangle2D dataArea(Rectangle2D area, View view) {
        Frame frame = frame(area);
        Rectangle2D data = ChartLayout.of(chart, frame.body(), view).data();
        double scale = frame.scale();
        return new Rectangle2D.Double(
                area.getX() + scale * data.getX(),
                area.getY() + scale * data.getY(),
                scale * data.getWidth(),
                scale * data.getHeight());
    }

    /** The line at the present value of what is swept; none where it has none or lies out of what is looked at. */
    public Optional<Grip> grip(Rectangle2D area, View view) {
        Rectangle2D data = dataArea(area, view);
        double from = valueAt(area, view, data.getX());
        double perPx = (valueAt(area, view, data.getMaxX()) - from) / data.getWidth();
        double x = data.getX() + (chart.here() - from) / perPx;
        boolean seen = x >= data.getX() && x <= data.getMaxX();
        return seen
                ? Optional.of(
                        new Grip(chart.x().key(), chart.here(), 0, new Point2D.Double(x, data.getY()), true, perPx, 0))
                : Optional.empty();
    }

    /** The value of x at a horizontal place in the area, also beyond the curves. */
    public double valueAt(Rectangle2D area, View view, double px) {
        Frame frame = frame(area);
        return ChartLayout.of(chart, frame.body(), view).toValue((px - area.getX()) / frame.scale());
    }

    /** The step in view whose x is nearest to a horizontal place in the area; none where no step is in view. */
    public OptionalInt nearestStep(Rectangle2D area, View view, double px) {
        double value = valueAt(area, view, px);
        Steps steps = Steps.of(chart, view);
        int nearest = -1;
        for (int i = 0; i < chart.steps().size(); i++) {
            boolean seen = steps.range().contains(chart.steps().at(i));
            if (seen && (nearest < 0 || distance(i, value) < distance(nearest, value))) {
                nearest = i;
            }
        }
        return nearest < 0 ? OptionalInt.empty() : OptionalInt.of(nearest);
    }

    /** A step in words: the swept quantity and each measure with its value there, or why there is none. */
    public List<String> readout(int step) {
        String x =
                chart.x().label() + " " + chart.x().formatWithUnit(chart.steps().at(step));
        return Stream.concat(
                        Stream.of(x),
                        chart.panels().stream().map(panel -> panel.quantity().label() + " " + value(panel, step)))
                .toList();
    }

    @Override
    double bodyHeight(double width) {
        return ChartLayout.heightOf(chart, width);
    }

    @Override
    double leastBodyHeight(double width) {
        return ChartLayout.leastHeightOf(chart, width);
    }

    @Override
    double narrowest() {
        return NARROWEST;
    }

    @Override
    List<String> notes(double width) {
        return Stream.of(chart.bands().stream(), LimitNotes.of(chart, width), GapNotes.of(chart).stream())
                .flatMap(notes -> notes)
                .toList();
    }

    @Override
    void paintBody(Graphics2D pen, Rectangle2D body) {
        paint(pen, body, View.WHOLE);
    }

    private double distance(int step, double value) {
        return Math.abs(chart.steps().at(step) - value);
    }

    private String value(Panel panel, int step) {
        double value = panel.values().at(step);
        return Double.isFinite(value) ? known(panel, step) : "has no value" + because(panel, step);
    }

    /** With how far it may be off, where that is known. */
    static String known(Panel panel, int step) {
        double value = panel.values().at(step);
        double off = panel.off(step);
        return Double.isFinite(off)
                ? panel.quantity().formatWithUncertainty(value, off)
                : panel.quantity().formatWithUnit(value);
    }

    private String because(Panel panel, int step) {
        return chart.gaps().stream()
                .filter(gap ->
                        gap.step() == step && gap.key().equals(panel.quantity().key()))
                .map(gap -> ": " + gap.reason())
                .findFirst()
                .orElse("");
    }

    private void paint(Graphics2D pen, Rectangle2D body, View view) {
        ChartLayout layout = ChartLayout.of(chart, body, view);
        Steps steps = Steps.of(chart, view);
        Optional<Crosshair> crosshair = crosshair(layout, view.step());
        new ChartAxes(chart, layout, palette(), crosshair.map(Crosshair::xTag)).draw(pen);
        new UprightLimits(chart, layout, palette()).draw(pen);
        IntStream.range(0, styles.size())
                .forEach(i -> new PanelPainter(chart, i, layout, steps, styles.get(i), palette()).draw(pen));
        crosshair.ifPresent(cross -> cross.draw(pen));
    }

    /** None where there is no such step, or not in the window. */
    private Optional<Crosshair> crosshair(ChartLayout layout, int step) {
        boolean seen = step >= 0
                && step < chart.steps().size()
                && layout.x().contains(chart.steps().at(step));
        return seen ? Optional.of(new Crosshair(chart, layout, palette(), step)) : Optional.empty();
    }
}
