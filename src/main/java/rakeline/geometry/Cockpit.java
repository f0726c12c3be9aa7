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
        return new Cockpit(root, root.plus(stem(side, bike.get(Inputs.STEM_LENGTH), bike.get(Inputs.STEM_ANGLE))));
    }

    /** From the steering axis to the bar clamp's centre. */
    public static Point stem(SideView side, double lengthMm, double angleDeg) {
        double ahead = lengthMm * Math.cos(Math.toRadians(angleDeg));
        double rise = lengthMm * Math.sin(Math.toRadians(angleDeg));
        return new Point(
                ahead * side.sinHead() - rise * side.cosHead(), ahead * side.cosHead() + rise * side.sinHead());
    }
}
