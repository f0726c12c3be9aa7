package rakeline.figure.paint;

import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import rakeline.figure.MapFigure;
import rakeline.quantity.Numbers;
import rakeline.quantity.Range;

/**
 * Where everything of a map lies in its body.
 *
 * @param data the area of the two axes
 * @param legendX the left end of what stands to the right of it
 */
record MapLayout(MapFigure map, Rectangle2D data, Range x, Range y, Ticks xTicks, Ticks yTicks, double legendX) {
    private static final double TICK_GAP = 8;
    private static final double LEGEND_GAP = 14;
    private static final double TICK_EVERY = 34;

    static MapLayout of(MapFigure map, Rectangle2D body) {
        Range x = range(map.x().steps());
        Range y = range(map.y().steps());
        double bottom = body.getMaxY() - 8 - 2 * Lettering.SMALL.lineHeight();
        double top = body.getY() + Lettering.SMALL.lineHeight() + 6;
        Ticks yTicks = Ticks.in(y, (int) Math.max(2, (bottom - top) / TICK_EVERY), Double.MIN_NORMAL);
        double tickWidth = Lettering.SMALL.width(yTicks.texts(map.y().quantity().unit()));
        double left = Math.ceil(body.getX() + tickWidth + TICK_GAP);
        double right = Math.floor(body.getMaxX() - MapLegend.width(map, body.getWidth()) - LEGEND_GAP);
        Rectangle2D data = new Rectangle2D.Double(left, top, right - left, bottom - top);
        return new MapLayout(map, data, x, y, xTicks(map, x, data.getWidth()), yTicks, right + LEGEND_GAP);
    }

    /** A map is nearly as high as it is wide, but no higher than a screen shows. */
    static double heightOf(double width) {
        return Math.max(260, Math.min(520, 0.62 * width));
    }

    double toX(double value) {
        return data.getX() + (value - x.from()) / (x.to() - x.from()) * data.getWidth();
    }

    double toY(double value) {
        return data.getMaxY() - (value - y.from()) / (y.to() - y.from()) * data.getHeight();
    }

    /** The place of a node of the grid. */
    Point2D node(int i, int j) {
        return new Point2D.Double(
                toX(map.x().steps().at(i)), toY(map.y().steps().at(j)));
    }

    /** Whether the bike as it is lies on the map. */
    boolean showsHere() {
        return x.contains(map.x().here()) && y.contains(map.y().here());
    }

    private static Range range(Numbers steps) {
        double first = steps.at(0);
        double last = steps.at(steps.size() - 1);
        return new Range(Math.min(first, last), Math.max(first, last));
    }

    private static Ticks xTicks(MapFigure map, Range x, double width) {
        Ticks fine = Ticks.in(x, 6, Double.MIN_NORMAL);
        double each = Lettering.SMALL.width(fine.texts(map.x().quantity().unit())) + 28;
        return Ticks.in(x, (int) Math.max(1, Math.min(7, width / each)), Double.MIN_NORMAL);
    }
}
