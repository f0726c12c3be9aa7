package rakeline.geometry;

import static rakeline.quantity.SourceNote.Part.FORMULA;
import static rakeline.quantity.SourceNote.Part.LIMIT;
import static rakeline.quantity.SourceStanding.DERIVED;
import static rakeline.quantity.SourceStanding.READ;
import static rakeline.quantity.Unit.DEGREE;
import static rakeline.quantity.Unit.KILOMETRE_PER_HOUR;
import static rakeline.quantity.Unit.MILLIMETRE;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import rakeline.geometry.toe.Place;
import rakeline.geometry.toe.Touch;
import rakeline.quantity.Input;
import rakeline.quantity.Measure;
import rakeline.quantity.Quantity;
import rakeline.quantity.Reading;
import rakeline.quantity.Unit;

/** What follows for the foot beside the turned wheel, and for the pedal above the ground; each declared once. */
public final class ToeMeasures {
    private static final String PASSES = "the line through the pedal meets tyre and guard at no steering angle";
    private static final String TOE_PASSES = "the toe passes beside tyre and guard at every steering angle";
    private static final String NEVER = "toe and tyre never touch";
    private static final String REGULATION = "16 CFR 1512.17(d)";
    private static final double GRAVITY_MPS2 = 9.81;
    private static final List<Input> PEDAL = List.of(Inputs.CRANK_LENGTH);
    private static final List<Input> SHOE = List.of(Inputs.CRANK_LENGTH, Inputs.TOE_FORWARD);

    public static final Measure<Geometry> PEDAL_TO_TYRE = pedal(
            quantity(
                            "pedalToTyreMm",
                            "Pedal to tyre",
                            MILLIMETRE,
                            "From the pedal's centre forward, parallel to x, to tyre or guard: least over steering"
                                    + " angle and crank −90..90°.")
                    .limit(89, "without foot retention", REGULATION)
                    .source(FORMULA, READ, REGULATION)
                    .source(LIMIT, READ, REGULATION),
            Foot::pedalToTyre,
            Place::valueMm);
    public static final Measure<Geometry> PEDAL_TO_TYRE_STEER = pedal(
            quantity(
                    "pedalToTyreSteerDeg",
                    "Steering angle of least pedal to tyre",
                    DEGREE,
                    "Steering angle at which it is least."),
            Foot::pedalToTyre,
            Place::steerDeg);
    public static final Measure<Geometry> PEDAL_TO_TYRE_CRANK = pedal(
            quantity(
                    "pedalToTyreCrankDeg",
                    "Crank angle of least pedal to tyre",
                    DEGREE,
                    "Crank angle at which it is least."),
            Foot::pedalToTyre,
            Place::crankDeg);
    public static final Measure<Geometry> PEDAL_TO_TYRE_LEVEL = pedal(
            quantity(
                            "pedalToTyreLevelMm",
                            "Pedal to tyre, crank level",
                            MILLIMETRE,
                            "The same with the crank pointing straight forward.")
                    .limit(89, "without foot retention", REGULATION)
                    .source(FORMULA, READ, REGULATION)
                    .source(LIMIT, READ, REGULATION),
            Foot::pedalToTyreLevel,
            Place::valueMm);
    public static final Measure<Geometry> TOE_ROOM = toe(
            quantity(
                            "toeRoomMm",
                            "Toe room",
                            MILLIMETRE,
                            "How far the shoe could be moved straight forward before it first touches tyre or guard,"
                                    + " least over steering angle and crank; negative: how far back it would have to"
                                    + " go to clear. The front-centre to spare.")
                    .limit(0, "the toe touches the tyre", "by definition")
                    .source(LIMIT, DERIVED, "by definition"),
            Foot::toeRoom,
            Place::valueMm);
    public static final Measure<Geometry> TOE_ROOM_STEER = toe(
            quantity(
                    "toeRoomSteerDeg",
                    "Steering angle of least toe room",
                    DEGREE,
                    "Steering angle at which toe room is least."),
            Foot::toeRoom,
            Place::steerDeg);
    public static final Measure<Geometry> TOE_ROOM_CRANK = toe(
            quantity(
                    "toeRoomCrankDeg",
                    "Crank angle of least toe room",
                    DEGREE,
                    "Crank angle at which toe room is least."),
            Foot::toeRoom,
            Place::crankDeg);
    public static final Measure<Geometry> TOE_GAP_LEAST = toe(
            quantity(
                    "toeGapLeastMm",
                    "Toe gap, least",
                    MILLIMETRE,
                    "True distance from the toe to tyre or guard, least over steering angle and the whole crank turn;"
                            + " 0 where they overlap."),
            Foot::toeGapLeast,
            Place::valueMm);
    public static final Measure<Geometry> TOE_GAP_STRAIGHT = new Measure<>(
            quantity(
                            "toeGapStraightMm",
                            "Toe gap, straight",
                            MILLIMETRE,
                            "True distance from the toe to tyre or guard steering straight, least over the whole crank"
                                    + " turn.")
                    .declared(),
            geometry -> geometry.needing(SHOE, all -> Reading.of(all.foot().toeGapStraightMm())));
    public static final Measure<Geometry> TOE_CONTACT_STEER = contact(
            SHOE,
            quantity(
                    "toeContactSteerDeg",
                    "Steering angle of first toe contact",
                    DEGREE,
                    "The smallest steering angle at which toe and tyre or guard touch."),
            (geometry, touch) -> Reading.of(touch.steerDeg()));
    public static final Measure<Geometry> TOE_CONTACT_CRANK = contact(
            SHOE,
            quantity("toeContactCrankDeg", "Crank angle of first toe contact", DEGREE, "Crank angle at that contact."),
            (geometry, touch) -> Reading.of(touch.crankDeg()));
    public static final Measure<Geometry> TOE_CONTACT_SPEED = contact(
            List.of(Inputs.CRANK_LENGTH, Inputs.TOE_FORWARD, Inputs.RIDE_LEAN),
            quantity(
                    "toeContactSpeedKmh",
                    "Speed of first toe contact",
                    KILOMETRE_PER_HOUR,
                    "Speed of a steady turn with the contact's steering angle at ride.leanDeg, kinematic, rider in"
                            + " the bicycle's plane."),
            ToeMeasures::contactSpeed);
    public static final Measure<Geometry> PEDAL_STRIKE_LEAN = new Measure<>(
            Quantity.of(
                            "pedalStrikeLeanDeg",
                            "Pedal strike lean",
                            DEGREE,
                            "Lean at which the lowest pedal's outer lower edge meets the ground.")
                    .caution(Cautions.PEDAL_STRIKE)
                    .limit(25, "crank lowest, pedal level", "16 CFR 1512.17(c)")
                    .source(FORMULA, READ, "16 CFR 1512.17(c)")
                    .source(LIMIT, READ, "16 CFR 1512.17(c)")
                    .declared(),
            geometry -> geometry.needing(PEDAL, ToeMeasures::pedalStrike));

