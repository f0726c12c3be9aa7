package rakeline.figure.paint;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import rakeline.figure.Chart.Panel;

/**
 * The band about a curve: thinly filled so that the ground is seen through it, with an edge that reads in grey as well. A
 * step without a value or without a width interrupts it.
 */
record UncertaintyBand(Panel panel, ChartLayout layout, ChartLayout.PanelLayout place, SeriesStyle style) {
    private static final int FILL = 44;
    private static final int EDGE = 150;

    void draw(Graphics2D pen, Palette palette) {
        if (panel.band().isPresent()) {
            Graphics2D own = (Graphics2D) pen.create();
            own.clip(clip());
            own.setStroke(new BasicStroke(palette.line(0.8)));
            int from = 0;
            for (int step = 0; step <= panel.values().size(); step++) {
                if (!has(step)) {
                    drawStretch(own, from, step);
                    from = step + 1;
                }
            }
            own.dispose();
        }
    }

    private Rectangle2D clip() {
        Rectangle2D data = layout.data();
        Rectangle2D area = place.area();
        return new Rectangle2D.Double(data.getX(), area.getY(), data.getWidth(), area.getHeight());
    }

    private boolean has(int step) {
        return step < panel.values().size()
                && Double.isFinite(panel.values().at(step))
                && Double.isFinite(panel.off(step));
    }

    /** From a step up to another, that one left out; a lone step has a bar. */
    private void drawStretch(Graphics2D pen, int from, int to) {
        if (to == from + 1) {
            pen.setColor(style.colour());
            pen.draw(new Line2D.Double(x(from), y(from, -1), x(from), y(from, 1)));
        } else if (to > from) {
            pen.setColor(thinned(FILL));
            pen.fill(outline(from, to));
            pen.setColor(thinned(EDGE));
            edges(from, to).forEach(pen::draw);
        }
    }

    private Shape outline(int from, int to) {
        Path2D.Double path = edge(from, to, 1);
        for (int step = to - 1; step >= from; step--) {
            path.lineTo(x(step), y(step, -1));
        }
        path.closePath();
        return path;
    }

    private List<Shape> edges(int from, int to) {
        List<Shape> edges = new ArrayList<>();
        edges.add(edge(from, to, 1));
        edges.add(edge(from, to, -1));
        return edges;
    }

    private Path2D.Double edge(int from, int to, int side) {
        Path2D.Double path = new Path2D.Double();
        path.moveTo(x(from), y(from, side));
        for (int step = from + 1; step < to; step++) {
            path.lineTo(x(step), y(step, side));
        }
        return path;
    }

    private double x(int step) {
        return layout.stepX(step);
    }

    private double y(int step, int side) {
        return place.toY(panel.values().at(step) + side * panel.off(step));
    }

    private Color thinned(int alpha) {
        Color colour = style.colour();
        return new Color(colour.getRed(), colour.getGreen(), colour.getBlue(), alpha);
    }
}
