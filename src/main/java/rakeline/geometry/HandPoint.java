package rakeline.geometry;

import java.util.List;

/**
 * A hand on the bar.
 *
 * @param at from BB
 * @param halfWidthMm sideways from the middle
 * @param aheadMm ahead of the steering axis, perpendicular to it; negative behind it
 */
public record HandPoint(Point at, double halfWidthMm, double aheadMm) {
    /** The hand point on a bar that is given, drops only where reach and drop are. */
    public static HandPoint of(Bike bike, SideView side, Cockpit cockpit, Hands hands) {
        Point at = cockpit.clamp().plus(fromClamp(bike, hands));
        double ahead = (at.x() - side.reachMm()) * side.sinHead() + (at.y() - side.stackMm()) * side.cosHead();
        return new HandPoint(at, halfWidth(bike, hands), ahead);
    }

    /** What a bike lacks where it has no hand point, in words. */
    public static String lacking(Geometry geometry) {
        String parts = BikeGroups.missingWords(geometry.bike(), List.of(Inputs.STEM_LENGTH, Inputs.BAR_WIDTH));
        return parts.isEmpty()
                ? BikeGroups.missingWords(geometry.bike(), List.of(Inputs.BAR_REACH, Inputs.BAR_DROP))
                : parts;
    }

    /** Hand point to the steering axis: √(ahead² + half width²). */
    public double leverMm() {
        return Math.hypot(aheadMm, halfWidthMm);
    }

    private static Point fromClamp(Bike bike, Hands hands) {
        return switch (hands) {
            case TOPS -> new Point(0, 0);
            case HOODS -> new Point(bike.get(Inputs.HOOD_FORWARD), bike.get(Inputs.HOOD_RISE));
            case DROPS -> Handlebar.turned(bike, new Point(bike.get(Inputs.BAR_REACH), -bike.get(Inputs.BAR_DROP)));
        };
    }

    private static double halfWidth(Bike bike, Hands hands) {
        return switch (hands) {
            case TOPS -> bike.get(Inputs.TOPS_HALF_WIDTH);
            case HOODS -> bike.get(Inputs.BAR_WIDTH) / 2;
            case DROPS -> bike.get(Inputs.BAR_WIDTH) / 2 + flared(bike);
        };
    }

    private static double flared(Bike bike) {
        return bike.get(Inputs.BAR_DROP) * Math.tan(Math.toRadians(bike.get(Inputs.BAR_FLARE)));
    }
}
