package rakeline.figure.paint;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.Optional;
import rakeline.figure.Chart;
import rakeline.figure.paint.ChartLayout.PanelLayout;

/**
 * The ground of a chart: tick lines and their numbers, the name of x, and the line of the present value.
 *
 * @param covered a part of the axis that something else is written on
 */
record ChartAxes(Chart chart, ChartLayout layout, Palette palette, Optional<Rectangle2D> covered) {

    void draw(Graphics2D pen) {
        for (int i = 0; i < layout.panels().size(); i++) {
            drawY(pen, i);
        }
        drawX(pen);
        if (Double.isFinite(chart.here()) && layout.x().contains(chart.here())) {
            drawHere(pen);
        }
    }

    private void drawY(Graphics2D pen, int index) {
        PanelLayout panel = layout.panels().get(index);
        Rectangle2D area = panel.area();
        panel.ticks()
                .ifPresent(ticks -> ticks.values().forEach(value -> {
                    double y = crisp(panel.toY(value));
                    line(pen, area.getX(), y, area.getMaxX(), y);
                    String text = ticks.text(
                            value, chart.panels().get(index).quantity().unit());
                    double top = y - Lettering.SMALL.lineHeight() / 2;
                    Lettering.SMALL.drawToLeft(pen, palette.soft(), text, area.getX() - 8, top);
                }));
    }

    private void drawX(Graphics2D pen) {
        Rectangle2D data = layout.data();
        double y = crisp(data.getMaxY());
        pen.setColor(palette.soft());
        line(pen, palette.soft(), data.getX(), y, data.getMaxX(), y);
        double top = data.getMaxY() + 6;
        layout.xTicks().values().forEach(value -> drawXTick(pen, value, top));
        drawName(pen, top + Lettering.SMALL.lineHeight() + 2);
    }

    private void drawXTick(Graphics2D pen, double value, double top) {
        double x = layout.toX(value);
        double y = layout.data().getMaxY();
        line(pen, palette.soft(), crisp(x), y, crisp(x), y + 4);
        String text = layout.xTicks().text(value, chart.x().unit());
        Rectangle2D box = Lettering.SMALL.box(text, x - Lettering.SMALL.width(text) / 2, top);
        if (covered.filter(box::intersects).isEmpty()) {
            Lettering.SMALL.draw(pen, palette.soft(), text, box.getX(), top);
        }
    }

    /** Centred under the curves, but not beyond the sheet. */
    private void drawName(Graphics2D pen, double top) {
        Rectangle2D data = layout.data();
        String name = Lettering.SMALL
                .lines(chart.x().heading(), 2 * data.getX() + data.getWidth(), 1)
                .get(0);
        double x = Math.max(0, data.getCenterX() - Lettering.SMALL.width(name) / 2);
        Lettering.SMALL.draw(pen, palette.ink(), name, x, top);
    }

    private void drawHere(Graphics2D pen) {
        Rectangle2D data = layout.data();
        double x = layout.toX(chart.here());
        pen.setColor(palette.soft());
        pen.setStroke(new BasicStroke(palette.line(1.2)));
        pen.draw(new Line2D.Double(x, data.getY() - 3, x, data.getMaxY()));
        String text = chart.x().formatWithUnit(chart.here());
        double top = data.getY() - 4 - Lettering.STRONG.lineHeight();
        Lettering.STRONG.drawCentred(pen, palette.ink(), text, x, top);
    }

    private void line(Graphics2D pen, double x1, double y1, double x2, double y2) {
        line(pen, palette.hairline(), x1, y1, x2, y2);
    }

    private static void line(Graphics2D pen, Color colour, double x1, double y1, double x2, double y2) {
        pen.setColor(colour);
        pen.setStroke(new BasicStroke(1));
        pen.draw(new Line2D.Double(x1, y1, x2, y2));
    }

    /** The middle of a px, so that a thin line stays thin. */
    static double crisp(double px) {
        return Math.floor(px) + 0.5;
    }
}
