package rakeline.figure.paint;

import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.FlatteningPathIterator;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import rakeline.figure.Drawing;
import rakeline.figure.Drawing.Circle;
import rakeline.figure.Drawing.Dimension;
import rakeline.figure.Drawing.Label;
import rakeline.figure.Drawing.Mark;
import rakeline.figure.Drawing.Path;
import rakeline.figure.Drawing.Point;

/** The shapes of marks, in mm. */
final class Outline {
    private Outline() {}

    /** The shape of a path or circle. */
    static Shape of(Path path) {
        Path2D.Double shape = new Path2D.Double();
        for (Point point : path.points()) {
            if (shape.getCurrentPoint() == null) {
                shape.moveTo(point.x(), point.y());
            } else {
                shape.lineTo(point.x(), point.y());
            }
        }
        if (path.closed() && shape.getCurrentPoint() != null) {
            shape.closePath();
        }
        return shape;
    }

    static Shape of(Circle circle) {
        double radius = circle.radius();
        return new Ellipse2D.Double(
                circle.centre().x() - radius, circle.centre().y() - radius, 2 * radius, 2 * radius);
    }

    /** A dimension's own line, moved out from the points that it joins. */
    static Line2D lineOf(Dimension dimension) {
        Point out = out(dimension);
        return new Line2D.Double(
                dimension.from().x() + out.x() * dimension.offset(),
                dimension.from().y() + out.y() * dimension.offset(),
                dimension.to().x() + out.x() * dimension.offset(),
                dimension.to().y() + out.y() * dimension.offset());
    }

    /** The unit vector to the left of a dimension's direction; up where it has no length. */
    static Point out(Dimension dimension) {
        double dx = dimension.to().x() - dimension.from().x();
        double dy = dimension.to().y() - dimension.from().y();
        double length = Math.hypot(dx, dy);
        return length == 0 ? new Point(0, 1) : new Point(-dy / length, dx / length);
    }

    /** All that a drawing covers, its words aside; a unit square where it has no marks. */
    static Rectangle2D bounds(Drawing drawing) {
        return drawing.marks().stream()
                .flatMap(Outline::boundsOf)
                .reduce(Rectangle2D::createUnion)
                .orElse(new Rectangle2D.Double(0, 0, 1, 1));
    }

    static Point centre(Drawing drawing) {
        Rectangle2D bounds = bounds(drawing);
        return new Point(bounds.getCenterX(), bounds.getCenterY());
    }

    private static Stream<Rectangle2D> boundsOf(Mark mark) {
        if (mark instanceof Path path) {
            return path.points().isEmpty() ? Stream.empty() : Stream.of(of(path).getBounds2D());
        }
        if (mark instanceof Circle circle) {
            return Stream.of(of(circle).getBounds2D());
        }
        if (mark instanceof Dimension dimension) {
            return Stream.of(boundsOf(dimension));
        }
        return mark instanceof Label label
                ? Stream.of(new Rectangle2D.Double(label.at().x(), label.at().y(), 0, 0))
                : Stream.empty();
    }

    private static Rectangle2D boundsOf(Dimension dimension) {
        Rectangle2D bounds = lineOf(dimension).getBounds2D();
        bounds.add(dimension.from().x(), dimension.from().y());
        bounds.add(dimension.to().x(), dimension.to().y());
        return bounds;
    }

    /** The straight pieces of all that is drawn, in px, that words should keep off. */
    static List<Line2D> pieces(Drawing drawing, Placement placement) {
        List<Line2D> pieces = new ArrayList<>();
        for (Mark mark : drawing.marks()) {
            shapeOf(mark).ifPresent(shape -> addPieces(pieces, shape, placement));
        }
        pieces.addAll(dimensions(drawing, placement));
        return pieces;
    }

    private static Optional<Shape> shapeOf(Mark mark) {
        if (mark instanceof Path path) {
            return Optional.of(of(path));
        }
        return mark instanceof Circle circle ? Optional.of(of(circle)) : Optional.empty();
    }

    /** The lines from what is measured to the dimensions' own lines, in px. */
    static List<Line2D> extensions(Drawing drawing, Placement placement) {
        return drawing.marks().stream()
                .filter(Dimension.class::isInstance)
                .flatMap(mark -> extensions((Dimension) mark, placement))
                .toList();
    }

    private static Stream<Line2D> extensions(Dimension dimension, Placement placement) {
        Line2D line = lineOf(dimension);
        return Stream.of(
                new Line2D.Double(
                        placement.toPx(dimension.from()), placement.toPx(new Point(line.getX1(), line.getY1()))),
                new Line2D.Double(
                        placement.toPx(dimension.to()), placement.toPx(new Point(line.getX2(), line.getY2()))));
    }

    /** The dimensions' own lines with their arrows, in px. */
    static List<Line2D> dimensions(Drawing drawing, Placement placement) {
        return drawing.marks().stream()
                .filter(Dimension.class::isInstance)
                .map(mark -> MarkPainter.withArrows(lineOf((Dimension) mark), placement))
                .toList();
    }

    private static void addPieces(List<Line2D> pieces, Shape shape, Placement placement) {
        double[] end = new double[6];
        double[] last = new double[2];
        double[] start = new double[2];
        for (PathIterator path = new FlatteningPathIterator(shape.getPathIterator(placement.toPx()), 1);
                !path.isDone();
                path.next()) {
            int kind = path.currentSegment(end);
            double[] to = kind == PathIterator.SEG_CLOSE ? start : end;
            if (kind == PathIterator.SEG_MOVETO) {
                System.arraycopy(end, 0, start, 0, 2);
            } else {
                pieces.add(new Line2D.Double(last[0], last[1], to[0], to[1]));
            }
            System.arraycopy(to, 0, last, 0, 2);
        }
    }
}
