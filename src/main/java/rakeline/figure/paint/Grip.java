package rakeline.figure.paint;

import java.awt.geom.Point2D;

/**
 * A place on a figure where a number of the bike can be taken hold of.
 *
 * @param key of the input
 * @param at in px
 * @param isLine whether it can be held anywhere above and below that place
 * @param perPxX how the number grows by a px to the right
 * @param perPxY how the number grows by a px downward
 */
public record Grip(String key, Point2D at, boolean isLine, double perPxX, double perPxY) {
    /** Whether a place is near enough to take hold, within so many px. */
    public boolean isNear(Point2D place, double reach) {
        return isLine ? Math.abs(place.getX() - at.getX()) <= reach : place.distance(at) <= reach;
    }

    /** The number after a move from where it was taken hold of. */
    public double moved(double from, double dx, double dy) {
        return from + dx * perPxX + dy * perPxY;
    }
}
