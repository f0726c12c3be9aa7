package rakeline.figure.paint;

import java.awt.geom.AffineTransform;
import java.awt.geom.Point2D;

/**
 * A place on a figure where a number of the bike can be taken hold of.
 *
 * @param key of the input
 * @param value of the input where the figure shows it; NaN where the figure does not say it
 * @param overlay which of the bikes that are laid over each other it belongs to, from 0
 * @param at in px
 * @param isLine whether it can be held anywhere above and below that place
 * @param perPxX how the number grows by a px to the right
 * @param perPxY how the number grows by a px downward
 */
public record Grip(String key, double value, int overlay, Point2D at, boolean isLine, double perPxX, double perPxY) {
    /** Whether a place is near enough to take hold, within so many px. */
    public boolean isNear(Point2D place, double reach) {
        return isLine ? Math.abs(place.getX() - at.getX()) <= reach : place.distance(at) <= reach;
    }

    /** The number after a move from where it was taken hold of. */
    public double moved(double from, double dx, double dy) {
        return from + dx * perPxX + dy * perPxY;
    }

    /** Whether the number grows (1) or shrinks (−1) on a way; 0 where that way hardly moves it. */
    public int sense(double dx, double dy) {
        double along = dx * perPxX + dy * perPxY;
        double most = Math.hypot(dx, dy) * Math.hypot(perPxX, perPxY);
        return Math.abs(along) < 0.2 * most ? 0 : (int) Math.signum(along);
    }

    /** Whether it is the same number of the same bike as another's, wherever it has gone. */
    public boolean isOf(Grip other) {
        return key.equals(other.key) && overlay == other.overlay && isLine == other.isLine;
    }

    /** Where it is when the figure is looked at more closely. */
    public Grip seen(AffineTransform sheet) {
        double by = sheet.getScaleX();
        return new Grip(key, value, overlay, sheet.transform(at, null), isLine, perPxX / by, perPxY / by);
    }
}
