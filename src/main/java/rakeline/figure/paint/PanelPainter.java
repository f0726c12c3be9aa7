package rakeline.figure.paint;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import rakeline.figure.Chart;
import rakeline.figure.Chart.Panel;
import rakeline.figure.paint.ChartLayout.PanelLayout;
import rakeline.quantity.Limit;
import rakeline.quantity.Range;

/** Draws one panel of a chart over its ground: gaps, limits, the curve with its markers, the label at its end. */
final class PanelPainter {
    private static final int CURVE_SAMPLES = 300;

    private final Chart chart;
    private final Panel panel;
    private final ChartLayout chartLayout;
    private final PanelLayout layout;
    private final Steps steps;
    private final SeriesStyle style;
    private final Palette palette;

    PanelPainter(Chart chart, int index, ChartLayout layout, Steps steps, SeriesStyle style, Palette palette) {
        this.chart = chart;
        this.panel = chart.panels().get(index);
        this.chartLayout = layout;
        this.layout = layout.panels().get(index);
        this.steps = steps;
        this.style = style;
        this.palette = palette;
    }

    void draw(Graphics2D pen) {
        GapBands bands = GapBands.of(panel.values(), chartLayout, layout.area());
        List<Line2D> limits = limits().lines();
        List<Rectangle2D> names = bands.names(new Placer(layout.area(), limits));
        bands.draw(pen, palette, names);
        if (layout.y().isPresent()) {
            new UncertaintyBand(panel, chartLayout, layout, style).draw(pen, palette);
            drawCurve(pen, layout.y().get());
        }
        Placer placer = new Placer(
                layout.area(),
                Stream.of(limits.stream(), obstacles().stream(), bands.diagonals())
                        .flatMap(lines -> lines)
                        .toList());
        names.forEach(placer::take);
        marker().ifPresent(marker -> placer.take(marker.getBounds2D()));
        limits().draw(pen, placer);
        drawLabel(pen);
    }

    private LimitLines limits() {
        List<Limit> seen =
                layout.y().map(y -> PanelRange.limitsIn(panel.quantity(), y)).orElse(List.of());
        return new LimitLines(seen, layout, chartLayout.width(), palette);
    }

    private void drawLabel(Graphics2D pen) {
        double top = layout.area().getY();
        double bottom = layout.area().getMaxY();
        layout.label().draw(pen, palette, style, chartLayout.labelX(), curveEnd(), top, bottom);
    }

    private void drawCurve(Graphics2D pen, Range y) {
        StepSeries points = new StepSeries(chart.steps(), panel.values());
        Graphics2D own = (Graphics2D) pen.create();
        new Curve(points, chartLayout.x(), y, style, palette.line(2)).draw(own, layout.area());
        own.dispose();
        loneSteps().forEach(i -> drawDot(pen, i));
        marker().ifPresent(marker -> drawMarker(pen, marker));
    }

    /** At the present value; none where it has none in view. */
    private Optional<Shape> marker() {
        boolean seen = layout.y().isPresent()
                && Double.isFinite(panel.here())
                && chartLayout.x().contains(chart.here());
        return seen
                ? Optional.of(
                        style.marker().at(chartLayout.toX(chart.here()), layout.toY(panel.here()), palette.line(4.5)))
                : Optional.empty();
    }

    /** Steps with a gap on either side have no line and get a dot. */
    private IntStream loneSteps() {
        return IntStream.range(0, panel.values().size())
                .filter(i -> has(i) && !has(i - 1) && !has(i + 1))
                .filter(i -> chartLayout.x().contains(chart.steps().at(i)));
    }

    private boolean has(int step) {
        return step >= 0
                && step < panel.values().size()
                && Double.isFinite(panel.values().at(step));
    }

    private void drawDot(Graphics2D pen, int step) {
        pen.setColor(style.colour());
        pen.fill(style.marker().at(toX(step), toY(step), palette.line(2.5)));
    }

    private void drawMarker(Graphics2D pen, Shape outline) {
        pen.setColor(palette.card());
        pen.fill(outline);
        pen.setColor(style.colour());
        pen.setStroke(new BasicStroke(palette.line(2)));
        pen.draw(outline);
    }

    /** The height at which the curve leaves the panel to the right; its middle where there is no curve. */
    private double curveEnd() {
        return steps
                .inView()
                .filter(this::has)
                .reduce((one, other) -> chart.steps().at(other) >= chart.steps().at(one) ? other : one)
                .stream()
                .mapToDouble(this::toY)
                .findFirst()
                .orElse(layout.area().getCenterY());
    }

    /** What words in the panel should not lie on: the curve, the line of the present value, limits of what is swept. */
    private List<Line2D> obstacles() {
        List<Line2D> lines = new ArrayList<>();
        Rectangle2D area = layout.area();
        double here = chartLayout.toX(chart.here());
        if (Double.isFinite(here)) {
            lines.add(new Line2D.Double(here, area.getY(), here, area.getMaxY()));
        }
        PanelRange.limitsIn(chart.x(), chartLayout.x()).stream()
                .map(limit -> chartLayout.toX(limit.value()))
                .forEach(x -> lines.add(new Line2D.Double(x, area.getY(), x, area.getMaxY())));
        int[] seen = steps.inView().filter(this::has).toArray();
        int stride = Math.max(1, seen.length / CURVE_SAMPLES);
        for (int i = 0; i < seen.length - 1; i += stride) {
            int next = Math.min(i + stride, seen.length - 1);
            lines.add(new Line2D.Double(toX(seen[i]), toY(seen[i]), toX(seen[next]), toY(seen[next])));
        }
        return lines;
    }

    private double toX(int step) {
        return chartLayout.toX(chart.steps().at(step));
    }

    private double toY(int step) {
        return layout.toY(panel.values().at(step));
    }
}
