package rakeline.figure.paint;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;
import rakeline.figure.Chart;
import rakeline.figure.Chart.Panel;
import rakeline.figure.paint.ChartLayout.PanelLayout;

/** The line through one step, with each curve's value beside it and the step's own on the axis. */
record Crosshair(Chart chart, ChartLayout layout, Palette palette, int step) {
    private static final double PAD = 4;

    void draw(Graphics2D pen) {
        Rectangle2D data = layout.data();
        double x = layout.toX(chart.steps().at(step));
        pen.setColor(palette.ink());
        pen.setStroke(new BasicStroke(palette.line(1)));
        pen.draw(new Line2D.Double(x, data.getY(), x, data.getMaxY()));
        drawTag(pen, xText(), xTag().getX(), xTag().getY());
        for (int i = 0; i < layout.panels().size(); i++) {
            drawValue(pen, chart.panels().get(i), layout.panels().get(i), x);
        }
    }

    /** The box of the step's own value on the axis. */
    Rectangle2D xTag() {
        double width = Lettering.STRONG.width(xText()) + 2 * PAD;
        double x = layout.toX(chart.steps().at(step)) - width / 2;
        return new Rectangle2D.Double(x, layout.data().getMaxY() + 5, width, Lettering.STRONG.lineHeight());
    }

    private String xText() {
        return chart.x().formatWithUnit(chart.steps().at(step));
    }

    private void drawValue(Graphics2D pen, Panel panel, PanelLayout place, double x) {
        double value = panel.values().at(step);
        boolean known = Double.isFinite(value);
        String text = known ? ChartPainter.known(panel, step) : "no value";
        double y = known ? place.toY(value) : place.area().getY();
        double width = Lettering.STRONG.width(text) + 2 * PAD;
        double left = x + 8 + width <= place.area().getMaxX() ? x + 8 : x - 8 - width;
        drawTag(pen, text, left, within(place.area(), y - Lettering.STRONG.lineHeight() - 6));
        if (known) {
            pen.fill(new Ellipse2D.Double(x - 3, y - 3, 6, 6));
        }
    }

    private static double within(Rectangle2D area, double top) {
        return Math.max(area.getY(), Math.min(area.getMaxY() - Lettering.STRONG.lineHeight(), top));
    }

    private void drawTag(Graphics2D pen, String text, double x, double y) {
        double width = Lettering.STRONG.width(text) + 2 * PAD;
        pen.setColor(palette.card());
        pen.fill(new RoundRectangle2D.Double(x, y, width, Lettering.STRONG.lineHeight(), 4, 4));
        Lettering.STRONG.draw(pen, palette.ink(), text, x + PAD, y);
    }
}