    private ToeMeasures() {}

    private static Quantity.Draft quantity(String key, String label, Unit unit, String definition) {
        return Quantity.of(key, label, unit, definition)
                .caution(Cautions.TOE)
                .source(FORMULA, DERIVED, "a search through every steering and crank angle");
    }

    private static Measure<Geometry> pedal(
            Quantity.Draft quantity, Function<Foot, Optional<Place>> least, ToDoubleFunction<Place> read) {
        return new Measure<>(
                quantity.declared(),
                geometry -> geometry.needing(PEDAL, all -> read(least.apply(all.foot()), read, PASSES)));
    }

    private static Measure<Geometry> toe(
            Quantity.Draft quantity, Function<Foot, Optional<Place>> least, ToDoubleFunction<Place> read) {
        return new Measure<>(
                quantity.declared(),
                geometry -> geometry.needing(SHOE, all -> read(least.apply(all.foot()), read, TOE_PASSES)));
    }

    private static Measure<Geometry> contact(
            List<Input> needed, Quantity.Draft quantity, BiFunction<Geometry, Touch, Reading> read) {
        return new Measure<>(
                quantity.declared(),
                geometry -> geometry.needing(
                        needed,
                        all -> all.foot()
                                .toeContact()
                                .map(touch -> read.apply(all, touch))
                                .orElseGet(() -> Reading.nowhere(NEVER))));
    }

    private static Reading read(Optional<Place> place, ToDoubleFunction<Place> read, String otherwise) {
        return place.map(found -> Reading.of(read.applyAsDouble(found))).orElseGet(() -> Reading.nowhere(otherwise));
    }

    /** v² = g tan(lean) R with the kinematic radius R. */
    private static Reading contactSpeed(Geometry geometry, Touch touch) {
        double leanRad = Math.toRadians(geometry.bike().get(Inputs.RIDE_LEAN));
        double groundRad = geometry.side().groundSteerRad(Math.toRadians(touch.steerDeg()), leanRad);
        if (leanRad == 0 || groundRad == 0 || groundRad >= Math.PI / 2) {
            return Reading.nowhere("a steady turn needs lean, and steer short of square");
        }
        double radiusM = geometry.side().turnRadiusMm(groundRad) / 1000;
        return Reading.of(3.6 * Math.sqrt(GRAVITY_MPS2 * Math.tan(leanRad) * radiusM));
    }

    private static Reading pedalStrike(Geometry geometry) {
        OptionalDouble lean = geometry.foot().pedalStrike().leanDeg();
        return lean.isPresent() ? Reading.of(lean.getAsDouble()) : Reading.nowhere("the pedal stays clear at any lean");
    }
}
