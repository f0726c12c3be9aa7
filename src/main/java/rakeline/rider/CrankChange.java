package rakeline.rider;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rakeline.geometry.Bike;
import rakeline.geometry.BikeGroups;
import rakeline.geometry.Inputs;
import rakeline.geometry.Point;
import rakeline.quantity.Input;
import rakeline.quantity.Refusal;

/**
 * Another crank for the same leg: the saddle keeps its distance from the pedal.
 *
 * @param crankMm the new length
 * @param handsMove whether the hands move as the saddle does; then spacers and stem length take what that needs
 * @param setback what keeps the saddle's place fore and aft
 */
public record CrankChange(double crankMm, boolean handsMove, SaddleTarget.Setback setback) {
    /** The saddle moves along the line from BB to the sit point. */
    public CrankChange(double crankMm, boolean handsMove) {
        this(crankMm, handsMove, SaddleTarget.Setback.LINE);
    }

    /**
     * The bike with the other crank.
     *
     * @throws Refusal for a bike without cranks or contact points, or a length of crank that is not accepted
     */
    public Bike on(Bike bike) {
        if (!bike.hasGroup("crank") || !bike.hasGroup("contact")) {
            throw new Refusal(bike.name() + " lacks "
                    + BikeGroups.missingWords(bike, List.of(Inputs.CRANK_LENGTH, Inputs.CONTACT_SIT_X))
                    + "; another crank needs cranks and contact points.");
        }
        SaddleTarget saddle = SaddleTarget.of(bike, setback);
        Point sit = saddle.on(bike.with(Inputs.CRANK_LENGTH, crankMm));
        Map<Input, Double> changes = new LinkedHashMap<>();
        changes.put(Inputs.CRANK_LENGTH, crankMm);
        changes.put(Inputs.CONTACT_SIT_X, sit.x());
        changes.put(Inputs.CONTACT_SIT_Y, sit.y());
        if (handsMove) {
            moveHands(bike, sit.minus(saddle.sit()), changes);
        }
        Inputs.CRANK_LENGTH.quantity().check(crankMm);
        return bike.withSolved(changes);
    }

    /** What is kept, in words. */
    public String kept() {
        return "the saddle's distance from the pedal at its furthest, and " + setback.words() + "; "
                + (handsMove ? "hands move with the saddle." : "hands stay.");
    }

    private static void moveHands(Bike bike, Point shift, Map<Input, Double> changes) {
        changes.put(Inputs.CONTACT_HAND_X, bike.get(Inputs.CONTACT_HAND_X) + shift.x());
        changes.put(Inputs.CONTACT_HAND_Y, bike.get(Inputs.CONTACT_HAND_Y) + shift.y());
        if (bike.has(Inputs.STEM_LENGTH)) {
            moveBar(bike, shift, changes);
        }
    }

    /** The shift in parts along the stem and up the steering axis. */
    private static void moveBar(Bike bike, Point shift, Map<Input, Double> changes) {
        double head = Math.toRadians(bike.get(Inputs.HEAD_ANGLE));
        double stem = Math.toRadians(bike.get(Inputs.STEM_ANGLE));
        double ahead = shift.x() * Math.sin(head) + shift.y() * Math.cos(head);
        double up = -shift.x() * Math.cos(head) + shift.y() * Math.sin(head);
        double longer = ahead / Math.cos(stem);
        put(changes, Inputs.STEM_LENGTH, bike.get(Inputs.STEM_LENGTH) + longer);
        put(changes, Inputs.SPACERS, bike.get(Inputs.SPACERS) + up - longer * Math.sin(stem));
    }

    private static void put(Map<Input, Double> changes, Input part, double mm) {
        if (mm < 0) {
            throw new Refusal("the hands cannot move as the saddle does: that takes "
                    + part.quantity().inSentence() + " of " + part.quantity().formatWithUnit(mm) + ".");
        }
        changes.put(part, mm);
    }
}
