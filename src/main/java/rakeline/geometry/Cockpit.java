package rakeline.geometry;

/**
 * Stem and bar on a solved side view, in millimetres.
 *
 * @param clamp the bar clamp's centre
 * @param stemRoot where the stem leaves the steering axis
 */
public record Cockpit(Point stemRoot, Point clamp) {
    /** The cockpit of a bike that has the group. */
    public static Cockpit of(Bike bike, SideView side) {
        double up = bike.get(Inputs.HEADSET_COVER) + bike.get(Inputs.SPACERS) + bike.get(Inputs.STEM_CLAMP_HEIGHT) / 2;
        Point root = side.onAxis(up);
        double length = bike.get(Inputs.STEM_LENGTH);
        double angleRad = Math.toRadians(bike.get(Inputs.STEM_ANGLE));
        double ahead = length * Math.cos(angleRad);
        double rise = length * Math.sin(angleRad);
        return new Cockpit(
                root,
                new Point(
                        root.x() + ahead * side.sinHead() - rise * side.cosHead(),
                        root.y() + ahead * side.cosHead() + rise * side.sinHead()));
    }
}
