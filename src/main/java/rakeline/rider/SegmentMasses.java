package rakeline.rider;

import java.util.List;

/**
 * The numbers of the published tables. Radii of gyration across are Winter's, those along a segment and of trunk and
 * head apart de Leva's, all from memory and not verified; so are the centres of head, hand and foot, which de Leva gives
 * from other ends.
 */
final class SegmentMasses {
    private static final List<SegmentMass> CADAVERS_1955 = List.of(
            new SegmentMass(Segment.TRUNK, 0.578, 0.66, 0.503, 0.191),
            upperArm(0.028, 0.436),
            new SegmentMass(Segment.FOREARM, 0.022, 0.682, 0.468, 0.121),
            thigh(0.100, 0.433),
            shank(0.0465, 0.433),
            foot(0.0145, 0.50));

    private static final List<SegmentMass> MEN_1996 = List.of(
            new SegmentMass(Segment.TRUNK, 0.4346, 1 - 0.4486, 0.347, 0.191),
            head(0.0694),
            upperArm(0.0271, 0.5772),
            forearm(0.0162, 0.4574),
            hand(0.0061),
            thigh(0.1416, 0.4095),
            shank(0.0433, 0.4395),
            foot(0.0137, 0.574));

    private static final List<SegmentMass> WOMEN_1996 = List.of(
            new SegmentMass(Segment.TRUNK, 0.4257, 1 - 0.4151, 0.339, 0.171),
            head(0.0668),
            upperArm(0.0255, 0.5754),
            forearm(0.0138, 0.4559),
            hand(0.0056),
            thigh(0.1478, 0.3612),
            shank(0.0481, 0.4352),
            foot(0.0129, 0.516));

    private SegmentMasses() {}

    static List<SegmentMass> of(BodyTable table) {
        return switch (table) {
            case CADAVERS_1955 -> CADAVERS_1955;
            case MEN_1996 -> MEN_1996;
            case WOMEN_1996 -> WOMEN_1996;
        };
    }

    /** Both sides added up; a table's own rounding leaves it within a thousandth of 1. */
    static double sum(BodyTable table) {
        return of(table).stream()
                .mapToDouble(each -> each.isMiddle() ? each.mass() : 2 * each.mass())
                .sum();
    }

    private static SegmentMass head(double mass) {
        return new SegmentMass(Segment.HEAD, mass, 0.68, 0.24, 0.20);
    }

    private static SegmentMass upperArm(double mass, double centre) {
        return new SegmentMass(Segment.UPPER_ARM, mass, centre, 0.322, 0.158);
    }

    private static SegmentMass forearm(double mass, double centre) {
        return new SegmentMass(Segment.FOREARM, mass, centre, 0.276, 0.121);
    }

    private static SegmentMass hand(double mass) {
        return new SegmentMass(Segment.HAND, mass, 0.72, 0.5, 0.4);
    }

    private static SegmentMass thigh(double mass, double centre) {
        return new SegmentMass(Segment.THIGH, mass, centre, 0.323, 0.149);
    }

    private static SegmentMass shank(double mass, double centre) {
        return new SegmentMass(Segment.SHANK, mass, centre, 0.302, 0.103);
    }

    private static SegmentMass foot(double mass, double centre) {
        return new SegmentMass(Segment.FOOT, mass, centre, 0.475, 0.124);
    }
}
