package rakeline.figure.paint;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import rakeline.figure.MapFigure;

/** What stands to the right of a map: the measure's name, its value here, and the shades with the levels between. */
record MapLegend(MapLayout layout, MapLevels levels, Palette palette) {
    private static final double SWATCH = 22;
    private static final double SWATCH_HEIGHT = 20;
    private static final double GAP = 8;

    /** The room that it takes beside a map of that width. */
    static double width(MapFigure map, double width) {
        return Math.min(150, Math.max(96, 0.2 * width));
    }

    void draw(Graphics2D pen, double right) {
        double width = right - layout.legendX();
        double top = layout.data().getY();
        List<String> name = Lettering.STRONG.lines(layout.map().measure().heading(), width);
        top = Lettering.STRONG.draw(pen, palette.ink(), name, layout.legendX(), top);
        top = Lettering.SMALL.draw(pen, palette.soft(), Lettering.SMALL.lines(here(), width), layout.legendX(), top);
        drawShades(pen, top + GAP);
    }

    private String here() {
        double here = layout.map().here();
        return Double.isFinite(here) ? layout.map().measure().formatWithUnit(here) + " here" : "no value here";
    }

    /** The highest on top. */
    private void drawShades(Graphics2D pen, double from) {
        int count = levels.values().size();
        double each = Math.min(SWATCH_HEIGHT, (layout.data().getMaxY() - from) / (count + 1));
        for (int i = 0; i <= count; i++) {
            double y = from + (count - i) * each;
            Rectangle2D swatch = new Rectangle2D.Double(layout.legendX(), y, SWATCH, each);
            pen.setColor(levels.shade(i, palette));
            pen.fill(swatch);
            pen.setColor(palette.soft());
            pen.setStroke(new BasicStroke(palette.line(0.8)));
            pen.draw(swatch);
            if (i < count && each >= Lettering.SMALL.lineHeight() * 0.8) {
                String text = levels.text(levels.values().get(i), layout.map());
                Lettering.SMALL.draw(
                        pen,
                        palette.ink(),
                        text,
                        layout.legendX() + SWATCH + GAP,
                        y - Lettering.SMALL.lineHeight() / 2);
            }
        }
    }
}
