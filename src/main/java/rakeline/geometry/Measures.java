package rakeline.geometry;

import static rakeline.quantity.SourceNote.Part.FORMULA;
import static rakeline.quantity.SourceNote.Part.LIMIT;
import static rakeline.quantity.SourceNote.Part.UNCERTAINTY;
import static rakeline.quantity.SourceStanding.COPY;
import static rakeline.quantity.SourceStanding.DERIVED;
import static rakeline.quantity.SourceStanding.PRACTICE;
import static rakeline.quantity.SourceStanding.READ;
import static rakeline.quantity.Unit.DEGREE;
import static rakeline.quantity.Unit.METRE;
import static rakeline.quantity.Unit.MILLIMETRE;
import static rakeline.quantity.Unit.PERCENT;
import static rakeline.quantity.Unit.PER_SQUARE_METRE;

import java.util.List;
import java.util.function.ToDoubleBiFunction;
import java.util.function.ToDoubleFunction;
import rakeline.quantity.Input;
import rakeline.quantity.Measure;
import rakeline.quantity.Quantity;
import rakeline.quantity.Reading;
import rakeline.quantity.Unit;

/** What follows from a bike file's numbers in the side view, the cockpit and the seat post; each declared once. */
public final class Measures {
    private static final String NOMINAL_RADIUS =
            "A figure from a nominal wheel radius carries its error, about 1 % of the radius.";

    private static final List<Input> POST =
            List.of(Inputs.CONTACT_SIT_X, Inputs.POST_LENGTH, Inputs.RAIL_TRAVEL, Inputs.SEAT_TUBE);
    private static final List<Input> RAILS = List.of(Inputs.CONTACT_SIT_X, Inputs.POST_LENGTH, Inputs.RAIL_TRAVEL);

    // Side view

