package rakeline.figure.paint;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import rakeline.figure.paint.ChartLayout.PanelLayout;
import rakeline.quantity.Limit;

/** Thin lines at a measure's limits, each with its name and source where the panel has room for them. */
record LimitLines(List<Limit> limits, PanelLayout layout, Palette palette) {
    private static final int MOST_LINES = 3;
    private static final double INSET = 6;

    void draw(Graphics2D pen, Placer placer) {
        limits.forEach(limit -> drawLine(pen, layout.toY(limit.value())));
        limits.forEach(limit -> drawName(pen, placer, limit));
    }

    private void drawLine(Graphics2D pen, double y) {
        Rectangle2D area = layout.area();
        pen.setColor(palette.caution());
        pen.setStroke(new BasicStroke(palette.line(1), BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10, dots(), 0));
        double crisp = ChartAxes.crisp(y);
        pen.draw(new Line2D.Double(area.getX(), crisp, area.getMaxX(), crisp));
    }

    private static float[] dots() {
        return new float[] {2, 2};
    }

    private void drawName(Graphics2D pen, Placer placer, Limit limit) {
        double y = layout.toY(limit.value());
        List<String> whole = lines(limit.source().isBlank() ? limit.label() : limit.label() + " · " + limit.source());
        if (!drawLines(pen, placer, whole, y)) {
            drawLines(pen, placer, lines(limit.label()), y);
        }
    }

    private List<String> lines(String words) {
        return Lettering.SMALL.lines(words, layout.area().getWidth() - 2 * INSET, MOST_LINES);
    }

    private boolean drawLines(Graphics2D pen, Placer placer, List<String> lines, double y) {
        return placer.place(boxes(lines, y))
                .map(box -> Lettering.SMALL.draw(pen, palette.caution(), lines, box.getX(), box.getY()))
                .isPresent();
    }

    /** Above the line, then below it; from the left to the right. */
    private List<Rectangle2D> boxes(List<String> lines, double y) {
        double width = Lettering.SMALL.width(lines);
        double height = Lettering.SMALL.height(lines);
        double room = layout.area().getWidth() - width - 2 * INSET;
        List<Rectangle2D> boxes = new ArrayList<>();
        for (double top : new double[] {y - height - 2, y + 3}) {
            for (double share : new double[] {0, 1, 0.5, 0.25, 0.75}) {
                boxes.add(new Rectangle2D.Double(layout.area().getX() + INSET + share * room, top, width, height));
            }
        }
        return boxes;
    }
}
