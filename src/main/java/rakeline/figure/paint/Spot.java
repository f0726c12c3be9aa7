package rakeline.figure.paint;

import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import rakeline.figure.Drawing.Dimension;
import rakeline.figure.Drawing.Point;

/** A point that words may stand at, and on which side of it: -1 left or above, 0 about it, 1 right or below. */
record Spot(double x, double y, double sideX, double sideY) {
    private static final double NEAR = 4;

    /** Places along a dimension's line, from its middle to where words stand beyond its ends. */
    private static final double[] ALONG = {0.35, -0.35, 0.7, -0.7, 1, -1};

    Rectangle2D box(double width, double height) {
        return new Rectangle2D.Double(
                x + sideX * NEAR - width / 2 * (1 - sideX), y + sideY * NEAR - height / 2 * (1 - sideY), width, height);
    }

    Spot further(double distance) {
        return new Spot(x + sideX * distance, y + sideY * distance, sideX, sideY);
    }

    /** 1 where outside is to the left of the line's direction: where it was moved to, else away from the drawing's centre. */
    private static double side(Dimension dimension, Point centre) {
        if (dimension.offset() != 0) {
            return Math.signum(dimension.offset());
        }
        Line2D line = Outline.lineOf(dimension);
        Point out = Outline.out(dimension);
        double away = out.x() * ((line.getX1() + line.getX2()) / 2 - centre.x())
                + out.y() * ((line.getY1() + line.getY2()) / 2 - centre.y());
        return away < 0 ? -1 : 1;
    }

    /** A dimension's own line, in px. */
    static Line2D onSheet(Dimension dimension, Placement placement) {
        Line2D mm = Outline.lineOf(dimension);
        return new Line2D.Double(
                placement.toPx(new Point(mm.getX1(), mm.getY1())), placement.toPx(new Point(mm.getX2(), mm.getY2())));
    }

    /** Outside the middle of the line, then inside it, then at its ends, then along it and beyond them. */
    static List<Spot> besideLine(Dimension dimension, Placement placement, Point centre, double width) {
        Line2D line = onSheet(dimension, placement);
        Point out = Outline.out(dimension);
        double side = side(dimension, centre);
        double x = (line.getX1() + line.getX2()) / 2;
        double y = (line.getY1() + line.getY2()) / 2;
        double outX = side * out.x();
        double outY = -side * out.y();
        double length = line.getP1().distance(line.getP2());
        double half = length / 2 + MarkPainter.arrowBeyond(length);
        List<Spot> spots = new ArrayList<>(List.of(
                new Spot(x, y, outX, outY),
                new Spot(x, y, -outX, -outY),
                new Spot(x + half * outY, y - half * outX, outY, -outX),
                new Spot(x - half * outY, y + half * outX, -outY, outX)));
        double reach = half + Math.abs(outY) * width / 2 + Math.abs(outX) * Lettering.SMALL.lineHeight() / 2;
        for (double share : ALONG) {
            double alongX = x + share * reach * outY;
            double alongY = y - share * reach * outX;
            spots.add(new Spot(alongX, alongY, outX, outY));
            spots.add(new Spot(alongX, alongY, -outX, -outY));
        }
        return List.copyOf(spots);
    }

    /** Under the point, then above, right and left of it. */
    static List<Spot> around(Point2D at) {
        return List.of(
                new Spot(at.getX(), at.getY(), 0, 1),
                new Spot(at.getX(), at.getY(), 0, -1),
                new Spot(at.getX(), at.getY(), 1, 0),
                new Spot(at.getX(), at.getY(), -1, 0));
    }
}