    public static final Measure<Geometry> BB_HEIGHT = side(
            mm("bbHeightMm", "BB height", "Rear wheel radius minus BB drop.")
                    .rule(240, 300, "race rules", Sources.RACE_RULES)
                    .source(LIMIT, COPY, "UCI Part 1, an older edition"),
            SideView::bbHeightMm);
    public static final Measure<Geometry> FRONT_CENTRE = side(
            mm("frontCentreMm", "Front-centre", "BB to the front axle, true length.")
                    .limit(575, "designers' floor, often", "common practice, 622 wheels")
                    .limit(560, "designers' floor, rarely", "common practice, 622 wheels")
                    .source(LIMIT, PRACTICE, "622 wheels"),
            SideView::frontCentreMm);
    public static final Measure<Geometry> FRONT_CENTRE_X = side(
            mm("frontCentreXMm", "Front-centre, horizontal", "BB to the front axle, horizontal.")
                    .rule(540, 650, "race rules", Sources.RACE_RULES)
                    .source(LIMIT, COPY, "UCI Part 1, an older edition"),
            SideView::frontAxleXMm);
    public static final Measure<Geometry> REAR_CENTRE_X = side(
            mm("rearCentreXMm", "Rear-centre, horizontal", "BB to the rear axle, horizontal.")
                    .rule(350, 500, "race rules", Sources.RACE_RULES)
                    .source(LIMIT, COPY, "UCI Part 1, an older edition"),
            side -> -side.rearAxleXMm());
    public static final Measure<Geometry> WHEELBASE =
            side(mm("wheelbaseMm", "Wheelbase", "Horizontal, axle to axle."), SideView::wheelbaseMm);
    public static final Measure<Geometry> TRAIL = side(
            mm(
                            "trailMm",
                            "Trail",
                            "Along the ground, from the steering axis to the contact point behind it: (R cos α − f)"
                                    + " / sin α. "
                                    + NOMINAL_RADIUS)
                    .uncertainty(1.8)
                    .source(UNCERTAINTY, DERIVED, "head angle ± 0.2°, the others by their own")
                    .source(FORMULA, READ, "Meijaard, Papadopoulos, Ruina and Schwab 2007"),
            SideView::trailMm);
    public static final Measure<Geometry> MECHANICAL_TRAIL = side(
            mm(
                    "mechanicalTrailMm",
                    "Mechanical trail",
                    "Contact point to the steering axis, perpendicular: trail sin α."),
            SideView::mechanicalTrailMm);
    public static final Measure<Geometry> WHEEL_FLOP = side(
            mm(
                    "wheelFlopMm",
                    "Wheel flop",
                    "Trail sin α cos α: the curvature of the front end's drop with steer, drop ≈ ½ flop δ², not the"
                            + " drop at 90°."),
            SideView::wheelFlopMm);
    public static final Measure<Geometry> FRONT_DROP = measure(
            mm("frontDropMm", "Front drop", "How far the front end comes down at the steering angle ride.steerDeg.")
                    .decimals(2),
            List.of(Inputs.RIDE_STEER),
            geometry -> geometry.side().frontDropMm(rideRad(geometry, Inputs.RIDE_STEER)));
    public static final Measure<Geometry> AXIS_CROSSING = side(
            quantity(
                            "axisCrossingPercent",
                            "Axis crossing",
                            PERCENT,
                            "Height at which the steering axis cuts the vertical through the front axle, in % of the"
                                    + " front wheel radius.")
                    .rule(15, 60, "recommended", Sources.ISO_4210)
                    .source(LIMIT, COPY, "ISO 4210-2:2015 Annex A"),
            SideView::axisCrossingPercent);
    public static final Measure<Geometry> EFFECTIVE_TOP_TUBE = measure(
            mm(
                    "effectiveTopTubeMm",
                    "Effective top tube",
                    "Horizontal, from the head tube's top centre back to the seat axis."),
            List.of(),
            geometry -> geometry.side().reachMm()
                    - SeatAxis.of(geometry.bike()).xAtHeight(geometry.side().stackMm()));
    public static final Measure<Geometry> STANDOVER = new Measure<>(
            mm("standoverMm", "Standover", "Ground to the top tube's top edge at the straddle point.")
                    .caution(Cautions.STANDOVER)
                    .declared(),
            Measures::standover);
    public static final Measure<Geometry> AXLE_TO_CROWN_IMPLIED = new Measure<>(
            mm("axleToCrownImpliedMm", "Axle to crown, implied", "The fork length that closes this side view.")
                    .declared(),
            geometry -> ForkLength.impliedMm(geometry.bike(), geometry.side()));
    public static final Measure<Geometry> GROUND_STEER = measure(
            quantity(
                            "groundSteerDeg",
                            "Ground steer",
                            DEGREE,
                            "Angle between the tracks of front and rear wheel at ride.steerDeg and ride.leanDeg,"
                                    + " kinematic.")
                    .decimals(2),
            List.of(Inputs.RIDE_STEER, Inputs.RIDE_LEAN),
            geometry -> Math.toDegrees(groundSteerRad(geometry)));
    public static final Measure<Geometry> TURN_RADIUS = new Measure<>(
            quantity(
                            "turnRadiusM",
                            "Turn radius",
                            METRE,
                            "Radius of the rear contact's track at ride.steerDeg and ride.leanDeg, kinematic.")
                    .decimals(2)
                    .declared(),
            Measures::turnRadius);

    // Toe room by paper and ruler

    public static final Measure<Geometry> PEDAL_MARGIN_FLAT = measure(
            mm(
                            "pedalMarginFlatMm",
                            "Pedal margin, flat rule",
                            "Front-centre minus front wheel radius minus crank: the paper-and-ruler rule for the"
                                    + " pedal.")
                    .caution(Cautions.TOE)
                    .limit(40, "often kept, steering straight", "common practice")
                    .source(FORMULA, PRACTICE, "paper and ruler")
                    .source(LIMIT, PRACTICE, ""),
            List.of(Inputs.CRANK_LENGTH),
            Measures::pedalMarginFlat);
    public static final Measure<Geometry> TOE_MARGIN_FLAT = measure(
            mm(
                            "toeMarginFlatMm",
                            "Toe margin, flat rule",
                            "The pedal's flat margin minus the toe's length ahead of it.")
                    .caution(Cautions.TOE)
                    .limit(0, "the toe touches the tyre", "by definition")
                    .source(LIMIT, DERIVED, "by definition"),
            List.of(Inputs.CRANK_LENGTH, Inputs.TOE_FORWARD),
            geometry -> pedalMarginFlat(geometry) - geometry.bike().get(Inputs.TOE_FORWARD));

