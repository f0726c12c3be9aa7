package rakeline.figure.paint;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;

/** The frame of a map: ticks, their numbers, and the names of both axes. */
record MapAxes(MapLayout layout, Palette palette) {
    void draw(Graphics2D pen, double left) {
        pen.setColor(palette.soft());
        pen.setStroke(new BasicStroke(1));
        pen.draw(layout.data());
        layout.xTicks().values().forEach(value -> drawX(pen, value));
        layout.yTicks().values().forEach(value -> drawY(pen, value));
        Rectangle2D data = layout.data();
        String x = layout.map().x().quantity().heading();
        double below = data.getMaxY() + 8 + Lettering.SMALL.lineHeight();
        Lettering.SMALL.drawCentred(pen, palette.ink(), x, data.getCenterX(), below);
        String y = layout.map().y().quantity().heading();
        Lettering.SMALL.draw(pen, palette.ink(), y, left, data.getY() - 6 - Lettering.SMALL.lineHeight());
    }

    private void drawX(Graphics2D pen, double value) {
        double x = ChartAxes.crisp(layout.toX(value));
        double y = layout.data().getMaxY();
        tick(pen, x, y, x, y + 4);
        String text = layout.xTicks().text(value, layout.map().x().quantity().unit());
        Lettering.SMALL.drawCentred(pen, palette.soft(), text, x, y + 6);
    }

    private void drawY(Graphics2D pen, double value) {
        double y = ChartAxes.crisp(layout.toY(value));
        double x = layout.data().getX();
        tick(pen, x - 4, y, x, y);
        String text = layout.yTicks().text(value, layout.map().y().quantity().unit());
        Lettering.SMALL.drawToLeft(pen, palette.soft(), text, x - 8, y - Lettering.SMALL.lineHeight() / 2);
    }

    private void tick(Graphics2D pen, double x1, double y1, double x2, double y2) {
        pen.setColor(palette.soft());
        pen.setStroke(new BasicStroke(1));
        pen.draw(new Line2D.Double(x1, y1, x2, y2));
    }
}
