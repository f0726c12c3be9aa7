package rakeline.figure.paint;

import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.Optional;
import rakeline.figure.Drawing;
import rakeline.figure.Drawing.Dimension;
import rakeline.figure.Drawing.Handle;

/** The marks of a drawing as places to take hold of. */
record Gripped(Placement placement, double scale, Rectangle2D area) {
    Optional<Grip> of(Drawing.Mark mark) {
        if (mark instanceof Dimension dimension) {
            return Optional.of(of(dimension));
        }
        return mark instanceof Handle handle ? Optional.of(of(handle)) : Optional.empty();
    }

    private double mmPerPx() {
        return 1 / (placement.pxPerMm() * scale);
    }

    private Point2D onScreen(Point2D px) {
        return new Point2D.Double(area.getX() + scale * px.getX(), area.getY() + scale * px.getY());
    }

    private Grip of(Handle handle) {
        return new Grip(
                handle.key(),
                handle.value(),
                handle.overlay(),
                onScreen(placement.toPx(handle.at())),
                false,
                mmPerPx() * handle.perMmX(),
                -mmPerPx() * handle.perMmY());
    }

    private Grip of(Dimension dimension) {
        Line2D line = Outline.lineOf(dimension);
        Point2D one = placement.toPx(new Drawing.Point(line.getX1(), line.getY1()));
        Point2D other = placement.toPx(new Drawing.Point(line.getX2(), line.getY2()));
        boolean first = Math.hypot(dimension.from().x(), dimension.from().y())
                > Math.hypot(dimension.to().x(), dimension.to().y());
        Point2D tip = first ? one : other;
        Point2D foot = first ? other : one;
        double length = Math.max(1e-9, tip.distance(foot));
        return new Grip(
                dimension.key(),
                Double.NaN,
                dimension.overlay(),
                onScreen(tip),
                false,
                mmPerPx() * (tip.getX() - foot.getX()) / length,
                mmPerPx() * (tip.getY() - foot.getY()) / length);
    }
}