    // Cockpit and hands

    public static final Measure<Geometry> BAR_X = cockpit(
            mm("barXMm", "Bar, x", "Bar clamp's centre ahead of BB."),
            cockpit -> cockpit.clamp().x());
    public static final Measure<Geometry> BAR_Y = cockpit(
            mm("barYMm", "Bar, y", "Bar clamp's centre above BB."),
            cockpit -> cockpit.clamp().y());
    public static final Measure<Geometry> HAND_X = hand(
            mm("handXMm", "Hand, x", "Hand point ahead of BB."),
            (geometry, hand) -> hand.at().x());
    public static final Measure<Geometry> HAND_Y = hand(
            mm("handYMm", "Hand, y", "Hand point above BB."),
            (geometry, hand) -> hand.at().y());
    public static final Measure<Geometry> STEM_RISE = measure(
            quantity(
                    "stemRiseDeg",
                    "Stem angle to the horizontal",
                    DEGREE,
                    "Stem above the horizontal: 90 − α + stem angle."),
            List.of(Inputs.STEM_ANGLE),
            geometry -> 90
                    - geometry.bike().get(Inputs.HEAD_ANGLE)
                    + geometry.bike().get(Inputs.STEM_ANGLE));
    public static final Measure<Geometry> HAND_AHEAD = hand(
            mm("handAheadMm", "Hand ahead of the axis", "Hand point ahead of the steering axis, perpendicular."),
            (geometry, hand) -> hand.aheadMm());
    public static final Measure<Geometry> HAND_LEVER = hand(
            mm("handLeverMm", "Hand lever", "Hand point to the steering axis: √(ahead² + half width²)."),
            (geometry, hand) -> hand.leverMm());
    public static final Measure<Geometry> HAND_TRAVEL = hand(
            mm("handTravelPerDegreeMm", "Hand travel per degree", "Hand lever · π/180.")
                    .decimals(2),
            (geometry, hand) -> Math.toRadians(hand.leverMm()));
    public static final Measure<Geometry> HAND_TRAVEL_SIDEWAYS = hand(
            mm("handTravelSidewaysMm", "Hand travel, sideways", "Hand ahead of the axis · π/180, a degree of steer.")
                    .decimals(2),
            (geometry, hand) -> Math.toRadians(hand.aheadMm()));
    public static final Measure<Geometry> HAND_TRAVEL_FORE_AFT = hand(
            mm("handTravelForeAftMm", "Hand travel, fore and aft", "Half width · π/180, a degree of steer.")
                    .decimals(2),
            (geometry, hand) -> Math.toRadians(hand.halfWidthMm()));
    public static final Measure<Geometry> TURN_PER_HAND_TRAVEL = hand(
            quantity(
                            "turnPerHandTravelPerM2",
                            "Turn per hand travel",
                            PER_SQUARE_METRE,
                            "sin α / (wheelbase · hand lever): curvature of the rear track per hand travel, upright,"
                                    + " small angles; compared between bikes in per cent, never a score.")
                    .decimals(3),
            (geometry, hand) -> geometry.side().sinHead() / (geometry.side().wheelbaseMm() * hand.leverMm()) * 1e6);
    public static final Measure<Geometry> SPACERS_LEFT = measure(
            mm("spacersLeftMm", "Spacers left", "Spacer limit minus spacers; negative beyond the limit.")
                    .caution(Cautions.MAKERS_LIMITS)
                    .limit(0, "the fork maker's limit", "fork.spacerLimitMm")
                    .source(LIMIT, DERIVED, "by definition, from the maker\'s number"),
            List.of(Inputs.SPACERS, Inputs.SPACER_LIMIT),
            geometry ->
                    geometry.bike().get(Inputs.SPACER_LIMIT) - geometry.bike().get(Inputs.SPACERS));
    public static final Measure<Geometry> STEERER_LEFT = measure(
            mm(
                            "steererLeftMm",
                            "Steerer left",
                            "Steerer minus head tube, lower stack, cover, spacers and clamp height; negative where it"
                                    + " is too short.")
                    .caution(Cautions.MAKERS_LIMITS)
                    .limit(0, "the steerer's end", "fork.steererLengthMm")
                    .source(LIMIT, DERIVED, "by definition, from the maker\'s number"),
            List.of(Inputs.STEERER_LENGTH, Inputs.HEAD_TUBE, Inputs.LOWER_STACK, Inputs.SPACERS),
            Measures::steererLeft);

