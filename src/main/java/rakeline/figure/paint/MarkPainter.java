package rakeline.figure.paint;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import rakeline.figure.Drawing.Circle;
import rakeline.figure.Drawing.Dimension;
import rakeline.figure.Drawing.Ink;
import rakeline.figure.Drawing.Mark;
import rakeline.figure.Drawing.Path;
import rakeline.figure.Drawing.Point;

/** Inks single marks of a drawing; words are placed elsewhere. */
record MarkPainter(Placement placement, Palette palette, Assignment assignment) {
    private static final double ARROW = 8;
    private static final double TAIL = 14;
    private static final double ARROW_HALF = 2.4;
    private static final double OVERSHOOT = 4;
    private static final double GAP = 3;
    private static final double BOLD_MM = 7.5;
    private static final int SOFT_FILL = 80;

    void draw(Graphics2D pen, Mark mark) {
        if (mark instanceof Path path) {
            drawShape(pen, Outline.of(path), path.filled(), path);
        } else if (mark instanceof Circle circle) {
            drawShape(pen, Outline.of(circle), circle.filled(), circle);
        } else if (mark instanceof Dimension dimension) {
            drawDimension(pen, dimension);
        }
    }

    private void drawShape(Graphics2D pen, Shape mm, boolean filled, Mark mark) {
        Shape shape = placement.toPx().createTransformedShape(mm);
        Color colour = colour(mark);
        if (filled) {
            pen.setColor(mark.ink() == Ink.SOFT ? thinned(colour) : colour);
            pen.fill(shape);
        }
        pen.setColor(colour);
        pen.setStroke(stroke(mark));
        pen.draw(shape);
    }

    private Color colour(Mark mark) {
        return LayerStyle.colour(palette, mark.overlay(), own(mark.ink()));
    }

    private Color own(Ink ink) {
        return switch (ink) {
            case BOLD, FINE -> palette.ink();
            case SOFT, DASHED -> palette.soft();
            case FAINT -> palette.faint();
        };
    }

    private static Color thinned(Color colour) {
        return new Color(colour.getRed(), colour.getGreen(), colour.getBlue(), SOFT_FILL);
    }

    private BasicStroke stroke(Mark mark) {
        return switch (mark.ink()) {
            case BOLD ->
                LayerStyle.stroke(palette, mark.overlay(), Math.max(2, Math.min(3, BOLD_MM * placement.pxPerMm())));
            case FINE, SOFT -> LayerStyle.stroke(palette, mark.overlay(), 1.5);
            case FAINT -> round(1);
            case DASHED ->
                new BasicStroke(
                        palette.line(1.1), BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 10, new float[] {9, 4}, 0);
        };
    }

    private BasicStroke round(double width) {
        return new BasicStroke(palette.line(width), BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND);
    }

    private void drawDimension(Graphics2D pen, Dimension dimension) {
        Line2D mm = Outline.lineOf(dimension);
        Point2D from = placement.toPx(new Point(mm.getX1(), mm.getY1()));
        Point2D to = placement.toPx(new Point(mm.getX2(), mm.getY2()));
        pen.setStroke(round(1));
        pen.setColor(palette.faint());
        drawExtension(pen, placement.toPx(dimension.from()), from);
        drawExtension(pen, placement.toPx(dimension.to()), to);
        pen.setStroke(round(dimension.ink() == Ink.BOLD ? 1.5 : 1));
        pen.setColor(lineColour(dimension));
        pen.draw(new Line2D.Double(from, to));
        drawArrows(pen, from, to);
    }

    /** The colour of the measure where it has one on this page. */
    private Color lineColour(Dimension dimension) {
        if (dimension.overlay() == 0 && assignment.names(dimension.key())) {
            return palette.style(assignment.place(dimension.key())).colour();
        }
        return dimension.overlay() == 0 && dimension.ink() != Ink.BOLD ? palette.soft() : colour(dimension);
    }

    /** From near the thing measured to a little beyond the dimension's line. */
    private static void drawExtension(Graphics2D pen, Point2D thing, Point2D end) {
        double length = thing.distance(end);
        if (length > GAP) {
            double x = (end.getX() - thing.getX()) / length;
            double y = (end.getY() - thing.getY()) / length;
            pen.draw(new Line2D.Double(
                    thing.getX() + GAP * x,
                    thing.getY() + GAP * y,
                    end.getX() + OVERSHOOT * x,
                    end.getY() + OVERSHOOT * y));
        }
    }

    /** Inside the line where it is long enough, else outside pointing in. */
    private static void drawArrows(Graphics2D pen, Point2D from, Point2D to) {
        double length = from.distance(to);
        if (length == 0) {
            return;
        }
        double inward = arrowBeyond(length) == 0 ? 1 : -1;
        double x = inward * (to.getX() - from.getX()) / length;
        double y = inward * (to.getY() - from.getY()) / length;
        drawArrow(pen, from, x, y, inward);
        drawArrow(pen, to, -x, -y, inward);
    }

    /** A dimension's line on the sheet, as far as its arrows reach. */
    static Line2D withArrows(Line2D mm, Placement placement) {
        Point2D from = placement.toPx(new Point(mm.getX1(), mm.getY1()));
        Point2D to = placement.toPx(new Point(mm.getX2(), mm.getY2()));
        double length = from.distance(to);
        double beyond = length == 0 ? 0 : arrowBeyond(length) / length;
        double x = beyond * (to.getX() - from.getX());
        double y = beyond * (to.getY() - from.getY());
        return new Line2D.Double(from.getX() - x, from.getY() - y, to.getX() + x, to.getY() + y);
    }

    /** How far arrows reach beyond the ends of a dimension's line of that length, in px. */
    static double arrowBeyond(double length) {
        return length > 3 * ARROW ? 0 : TAIL;
    }

    private static void drawArrow(Graphics2D pen, Point2D tip, double x, double y, double inward) {
        Path2D.Double head = new Path2D.Double();
        head.moveTo(tip.getX(), tip.getY());
        head.lineTo(tip.getX() + ARROW * x - ARROW_HALF * y, tip.getY() + ARROW * y + ARROW_HALF * x);
        head.lineTo(tip.getX() + ARROW * x + ARROW_HALF * y, tip.getY() + ARROW * y - ARROW_HALF * x);
        head.closePath();
        pen.fill(head);
        if (inward < 0) {
            pen.draw(new Line2D.Double(tip.getX(), tip.getY(), tip.getX() + TAIL * x, tip.getY() + TAIL * y));
        }
    }
}
