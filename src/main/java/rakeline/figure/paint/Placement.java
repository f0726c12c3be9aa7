package rakeline.figure.paint;

import java.awt.geom.AffineTransform;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import rakeline.figure.Drawing.Point;

/** Where millimetres lie on the sheet: y up becomes y down, the scale is the same both ways. */
record Placement(double pxPerMm, double originX, double originY) {

    /** The largest that puts a part of the plane into the middle of an area. */
    static Placement fitting(Rectangle2D mm, Rectangle2D area) {
        double width = Math.max(1, mm.getWidth());
        double height = Math.max(1, mm.getHeight());
        double scale = Math.min(area.getWidth() / width, area.getHeight() / height);
        return new Placement(
                scale, area.getCenterX() - scale * mm.getCenterX(), area.getCenterY() + scale * mm.getCenterY());
    }

    Point2D.Double toPx(Point mm) {
        return new Point2D.Double(originX + pxPerMm * mm.x(), originY - pxPerMm * mm.y());
    }

    AffineTransform toPx() {
        return new AffineTransform(pxPerMm, 0, 0, -pxPerMm, originX, originY);
    }
}