    // Saddle and post

    public static final Measure<Geometry> POST_EXTENSION = post(
            mm("postExtensionMm", "Post extension", "Seat tube's upper edge to the clamp's foot, along the axis.")
                    .caution(Cautions.SEAT_POST)
                    .limit(0, "the clamp meets the tube", "frame.seatTubeMm")
                    .source(LIMIT, DERIVED, "by definition, from the maker\'s number"),
            (geometry, saddle) -> saddle.extensionMm());
    public static final Measure<Geometry> RAIL_SHIFT = rails(
            mm("railShiftMm", "Rail shift", "Saddle moved on its rails to reach the sit point, positive forward."),
            (geometry, saddle) -> saddle.railShiftMm());
    public static final Measure<Geometry> POST_INSERTION_LEFT = post(
            mm(
                            "postInsertionLeftMm",
                            "Post insertion left",
                            "Post length minus extension minus minimum insertion: the post's mark or what the frame's"
                                    + " maker asks, whichever is more.")
                    .caution(Cautions.SEAT_POST)
                    .limit(
                            0,
                            "the post's mark or the frame maker's minimum",
                            "seatpost.minimumInsertionMm or frame.postMinimumInsertionMm, whichever is more; "
                                    + Sources.INSERTION + " asks for a mark")
                    .source(LIMIT, READ, Sources.INSERTION),
            (geometry, saddle) -> geometry.bike().get(Inputs.POST_LENGTH)
                    - saddle.extensionMm()
                    - minimumInsertionMm(geometry.bike()));
    public static final Measure<Geometry> POST_DEPTH_LEFT = measure(
            mm(
                            "postDepthLeftMm",
                            "Post depth left",
                            "What is left before the post's lower end meets the seat tube's depth.")
                    .caution(Cautions.SEAT_POST)
                    .limit(0, "the seat tube's depth", "frame.seatTubeDepthMm")
                    .source(LIMIT, DERIVED, "by definition, from the maker\'s number"),
            List.of(
                    Inputs.CONTACT_SIT_X,
                    Inputs.POST_LENGTH,
                    Inputs.RAIL_TRAVEL,
                    Inputs.SEAT_TUBE,
                    Inputs.SEAT_TUBE_DEPTH),
            Measures::postDepthLeft);
    public static final Measure<Geometry> RAIL_LEFT = rails(
            mm("railLeftMm", "Rail left", "Half the rail travel minus the shift's size; negative beyond the rails.")
                    .caution(Cautions.MAKERS_LIMITS)
                    .limit(0, "the rails' end", "saddle.railTravelMm")
                    .source(LIMIT, DERIVED, "by definition, from the maker\'s number"),
            (geometry, saddle) -> geometry.bike().get(Inputs.RAIL_TRAVEL) / 2 - Math.abs(saddle.railShiftMm()));
    public static final Measure<Geometry> SADDLE_HEIGHT = measure(
            mm("saddleHeightMm", "Saddle height", "BB to the sit point."),
            List.of(Inputs.CONTACT_SIT_X),
            geometry -> Math.hypot(
                    geometry.bike().get(Inputs.CONTACT_SIT_X), geometry.bike().get(Inputs.CONTACT_SIT_Y)));
    public static final Measure<Geometry> SADDLE_TO_PEDAL = measure(
            mm(
                    "saddleToPedalMm",
                    "Saddle to pedal",
                    "Sit point to the pedal axis at its furthest, in line with BB: saddle height + crank. A rider's"
                            + " saddle keeps it whatever the crank."),
            List.of(Inputs.CONTACT_SIT_X, Inputs.CRANK_LENGTH),
            geometry -> Math.hypot(
                            geometry.bike().get(Inputs.CONTACT_SIT_X),
                            geometry.bike().get(Inputs.CONTACT_SIT_Y))
                    + geometry.bike().get(Inputs.CRANK_LENGTH));
    public static final Measure<Geometry> SADDLE_TIP_SETBACK = measure(
            mm("saddleTipSetbackMm", "Saddle tip setback", "Saddle's tip behind BB; negative ahead of it."),
            List.of(Inputs.CONTACT_SIT_X, Inputs.TIP_TO_SIT),
            geometry ->
                    -geometry.bike().get(Inputs.CONTACT_SIT_X) - geometry.bike().get(Inputs.TIP_TO_SIT));
    public static final Measure<Geometry> SADDLE_SETBACK = measure(
            mm("saddleSetbackMm", "Saddle setback", "Sit point behind BB."),
            List.of(Inputs.CONTACT_SIT_X),
            geometry -> -geometry.bike().get(Inputs.CONTACT_SIT_X));
    public static final Measure<Geometry> SADDLE_TO_HAND = new Measure<>(
            mm("saddleToHandReachMm", "Saddle to hand", "Sit point forward to the hand point, horizontal.")
                    .declared(),
            geometry -> geometry.needing(List.of(Inputs.CONTACT_SIT_X), Measures::saddleToHand));
    public static final Measure<Geometry> SADDLE_TO_BAR = measure(
            mm("saddleToBarDropMm", "Saddle to bar drop", "Sit point above the bar clamp's centre."),
            List.of(Inputs.CONTACT_SIT_X, Inputs.STEM_LENGTH),
            geometry -> geometry.bike().get(Inputs.CONTACT_SIT_Y)
                    - geometry.cockpit().orElseThrow().clamp().y());

