package rakeline.handling;

import static rakeline.quantity.SourceNote.Part.FORMULA;
import static rakeline.quantity.SourceStanding.DERIVED;
import static rakeline.quantity.SourceStanding.READ;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.function.ToDoubleFunction;
import rakeline.geometry.BikeGroups;
import rakeline.geometry.HandPoint;
import rakeline.geometry.Inputs;
import rakeline.quantity.Caution;
import rakeline.quantity.Input;
import rakeline.quantity.Measure;
import rakeline.quantity.Quantity;
import rakeline.quantity.Reading;
import rakeline.quantity.Unit;

/** What follows from the linear bicycle and from steady turns; each declared once. */
public final class HandlingMeasures {
    private static final Caution RESTS = new Caution(
            "model and masses",
            "A linear model of rigid parts: masses that the bike file does not give are defaults, and no published"
                    + " measure predicts how a rider feels about a bicycle.");

    /** What belongs next to every speed at which a bicycle without a rider's hands is stable or not. */
    public static final Caution HANDS_OFF = new Caution(
            "hands off",
            "Riding hands off can throw a rider at any speed: the model knows no bump, no gust and no rider who moves, and"
                    + " none of its speeds says when to let go of the bar.");

    private static final String MODEL = "Meijaard, Papadopoulos, Ruina and Schwab 2007";
    private static final String DEFAULTS = " Masses that the bike file does not give are defaults.";
    private static final String NO_SPEED = "a steady turn needs a speed and a lean above 0";
    private static final List<Input> TURN = List.of(Inputs.RIDE_SPEED, Inputs.RIDE_LEAN);

    // Hands off

    public static final Measure<Ride> WEAVE_SPEED = stability(
            "weaveSpeedMps",
            "Weave speed",
            "Highest speed at which a growing oscillation turns into one that dies out, hands off.",
            stability -> of(stability.weaveSpeedMps(), "no oscillation calms at any speed"));
    public static final Measure<Ride> CAPSIZE_SPEED = stability(
            "capsizeSpeedMps",
            "Capsize speed",
            "Speed at which a slow fall to one side begins to grow, hands off; also the zero of the leaning steer"
                    + " stiffness.",
            stability -> of(stability.capsizeSpeedMps(), "the constant term vanishes at no speed"));
    public static final Measure<Ride> SELF_STABLE_FROM = stability(
            "selfStableFromMps",
            "Self-stable from",
            "Lower end of the speeds at which every motion dies out, hands off.",
            stability -> stability
                    .selfStable()
                    .map(range -> Reading.of(range.fromMps()))
                    .orElseGet(() -> Reading.nowhere("self-stable at no speed")));
    public static final Measure<Ride> SELF_STABLE_TO = stability(
            "selfStableToMps",
            "Self-stable to",
            "Upper end of the speeds at which every motion dies out, hands off.",
            stability -> stability
                    .selfStable()
                    .map(range -> Double.isFinite(range.toMps())
                            ? Reading.of(range.toMps())
                            : Reading.nowhere("self-stable at every higher speed"))
                    .orElseGet(() -> Reading.nowhere("self-stable at no speed")));

    // Straight running

    public static final Measure<Ride> STEER_STIFFNESS_UPRIGHT = new Measure<>(
            stiffness(
                    "steerStiffnessUprightNmPerRad",
                    "Steer stiffness, upright",
                    "Torque that holds the bar off straight per angle, lean held at 0, at ride.speedKmh; below 0 the bar"
                            + " turns further by itself."),
            ride -> straight(ride, SteerStiffness::uprightNmPerRad));
    public static final Measure<Ride> STEER_STIFFNESS_UPRIGHT_ZERO = stability(
            "steerStiffnessUprightZeroMps",
            "Upright stiffness zero",
            "Speed at which the upright steer stiffness changes sign.",
            stability -> of(new SteerStiffness(stability.bicycle()).uprightZeroMps(), "it changes sign at no speed"));
    public static final Measure<Ride> STEER_STIFFNESS_LEANING = new Measure<>(
            stiffness(
                    "steerStiffnessLeaningNmPerRad",
                    "Steer stiffness, leaning",
                    "Torque that holds the bar off straight per angle, lean left to balance, at ride.speedKmh; its zero"
                            + " is the capsize speed."),
            ride -> straight(ride, SteerStiffness::leaningNmPerRad));
    public static final Measure<Ride> STEER_STIFFNESS_LEANING_ZERO = stability(
            "steerStiffnessLeaningZeroMps",
            "Leaning stiffness zero",
            "Speed at which the leaning steer stiffness changes sign: the capsize speed.",
            stability -> of(stability.capsizeSpeedMps(), "it changes sign at no speed"));

    // Steady turn at ride.speedKmh and ride.leanDeg

