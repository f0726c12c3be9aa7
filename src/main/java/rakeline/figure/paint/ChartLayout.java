package rakeline.figure.paint;

import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import rakeline.figure.Chart;
import rakeline.figure.Chart.Panel;
import rakeline.quantity.Numbers;
import rakeline.quantity.Range;

/**
 * Where everything of a chart lies in its body: panels under one another, their ticks to the left, their labels to the
 * right, the shared axis beneath.
 *
 * @param width of the body
 * @param data the panels' common columns, from the first one's top to the last one's bottom
 */
record ChartLayout(
        double width, Rectangle2D data, Numbers steps, Range x, Ticks xTicks, List<PanelLayout> panels, double labelX) {
    static final double PANEL_HEIGHT = 110;
    private static final double LEAST_PANEL_HEIGHT = 80;
    static final double BETWEEN = 22;
    private static final double TICK_GAP = 8;
    private static final double LABEL_GAP = 12;
    private static final double TICK_EVERY = 20;

    /** One panel: its area, its range and ticks of y (none where it has no value in view), and its label. */
    record PanelLayout(Rectangle2D area, Optional<Range> y, Optional<Ticks> ticks, PanelLabel label) {
        double toY(double value) {
            Range range = y.orElseThrow();
            return area.getMaxY() - (value - range.from()) / (range.to() - range.from()) * area.getHeight();
        }
    }

    static ChartLayout of(Chart chart, Rectangle2D body, View view) {
        Steps steps = Steps.of(chart, view);
        List<PanelLabel> labels = labels(chart, body.getWidth());
        double top = body.getY() + top(chart);
        double bottom = body.getMaxY() - bottom();
        double height = (bottom - top - BETWEEN * (labels.size() - 1)) / labels.size();
        List<Scale> scales = chart.panels().stream()
                .map(panel -> Scale.of(panel, PanelRange.of(panel, steps, chart.here()), height))
                .toList();
        double left = Math.ceil(body.getX() + widest(scales, Scale::tickWidth) + TICK_GAP);
        double right = Math.floor(body.getMaxX() - widest(labels, PanelLabel::width) - LABEL_GAP);
        Rectangle2D data = new Rectangle2D.Double(left, top, right - left, bottom - top);
        return new ChartLayout(
                body.getWidth(),
                data,
                chart.steps(),
                steps.range(),
                xTicks(chart, steps.range(), data.getWidth()),
                panels(labels, scales, data, height),
                right + LABEL_GAP);
    }

    /** A panel's range of y with its ticks; both none where it has no value in view. */
    private record Scale(Optional<Range> y, Optional<Ticks> ticks, double tickWidth) {
        static Scale of(Panel panel, Optional<Range> y, double height) {
            double least = Math.pow(10, -panel.quantity().decimals());
            Optional<Ticks> ticks =
                    y.map(range -> Ticks.atLeastTwo(range, (int) Math.max(2, height / TICK_EVERY), least));
            double width = ticks.map(some ->
                            Lettering.SMALL.width(some.texts(panel.quantity().unit())))
                    .orElse(0.0);
            return new Scale(y, ticks, width);
        }
    }

    private static <T> double widest(List<T> all, ToDoubleFunction<T> width) {
        return all.stream().mapToDouble(width).max().orElse(0);
    }

    /** The height that a chart wants: each panel as high as its label needs, and no lower than the least. */
    static double heightOf(Chart chart, double width) {
        return heightOf(chart, width, PANEL_HEIGHT);
    }

    /** The height in which it can still be read at its scale. */
    static double leastHeightOf(Chart chart, double width) {
        return heightOf(chart, width, LEAST_PANEL_HEIGHT);
    }

    private static double heightOf(Chart chart, double width, double panelHeight) {
        double label = labels(chart, width).stream()
                .mapToDouble(PanelLabel::height)
                .max()
                .orElse(0);
        int panels = chart.panels().size();
        return top(chart) + panels * Math.max(panelHeight, label) + Math.max(0, panels - 1) * BETWEEN + bottom();
    }

    double toX(double value) {
        return data.getX() + (value - x.from()) / (x.to() - x.from()) * data.getWidth();
    }

    double stepX(int step) {
        return toX(steps.at(step));
    }

    double toValue(double px) {
        return x.from() + (px - data.getX()) / data.getWidth() * (x.to() - x.from());
    }

    /** Room for the present value above the first panel. */
    private static double top(Chart chart) {
        return Double.isFinite(chart.here()) ? Lettering.STRONG.lineHeight() + 4 : 6;
    }

    /** Room for tick labels and the name of the axis. */
    private static double bottom() {
        return 6 + Lettering.SMALL.lineHeight() + 2 + Lettering.SMALL.lineHeight();
    }

    private static List<PanelLabel> labels(Chart chart, double width) {
        double most = Math.min(220, Math.max(104, 0.24 * width));
        return chart.panels().stream()
                .map(panel -> PanelLabel.of(panel, chart.here(), most))
                .toList();
    }

    private static Ticks xTicks(Chart chart, Range x, double width) {
        Ticks fine = Ticks.in(x, 6, Double.MIN_NORMAL);
        double each = Lettering.SMALL.width(fine.texts(chart.x().unit())) + 28;
        return Ticks.in(x, (int) Math.max(1, Math.min(6, width / each)), Double.MIN_NORMAL);
    }

    private static List<PanelLayout> panels(
            List<PanelLabel> labels, List<Scale> scales, Rectangle2D data, double height) {
        List<PanelLayout> panels = new ArrayList<>();
        for (int i = 0; i < labels.size(); i++) {
            double from = Math.rint(data.getY() + i * (height + BETWEEN));
            double to = Math.rint(data.getY() + i * (height + BETWEEN) + height);
            Rectangle2D area = new Rectangle2D.Double(data.getX(), from, data.getWidth(), to - from);
            panels.add(new PanelLayout(area, scales.get(i).y(), scales.get(i).ticks(), labels.get(i)));
        }
        return List.copyOf(panels);
    }
}