    private Measures() {}

    private static Quantity.Draft mm(String key, String label, String definition) {
        return quantity(key, label, MILLIMETRE, definition);
    }

    private static Quantity.Draft quantity(String key, String label, Unit unit, String definition) {
        return Quantity.of(key, label, unit, definition).source(FORMULA, DERIVED, "plane geometry");
    }

    private static Measure<Geometry> side(Quantity.Draft quantity, ToDoubleFunction<SideView> formula) {
        return measure(quantity, List.of(), geometry -> formula.applyAsDouble(geometry.side()));
    }

    private static Measure<Geometry> measure(
            Quantity.Draft quantity, List<Input> needed, ToDoubleFunction<Geometry> formula) {
        return new Measure<>(
                quantity.declared(),
                geometry -> geometry.needing(needed, all -> Reading.of(formula.applyAsDouble(all))));
    }

    private static Measure<Geometry> cockpit(Quantity.Draft quantity, ToDoubleFunction<Cockpit> formula) {
        return measure(
                quantity,
                List.of(Inputs.STEM_LENGTH),
                geometry -> formula.applyAsDouble(geometry.cockpit().orElseThrow()));
    }

    private static Measure<Geometry> hand(Quantity.Draft quantity, ToDoubleBiFunction<Geometry, HandPoint> formula) {
        return new Measure<>(
                quantity.declared(), geometry -> fromHand(geometry, hand -> formula.applyAsDouble(geometry, hand)));
    }