    public static final Measure<Ride> STEADY_STEER = turn(
            Quantity.of(
                            "steadySteerDeg",
                            "Steady turn, steering angle",
                            Unit.DEGREE,
                            "Steering angle of a steady turn at ride.speedKmh and ride.leanDeg, kinematic.")
                    .source(FORMULA, DERIVED, "kinematics of a turn without slip")
                    .decimals(2),
            SteadyTurn::steerDeg);
    public static final Measure<Ride> STEADY_GROUND_STEER = turn(
            Quantity.of(
                            "steadyGroundSteerDeg",
                            "Steady turn, ground steer",
                            Unit.DEGREE,
                            "Angle between the tracks of front and rear wheel in that turn.")
                    .source(FORMULA, DERIVED, "kinematics of a turn without slip")
                    .decimals(2),
            SteadyTurn::groundSteerDeg);
    public static final Measure<Ride> STEADY_RADIUS = turn(
            Quantity.of(
                            "steadyRadiusM",
                            "Steady turn, radius",
                            Unit.METRE,
                            "Radius of the rear contact's track in that turn: v² / (g tan lean).")
                    .source(FORMULA, DERIVED, "kinematics of a turn without slip")
                    .decimals(2),
            SteadyTurn::radiusM);
    public static final Measure<Ride> STEADY_BAR_TORQUE = ofRider(turn(
            Quantity.of(
                            "steadyBarTorqueNm",
                            "Steady turn, bar torque",
                            Unit.NEWTON_METRE,
                            "Torque on the bar in that turn, above 0 into the turn; linear, and so for steer up to"
                                    + " about 10°; it needs a rider." + DEFAULTS)
                    .decimals(2)
                    .caution(RESTS)
                    .source(FORMULA, READ, MODEL),
            SteadyTurn::barTorqueNm));
    public static final Measure<Ride> STEADY_HAND_FORCE = hand(
            "steadyHandForceN",
            "Steady turn, force per hand",
            "Bar torque / (2 hand lever) in that turn: each hand, square to its lever; linear; it needs a rider."
                    + DEFAULTS,
            SteadyTurn::forcePerHandN);
    public static final Measure<Ride> STEADY_ONE_HAND_FORCE = hand(
            "steadyOneHandForceN",
            "Steady turn, force of one hand",
            "Bar torque / hand lever in that turn: one hand alone; linear; it needs a rider." + DEFAULTS,
            SteadyTurn::forceOneHandN);

    private HandlingMeasures() {}

    private static Measure<Ride> stability(
            String key, String label, String definition, Function<Stability, Reading> read) {
        return new Measure<>(
                Quantity.of(key, label, Unit.METRE_PER_SECOND, definition + DEFAULTS)
                        .decimals(2)
                        .caution(RESTS)
                        .caution(HANDS_OFF)
                        .source(FORMULA, READ, MODEL)
                        .declared(),
                ride -> weighed(ride, () -> read.apply(ride.stability())));
    }

    private static Quantity stiffness(String key, String label, String definition) {
        return Quantity.of(key, label, Unit.NEWTON_METRE_PER_RADIAN, definition + DEFAULTS)
                .decimals(2)
                .caution(RESTS)
                .source(FORMULA, READ, MODEL)
                .declared();
    }

    private static Reading straight(Ride ride, StiffnessAt read) {
        if (!ride.bike().has(Inputs.RIDE_SPEED)) {
            return Reading.lacking(BikeGroups.words("ride"));
        }
        double speedMps = ride.bike().get(Inputs.RIDE_SPEED) / 3.6;
        return weighed(
                ride,
                () -> Reading.of(read.at(new SteerStiffness(ride.stability().bicycle()), speedMps)));
    }

    private static Measure<Ride> turn(Quantity.Draft quantity, ToDoubleFunction<SteadyTurn> read) {
        return new Measure<>(quantity.declared(), ride -> turning(ride, turn -> Reading.of(read.applyAsDouble(turn))));
    }

    private static Measure<Ride> hand(String key, String label, String definition, ForceAt read) {
        return ofRider(new Measure<>(
                Quantity.of(key, label, Unit.NEWTON, definition)
                        .decimals(2)
                        .caution(RESTS)
                        .source(FORMULA, READ, MODEL)
                        .declared(),
                ride -> ride.geometry()
                        .handPoint()
                        .map(HandPoint::leverMm)
                        .map(lever -> turning(ride, turn -> Reading.of(read.at(turn, lever))))
                        .orElseGet(() -> Reading.lacking(HandPoint.lacking(ride.geometry())))));
    }

    /** What hangs on a rider's mass says nothing of a bicycle alone. */
    private static Measure<Ride> ofRider(Measure<Ride> measure) {
        return new Measure<>(
                measure.quantity(), ride -> ride.isRidden() ? measure.read(ride) : Reading.lacking("a rider"));
    }

    private static Reading turning(Ride ride, Function<SteadyTurn, Reading> read) {
        if (TURN.stream().anyMatch(input -> !ride.bike().has(input))) {
            return Reading.lacking(BikeGroups.words("ride"));
        }
        double speedKmh = ride.bike().get(Inputs.RIDE_SPEED);
        double leanDeg = ride.bike().get(Inputs.RIDE_LEAN);
        return speedKmh > 0 && leanDeg > 0
                ? weighed(ride, () -> read.apply(SteadyTurn.leaning(ride, speedKmh, leanDeg)))
                : Reading.nowhere(NO_SPEED);
    }

    private static Reading weighed(Ride ride, Supplier<Reading> reading) {
        return ride.massKg() instanceof Reading.Known ? reading.get() : ride.massKg();
    }

    private static Reading of(OptionalDouble value, String otherwise) {
        return value.isPresent() ? Reading.of(value.getAsDouble()) : Reading.nowhere(otherwise);
    }

    /** A stiffness at a speed, m/s. */
    private interface StiffnessAt {
        double at(SteerStiffness stiffness, double speedMps);
    }

    /** A force at a lever, mm. */
    private interface ForceAt {
        double at(SteadyTurn turn, double leverMm);
    }
}
