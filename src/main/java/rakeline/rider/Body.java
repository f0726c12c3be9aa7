package rakeline.rider;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import rakeline.geometry.Point;

/**
 * The pieces of a rider, cranks level, the right foot forward. Sideways, hips and shoulders stand at half their width,
 * hands and feet where bar and pedals are, knees and elbows midway.
 *
 * @param handHalfWidthMm hands, from the middle
 * @param footHalfWidthMm feet, from the middle
 */
record Body(Rider rider, Legs legs, Torso torso, double handHalfWidthMm, double footHalfWidthMm) {
    /** Shoulder to crown over stature: 1 − 0.818 (Drillis and Contini in Winter, from memory). */
    private static final double CROWN_OVER_STATURE = 0.182;

    List<BodyPart> parts() {
        List<BodyPart> parts = new ArrayList<>();
        for (SegmentMass spread : SegmentMasses.of(rider.table())) {
            if (spread.isMiddle()) {
                parts.add(part("", spread, middle(spread.segment())));
            } else {
                parts.add(part("right ", spread, limb(spread.segment(), 1)));
                parts.add(part("left ", spread, limb(spread.segment(), -1)));
            }
        }
        return List.copyOf(parts);
    }

    private BodyPart part(String side, SegmentMass spread, Rod rod) {
        double mass = rider.get(RiderInputs.MASS) * spread.mass() / SegmentMasses.sum(rider.table());
        String name = spread.segment().name().toLowerCase(Locale.ROOT).replace('_', ' ');
        return rod.part(side + name, mass, spread);
    }

    private Rod middle(Segment segment) {
        Point shoulder = torso.shoulder();
        if (segment == Segment.TRUNK) {
            return new Rod(torso.hip(), 0, shoulder, 0);
        }
        double beyond = CROWN_OVER_STATURE * rider.get(RiderInputs.STATURE) / torso.trunkMm();
        return new Rod(shoulder, 0, shoulder.plus(shoulder.minus(torso.hip()).times(beyond)), 0);
    }

    private Rod limb(Segment segment, int side) {
        double crank = side > 0 ? 0 : Math.PI;
        double hip = side * rider.get(RiderInputs.HIP_WIDTH) / 2;
        double foot = side * footHalfWidthMm;
        double shoulder = side * rider.get(RiderInputs.SHOULDER_WIDTH) / 2;
        double hand = side * handHalfWidthMm;
        double knee = (hip + foot) / 2;
        double elbow = (shoulder + hand) / 2;
        return switch (segment) {
            case THIGH -> new Rod(legs.hip(), hip, legs.knee(crank), knee);
            case SHANK -> new Rod(legs.knee(crank), knee, legs.ankle(crank), foot);
            case FOOT -> new Rod(legs.ankle(crank), foot, legs.pedal(crank), foot);
            case UPPER_ARM -> new Rod(torso.shoulder(), shoulder, torso.elbow(), elbow);
            case FOREARM -> new Rod(torso.elbow(), elbow, torso.wrist(), hand);
            case HAND -> new Rod(torso.wrist(), hand, torso.grip(), hand);
            case TRUNK, HEAD -> throw new IllegalArgumentException(segment + " is no limb");
        };
    }
}