    private static Reading fromHand(Geometry geometry, ToDoubleFunction<HandPoint> formula) {
        return geometry.handPoint()
                .map(hand -> Reading.of(formula.applyAsDouble(hand)))
                .orElseGet(() -> Reading.lacking(HandPoint.lacking(geometry)));
    }

    private static Measure<Geometry> post(
            Quantity.Draft quantity, ToDoubleBiFunction<Geometry, SaddlePosition> formula) {
        return saddle(quantity, POST, formula);
    }

    private static Measure<Geometry> rails(
            Quantity.Draft quantity, ToDoubleBiFunction<Geometry, SaddlePosition> formula) {
        return saddle(quantity, RAILS, formula);
    }

    private static Measure<Geometry> saddle(
            Quantity.Draft quantity, List<Input> needed, ToDoubleBiFunction<Geometry, SaddlePosition> formula) {
        return measure(
                quantity,
                needed,
                geometry -> formula.applyAsDouble(
                        geometry, geometry.saddlePosition().orElseThrow()));
    }

    private static Reading standover(Geometry geometry) {
        return geometry.topTube()
                .map(tube -> tube.isStraddledOnTheTube()
                        ? Reading.of(tube.topEdgeMm() + geometry.side().bbHeightMm())
                        : Reading.nowhere("the straddle point lies off the top tube"))
                .orElseGet(() -> Reading.lacking(BikeGroups.words("frame.topTube")));
    }

    private static double rideRad(Geometry geometry, Input angle) {
        return Math.toRadians(geometry.bike().get(angle));
    }

    private static double groundSteerRad(Geometry geometry) {
        return geometry.side()
                .groundSteerRad(rideRad(geometry, Inputs.RIDE_STEER), rideRad(geometry, Inputs.RIDE_LEAN));
    }

    private static Reading turnRadius(Geometry geometry) {
        return geometry.bike().hasGroup("ride")
                ? turnRadius(geometry.side(), groundSteerRad(geometry))
                : Reading.lacking(BikeGroups.words("ride"));
    }

    private static Reading turnRadius(SideView side, double groundSteerRad) {
        if (groundSteerRad == 0) {
            return Reading.nowhere("straight ahead has no turn radius");
        }
        return groundSteerRad < Math.PI / 2
                ? Reading.of(side.turnRadiusMm(groundSteerRad) / 1000)
                : Reading.nowhere("the front wheel stands square to the rear or beyond");
    }

    private static double pedalMarginFlat(Geometry geometry) {
        SideView side = geometry.side();
        return side.frontCentreMm() - side.frontRadiusMm() - geometry.bike().get(Inputs.CRANK_LENGTH);
    }

    private static double steererLeft(Geometry geometry) {
        Bike bike = geometry.bike();
        return bike.get(Inputs.STEERER_LENGTH)
                - bike.get(Inputs.HEAD_TUBE)
                - bike.get(Inputs.LOWER_STACK)
                - bike.get(Inputs.HEADSET_COVER)
                - bike.get(Inputs.SPACERS)
                - bike.get(Inputs.STEM_CLAMP_HEIGHT);
    }

    private static double postDepthLeft(Geometry geometry) {
        Bike bike = geometry.bike();
        double inTube = bike.get(Inputs.POST_LENGTH)
                - geometry.saddlePosition().orElseThrow().extensionMm();
        return bike.get(Inputs.SEAT_TUBE_DEPTH) - inTube;
    }

    /** How deep a post has to stand in the seat tube: by its mark or by the frame's maker, whichever is more. */
    static double minimumInsertionMm(Bike bike) {
        double mark = bike.get(Inputs.POST_MINIMUM_INSERTION);
        return bike.has(Inputs.FRAME_POST_MINIMUM_INSERTION)
                ? Math.max(mark, bike.get(Inputs.FRAME_POST_MINIMUM_INSERTION))
                : mark;
    }

    private static Reading saddleToHand(Geometry geometry) {
        double sitX = geometry.bike().get(Inputs.CONTACT_SIT_X);
        return fromHand(geometry, hand -> hand.at().x() - sitX);
    }
}
