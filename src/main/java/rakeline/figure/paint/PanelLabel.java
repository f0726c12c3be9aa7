package rakeline.figure.paint;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.util.List;
import rakeline.figure.Chart.Panel;

/** What stands at the end of a curve: a swatch of its line, its name with the unit, and its value here. */
record PanelLabel(List<String> name, List<String> value) {
    private static final double SWATCH_WIDTH = 26;
    private static final double SWATCH_HEIGHT = 12;

    /** Broken into lines no wider than that; nothing of it is left out. */
    static PanelLabel of(Panel panel, double here, double width) {
        String value = Double.isFinite(panel.here())
                ? panel.quantity().formatWithUnit(panel.here()) + " here"
                : Double.isFinite(here) ? "no value here" : "";
        return new PanelLabel(
                Lettering.STRONG.lines(panel.quantity().heading(), width), Lettering.SMALL.lines(value, width));
    }

    double width() {
        return Math.max(
                SWATCH_WIDTH, Math.max(Lettering.WIDER * Lettering.STRONG.width(name), Lettering.SMALL.width(value)));
    }

    double height() {
        return SWATCH_HEIGHT + Lettering.STRONG.height(name) + Lettering.SMALL.height(value);
    }

    /** Draws it with the swatch at the curve's end, as far as the panel lets it. */
    void draw(Graphics2D pen, Palette palette, SeriesStyle style, double x, double end, double top, double bottom) {
        double y = Math.max(top, Math.min(bottom - height(), end - SWATCH_HEIGHT / 2));
        drawSwatch(pen, palette, style, x, y + SWATCH_HEIGHT / 2);
        double below = Lettering.STRONG.draw(pen, palette.ink(), name, x, y + SWATCH_HEIGHT);
        Lettering.SMALL.draw(pen, palette.soft(), value, x, below);
    }

    private static void drawSwatch(Graphics2D pen, Palette palette, SeriesStyle style, double x, double y) {
        pen.setColor(style.colour());
        pen.setStroke(style.stroke(palette.line(2)));
        pen.draw(new Line2D.Double(x, y, x + SWATCH_WIDTH, y));
        pen.setStroke(new BasicStroke(1));
    }
}
