package rakeline.geometry;

import static rakeline.quantity.Input.byDefault;
import static rakeline.quantity.Input.derived;
import static rakeline.quantity.Input.optional;
import static rakeline.quantity.Input.required;
import static rakeline.quantity.SourceNote.Part.DEFAULT;
import static rakeline.quantity.SourceNote.Part.DEFINITION;
import static rakeline.quantity.SourceNote.Part.LIMIT;
import static rakeline.quantity.SourceNote.Part.UNCERTAINTY;
import static rakeline.quantity.SourceStanding.COPY;
import static rakeline.quantity.SourceStanding.DERIVED;
import static rakeline.quantity.SourceStanding.MEMORY;
import static rakeline.quantity.SourceStanding.PRACTICE;
import static rakeline.quantity.SourceStanding.READ;
import static rakeline.quantity.Unit.DEGREE;
import static rakeline.quantity.Unit.KILOMETRE_PER_HOUR;
import static rakeline.quantity.Unit.MILLIMETRE;

import java.util.List;
import java.util.stream.Stream;
import rakeline.quantity.Declared;
import rakeline.quantity.Input;
import rakeline.quantity.Quantity;
import rakeline.quantity.Unit;

/** The numbers that a bike file may give; each is declared here and nowhere else. */
public final class Inputs {

    private static final String FROM_LEVERS = "the bar's reach and cockpit.bar.lever";

    // Frame

    public static final Input STACK = input(
            mm("frame.stackMm", "Stack", "BB up to the centre of the head tube's top edge.")
                    .symbol("S")
                    .within(200, 800)
                    .uncertainty(2)
                    .source(UNCERTAINTY, PRACTICE, ""),
            required());
    public static final Input REACH = input(
            mm("frame.reachMm", "Reach", "BB forward to the centre of the head tube's top edge.")
                    .symbol("C")
                    .within(120, 650)
                    .uncertainty(2)
                    .source(UNCERTAINTY, PRACTICE, ""),
            required());
    public static final Input HEAD_ANGLE = input(
            deg("frame.headAngleDeg", "Head angle", "Steering axis to the ground.")
                    .symbol("α")
                    .within(50, 85)
                    .uncertainty(0.2)
                    .rule(65, 75, "recommended", Sources.ISO_4210)
                    .source(UNCERTAINTY, READ, "digital level, Moore 2012, chapter Physical Parameters")
                    .source(LIMIT, COPY, "ISO 4210-2:2015 Annex A"),
            required());
    public static final Input SEAT_ANGLE = input(
            deg(
                            "frame.seatAngleDeg",
                            "Seat angle",
                            "Effective seat angle: the line from BB to the point of the seat axis at the height"
                                    + " seatAngleAtMm.")
                    .within(50, 90)
                    .uncertainty(0.3)
                    .source(UNCERTAINTY, PRACTICE, ""),
            required());
    public static final Input SEAT_ANGLE_AT = input(
            mm(
                            "frame.seatAngleAtMm",
                            "Seat angle taken at",
                            "Height above BB at which the effective seat angle is taken.")
                    .within(100, 900)
                    .source(DEFAULT, PRACTICE, "the height of the stack"),
            derived("frame.stackMm", given -> given.get(STACK)));
    public static final Input SEAT_TUBE_ANGLE = input(
            deg("frame.seatTubeAngleDeg", "Seat tube angle", "The seat tube's own angle to the ground.")
                    .within(40, 95)
                    .source(DEFAULT, PRACTICE, "a tube that points at BB"),
            derived("frame.seatAngleDeg", given -> given.get(SEAT_ANGLE)));
    public static final Input CHAINSTAY = input(
            mm("frame.chainstayMm", "Chainstay", "BB to the rear axle, true length.")
                    .symbol("CS")
                    .within(200, 1000)
                    .uncertainty(1.5)
                    .source(UNCERTAINTY, PRACTICE, ""),
            required());
    public static final Input BB_DROP = input(
            mm("frame.bbDropMm", "BB drop", "The rear axle's height above BB; negative where BB is above the axle.")
                    .symbol("d")
                    .within(-150, 150)
                    .uncertainty(2)
                    .source(UNCERTAINTY, PRACTICE, ""),
            required());
    public static final Input HEAD_TUBE = input(
            mm("frame.headTubeMm", "Head tube", "Head tube, edge to edge along the axis.")
                    .within(40, 350),
            optional());
    public static final Input SEAT_TUBE = input(
            mm(
                            "frame.seatTubeMm",
                            "Seat tube",
                            "Along the seat axis, from the foot of the perpendicular from BB to the tube's upper edge.")
                    .within(100, 700),
            optional());
    public static final Input SEAT_TUBE_DEPTH = input(
            mm("frame.seatTubeDepthMm", "Seat tube depth", "How deep a post can go below the tube's upper edge.")
                    .within(50, 600),
            optional());
    public static final Input FRAME_POST_MINIMUM_INSERTION = input(
            mm(
                            "frame.postMinimumInsertionMm",
                            "Minimum insertion, frame",
                            "How deep the frame's maker asks a post to stand in the tube; this or the post's own mark"
                                    + " counts, whichever is more.")
                    .within(0, 300)
                    .caution(Cautions.SEAT_POST)
                    .source(DEFINITION, PRACTICE, "makers' manuals"),
            optional());
    public static final Input STRADDLE_X = input(
            mm(
                            "frame.straddleXMm",
                            "Straddle point",
                            "Where the rider straddles the top tube, ahead of BB; midway between the junctions where"
                                    + " not given.")
                    .within(-500, 650),
            optional());
    public static final Input TOP_TUBE_HEAD_JUNCTION = input(
            mm(
                            "frame.topTube.headJunctionMm",
                            "Top tube at the head tube",
                            "Head tube's top edge down the axis to the top tube's centreline.")
                    .within(0, 300),
            required());
    public static final Input TOP_TUBE_SEAT_JUNCTION = input(
            mm(
                            "frame.topTube.seatJunctionMm",
                            "Top tube at the seat tube",
                            "Up the seat axis, from the foot of the perpendicular from BB, to the top tube's"
                                    + " centreline.")
                    .within(50, 700),
            required());
    public static final Input TOP_TUBE_DIAMETER = input(
            mm("frame.topTube.diameterMm", "Top tube diameter", "Outer diameter of the top tube.")
                    .within(15, 90),
            required());

    // Fork

    public static final Input FORK_OFFSET = input(
            mm(
                            "fork.offsetMm",
                            "Fork offset",
                            "Steering axis to the front axle, perpendicular; negative for a reversed fork.")
                    .symbol("f")
                    .within(-100, 120)
                    .uncertainty(1)
                    .source(UNCERTAINTY, PRACTICE, "")
                    .caution(Cautions.FORK),
            required());
    public static final Input AXLE_TO_CROWN = input(
            mm("fork.axleToCrownMm", "Axle to crown", "Straight line from the axle to the crown race seat.")
                    .within(150, 700)
                    .caution(Cautions.FORK),
            optional());
    public static final Input LOWER_STACK = input(
            mm(
                            "fork.lowerStackMm",
                            "Lower headset stack",
                            "Crown race seat to the head tube's lower edge, along the axis.")
                    .within(0, 60),
            optional());
    public static final Input FORK_SAG = input(
            mm("fork.sagMm", "Fork sag", "Shortening of the fork along the steering axis.")
                    .within(0, 150)
                    .source(DEFAULT, PRACTICE, "a rigid fork, or a chart that is drawn sagged"),
            byDefault(0));
    public static final Input STEERER_LENGTH = input(
            mm("fork.steererLengthMm", "Steerer length", "Crown race seat to the steerer's upper end.")
                    .within(80, 450)
                    .caution(Cautions.MAKERS_LIMITS),
            optional());
    public static final Input SPACER_LIMIT = input(
            mm("fork.spacerLimitMm", "Spacer limit", "Spacers that the fork's maker allows below the stem.")
                    .within(0, 150)
                    .caution(Cautions.MAKERS_LIMITS),
            optional());
    public static final Input STEERING_LIMIT = input(
            deg("fork.steeringLimitDeg", "Steering limit", "How far the bar can turn to either side.")
                    .within(20, 90)
                    .source(DEFAULT, PRACTICE, "no stop before the bar stands square"),
            byDefault(90));

    // Wheels

    public static final Input FRONT_BEAD_SEAT = input(beadSeat("wheels.front.", "Front bead seat"), required());
    public static final Input FRONT_TYRE = input(tyre("wheels.front.", "Front tyre"), required());
    public static final Input FRONT_RADIUS = input(
            radius("wheels.front.", "Front wheel radius"),
            derived(
                    "half of wheels.front.beadSeatMm + wheels.front.tyreMm",
                    given -> given.get(FRONT_BEAD_SEAT) / 2 + given.get(FRONT_TYRE)));
    public static final Input MUDGUARD_GAP = input(
            mm("wheels.front.mudguardGapMm", "Mudguard gap", "Tread to the outside of the front mudguard.")
                    .within(0, 60)
                    .caution(Cautions.MUDGUARD),
            optional());
    public static final Input REAR_BEAD_SEAT = input(beadSeat("wheels.rear.", "Rear bead seat"), required());
    public static final Input REAR_TYRE = input(tyre("wheels.rear.", "Rear tyre"), required());
    public static final Input REAR_RADIUS = input(
            radius("wheels.rear.", "Rear wheel radius"),
            derived(
                    "half of wheels.rear.beadSeatMm + wheels.rear.tyreMm",
                    given -> given.get(REAR_BEAD_SEAT) / 2 + given.get(REAR_TYRE)));

    // Crank and pedal

    public static final Input CRANK_LENGTH =
            input(mm("crank.lengthMm", "Crank length", "BB to the pedal axis.").within(60, 220), required());
    public static final Input STANCE_WIDTH = input(
            mm("crank.stanceWidthMm", "Stance width", "Pedal centre to pedal centre, across.")
                    .within(100, 450)
                    .uncertainty(6)
                    .source(UNCERTAINTY, PRACTICE, ""),
            required());
    public static final Input PEDAL_HALF_THICKNESS = input(
            mm("crank.pedalHalfThicknessMm", "Pedal half thickness", "Pedal axis down to the pedal body's underside.")
                    .within(2, 40)
                    .source(DEFAULT, MEMORY, "an ordinary pedal"),
            byDefault(10));
    public static final Input PEDAL_HALF_WIDTH = input(
            mm("crank.pedalHalfWidthMm", "Pedal half width", "Pedal centre out to the pedal body's outer end.")
                    .within(10, 90)
                    .source(DEFAULT, MEMORY, "an ordinary pedal"),
            byDefault(45));
    public static final Input PEDAL_STACK = input(
            mm(
                            "crank.pedalStackMm",
                            "Pedal stack",
                            "Pedal axis up to the shoe's sole; where two bicycles differ in it, so does the saddle's"
                                    + " distance from the pedal.")
                    .within(-10, 50)
                    .source(DEFINITION, PRACTICE, "8 to 20 mm"),
            optional());

    // Shoe

    public static final Input TOE_FORWARD = input(
            mm(
                            "shoe.toeForwardMm",
                            "Toe ahead of the pedal",
                            "Pedal axis to the foremost point of the shoe, along the foot, before turning and"
                                    + " pitching.")
                    .within(40, 200)
                    .uncertainty(3)
                    .source(UNCERTAINTY, PRACTICE, "")
                    .source(DEFAULT, PRACTICE, "shoes reach 90 to 125 mm ahead of the pedal"),
            byDefault(105));
    public static final Input TOE_HEIGHT = input(
            mm("shoe.toeHeightMm", "Toe height", "Pedal axis up to the middle of the toe box.")
                    .within(-20, 80)
                    .source(DEFAULT, MEMORY, "an ordinary shoe"),
            byDefault(30));
    public static final Input TOE_RADIUS = input(
            mm(
                            "shoe.toeRadiusMm",
                            "Toe radius",
                            "Radius of the capsule that stands for the toe, lying across the foot.")
                    .within(5, 60)
                    .source(DEFAULT, MEMORY, "an ordinary shoe"),
            byDefault(25));
    public static final Input TOE_HALF_WIDTH = input(
            mm("shoe.toeHalfWidthMm", "Toe half width", "Half the distance between the toe capsule's end centres.")
                    .within(0, 60)
                    .source(DEFAULT, MEMORY, "an ordinary shoe"),
            byDefault(20));
    public static final Input TOE_OUT = input(
            deg("shoe.toeOutDeg", "Toe out", "Foot turned outward about the pedal's vertical axis.")
                    .within(-30, 30)
                    .source(DEFAULT, PRACTICE, "a foot that points straight ahead"),
            byDefault(0));
    public static final Input SHOE_PITCH = input(
            deg("shoe.pitchDeg", "Toes down", "Foot pitched toes down about the pedal axis.")
                    .within(-60, 60)
                    .source(DEFAULT, PRACTICE, "a level shoe"),
            byDefault(0));
    public static final Input SOLE = input(
            mm(
                            "shoe.soleMm",
                            "Sole",
                            "Sole and insole under the ball of the foot; where two shoes differ in it, so does the"
                                    + " saddle's distance from the pedal.")
                    .within(0, 50)
                    .source(DEFINITION, PRACTICE, "5 to 12 mm, insole included"),
            optional());

    // Cockpit

    public static final Input HEADSET_COVER = input(
            mm("cockpit.headsetCoverMm", "Headset cover", "Height of the headset's upper cover, up the axis.")
                    .within(0, 60),
            required());
    public static final Input SPACERS = input(
            mm("cockpit.spacersMm", "Spacers", "Spacers below the stem, up the axis.")
                    .within(0, 150)
                    .caution(Cautions.MAKERS_LIMITS),
            required());
    public static final Input STEM_CLAMP_HEIGHT = input(
            mm(
                            "cockpit.stemClampHeightMm",
                            "Stem clamp height",
                            "Height of the stem's clamp on the steerer; the stem leaves it at half height.")
                    .within(20, 80)
                    .source(DEFAULT, PRACTICE, "clamps are 35 to 45 mm high"),
            byDefault(40));
    public static final Input STEM_LENGTH = input(
            mm("cockpit.stemLengthMm", "Stem length", "Steering axis to the bar clamp's centre, along the stem.")
                    .within(0, 200)
                    .caution(Cautions.STEM_AND_BAR),
            required());
    public static final Input STEM_ANGLE = input(
            deg(
                            "cockpit.stemAngleDeg",
                            "Stem angle",
                            "Stem from the perpendicular to the steering axis: +6 rises, −17 on a 73° axis is level.")
                    .within(-60, 60)
                    .caution(Cautions.STEM_AND_BAR),
            required());
    public static final Input BAR_WIDTH = input(
            mm("cockpit.bar.widthMm", "Bar width", "Grip centre to grip centre.")
                    .within(200, 1000)
                    .caution(Cautions.STEM_AND_BAR),
            required());
    public static final Input HOOD_FORWARD = input(
            mm(
                            "cockpit.bar.hoodForwardMm",
                            "Hood forward",
                            "Bar clamp's centre forward to the hood's working point; follows from a bar's reach and"
                                    + " levers where it has them.")
                    .source(DEFAULT, DERIVED, "the lever on the end of the bar's reach")
                    .within(-350, 300),
            derived(FROM_LEVERS, given -> Handlebar.hoods(given).x()));
    public static final Input HOOD_RISE = input(
            mm(
                            "cockpit.bar.hoodRiseMm",
                            "Hood rise",
                            "Bar clamp's centre up to the hood's working point; follows from a bar's levers where it"
                                    + " has them.")
                    .source(DEFAULT, DERIVED, "the lever on the end of the bar's reach")
                    .within(-250, 300),
            derived(FROM_LEVERS, given -> Handlebar.hoods(given).y()));
    public static final Input BAR_REACH = input(
            mm("cockpit.bar.reachMm", "Bar reach", "Bar clamp's centre forward to the bend.")
                    .within(0, 150)
                    .caution(Cautions.STEM_AND_BAR),
            optional());
    public static final Input BAR_DROP = input(
            mm("cockpit.bar.dropMm", "Bar drop", "Bar clamp's centre down to the drops.")
                    .within(0, 250)
                    .caution(Cautions.STEM_AND_BAR),
            optional());
    public static final Input TOPS_HALF_WIDTH = input(
            mm("cockpit.bar.topsHalfWidthMm", "Tops half width", "Half the distance of the hands on the tops.")
                    .within(30, 400)
                    .source(DEFAULT, MEMORY, "hands beside the stem"),
            byDefault(100));
    public static final Input BAR_FLARE = input(
            deg("cockpit.bar.flareDeg", "Bar flare", "Drops turned outward, so that they are wider than the hoods.")
                    .within(0, 45)
                    .source(DEFAULT, PRACTICE, "0° on the road, 8 to 25° off it"),
            byDefault(0));
    public static final Input BAR_ROTATION = input(
            deg(
                            "cockpit.bar.rotationDeg",
                            "Bar rotation",
                            "Bar and levers turned in the stem's clamp, hoods up; a hood point that is given turns with"
                                    + " a change.")
                    .source(DEFAULT, PRACTICE, "0°: as the bar's maker draws it")
                    .within(-90, 90),
            byDefault(0));
    public static final Input LEVER_AHEAD = input(
            mm(
                            "cockpit.bar.lever.aheadMm",
                            "Lever ahead",
                            "End of the bar's reach forward to the hood's working point, bar not turned; the hoods then"
                                    + " go with the bar's reach.")
                    .within(-50, 120)
                    .source(DEFINITION, PRACTICE, "30 to 45 mm"),
            required());
    public static final Input LEVER_UP = input(
            mm(
                            "cockpit.bar.lever.upMm",
                            "Lever up",
                            "Bar clamp's height up to the hood's working point, bar not turned.")
                    .within(-80, 120)
                    .source(DEFINITION, PRACTICE, "0 to 30 mm"),
            required());

    // Contact points wanted

    public static final Input CONTACT_SIT_X = input(
            mm("contact.sitXMm", "Sit point wanted, x", "Saddle at its 75 mm wide point, ahead of BB.")
                    .within(-500, 100)
                    .uncertainty(3)
                    .source(UNCERTAINTY, PRACTICE, ""),
            required());
    public static final Input CONTACT_SIT_Y = input(
            mm("contact.sitYMm", "Sit point wanted, y", "Saddle at its 75 mm wide point, above BB.")
                    .within(200, 1100)
                    .uncertainty(3)
                    .source(UNCERTAINTY, PRACTICE, ""),
            required());
    public static final Input CONTACT_HAND_X = input(
            mm("contact.handXMm", "Hand point wanted, x", "Hood point, ahead of BB.")
                    .within(-100, 1000)
                    .uncertainty(5)
                    .source(UNCERTAINTY, PRACTICE, ""),
            required());
    public static final Input CONTACT_HAND_Y = input(
            mm("contact.handYMm", "Hand point wanted, y", "Hood point, above BB.")
                    .within(200, 1300)
                    .uncertainty(5)
                    .source(UNCERTAINTY, PRACTICE, ""),
            required());

    // Seat post and saddle

    public static final Input POST_SETBACK = input(
            mm("seatpost.setbackMm", "Post setback", "Clamp behind the post's axis, perpendicular to it.")
                    .within(-60, 80),
            required());
    public static final Input POST_LENGTH = input(
            mm("seatpost.lengthMm", "Post length", "Foot of the clamp on the axis to the post's lower end.")
                    .within(100, 500),
            required());
    public static final Input POST_MINIMUM_INSERTION = input(
            mm("seatpost.minimumInsertionMm", "Minimum insertion", "The post's lower end up to its insertion mark.")
                    .within(0, 250)
                    .limit(54.4, "two diameters of a 27.2 mm post", Sources.INSERTION)
                    .limit(63.2, "two diameters of a 31.6 mm post", Sources.INSERTION)
                    .caution(Cautions.SEAT_POST)
                    .source(LIMIT, READ, "16 CFR 1512.15(b)"),
            required());
    public static final Input RAIL_TRAVEL = input(
            mm("saddle.railTravelMm", "Rail travel", "Total travel of the saddle on its rails: half to either side.")
                    .within(0, 100),
            required());
    public static final Input SIT_BEHIND_RAILS = input(
            mm("saddle.sitBehindRailsMm", "Sit point behind rails", "Sit point behind the rail's centre.")
                    .within(-80, 150),
            required());
    public static final Input RAIL_TO_TOP = input(
            mm("saddle.railToTopMm", "Rail to top", "Rail up to the sit point.").within(10, 90), required());
    public static final Input TIP_TO_SIT = input(
            mm(
                            "saddle.tipToSitMm",
                            "Saddle tip to sit point",
                            "Saddle's tip back to where it is 75 mm wide, level; the saddle model's own.")
                    .within(40, 250)
                    .source(DEFINITION, PRACTICE, "110 to 160 mm"),
            optional());

    // Riding conditions

    public static final Input RIDE_STEER = input(
            deg("ride.steerDeg", "Steering angle", "Steering angle for the measures that need one.")
                    .within(0, 90)
                    .source(DEFAULT, PRACTICE, "straight ahead"),
            byDefault(0));
    public static final Input RIDE_LEAN = input(
            deg("ride.leanDeg", "Lean", "Lean into the turn for the measures that need one.")
                    .within(0, 50)
                    .about(40, "about what a tyre holds on dry tarmac", "common practice: friction 0.8 to 0.9")
                    .source(LIMIT, PRACTICE, "friction of 0.8 to 0.9 on dry tarmac")
                    .source(DEFAULT, PRACTICE, "upright"),
            byDefault(0));
    public static final Input RIDE_SPEED = input(
            Quantity.of("ride.speedKmh", "Speed", KILOMETRE_PER_HOUR, "Speed for the measures that need one.")
                    .source(DEFINITION, PRACTICE, "")
                    .within(0, 100)
                    .source(DEFAULT, PRACTICE, "standing"),
            byDefault(0));

    // As printed by a maker: only ever checks

    public static final Input CHARTED_WHEELBASE = input(charted("wheelbaseMm", "Wheelbase", 0, 3000), optional());
    public static final Input CHARTED_FRONT_CENTRE =
            input(charted("frontCentreMm", "Front-centre", 0, 2000), optional());
    public static final Input CHARTED_TRAIL = input(charted("trailMm", "Trail", -500, 500), optional());
    public static final Input CHARTED_EFFECTIVE_TOP_TUBE =
            input(charted("effectiveTopTubeMm", "Effective top tube", 0, 1500), optional());
    public static final Input CHARTED_BB_HEIGHT = input(charted("bbHeightMm", "BB height", -200, 1000), optional());
    public static final Input CHARTED_STANDOVER = input(charted("standoverMm", "Standover", 0, 1500), optional());
    public static final Input CHARTED_STEP_MM = input(
            mm("charted.stepMm", "Printed step of lengths", "The step to which the chart rounds lengths.")
                    .within(0.001, 50)
                    .source(DEFAULT, PRACTICE, "charts in whole millimetres"),
            byDefault(1));
    public static final Input CHARTED_STEP_DEG = input(
            deg("charted.stepDeg", "Printed step of angles", "The step to which the chart rounds angles.")
                    .within(0.001, 5)
                    .source(DEFAULT, PRACTICE, "charts in tenths of a degree"),
            byDefault(0.1));

    private static final List<Input> ALL = Stream.of(Inputs.class, MassInputs.class)
            .flatMap(holder -> Declared.listIn(holder, Input.class).stream())
            .toList();
    private static final List<Input> FOLLOWERS = ALL.stream()
            .filter(input -> input.presence() instanceof Input.Presence.Derived)
            .toList();

    private Inputs() {}

    /** Every input of a bike file, in the order of the declarations. */
    public static List<Input> all() {
        return ALL;
    }

    /** Those that follow from others where they are not given. */
    static List<Input> followers() {
        return FOLLOWERS;
    }

    private static Input input(Quantity.Draft quantity, Input.Presence presence) {
        return Slots.declared(quantity, presence);
    }

    private static Quantity.Draft mm(String key, String label, String definition) {
        return Quantity.of(key, label, MILLIMETRE, definition).source(DEFINITION, PRACTICE, "");
    }

    private static Quantity.Draft deg(String key, String label, String definition) {
        return Quantity.of(key, label, DEGREE, definition).source(DEFINITION, PRACTICE, "");
    }

    private static Quantity.Draft beadSeat(String wheel, String label) {
        return mm(wheel + "beadSeatMm", label, "Bead-seat diameter of the rim.")
                .within(200, 700)
                .decimals(0)
                .caution(Cautions.WHEELS)
                .caution(Cautions.RIM_BRAKES)
                .source(DEFINITION, COPY, "ISO 5775");
    }

    private static Quantity.Draft tyre(String wheel, String label) {
        return mm(wheel + "tyreMm", label, "Section width of the tyre; a change moves a given radius by as much.")
                .within(15, 130)
                .caution(Cautions.WHEELS);
    }

    private static Quantity.Draft radius(String wheel, String label) {
        return mm(
                        wheel + "radiusMm",
                        label,
                        "Rolling radius, measured; where not given, half the bead seat plus the tyre, which is"
                                + " nominal and may be off by about 1 %.")
                .within(100, 450)
                .uncertainty(2)
                .source(UNCERTAINTY, PRACTICE, "")
                .caution(Cautions.WHEELS)
                .rule(275, 350, "race rules, half the diameter", Sources.RACE_RULES)
                .source(LIMIT, COPY, "UCI Part 1, an older edition")
                .source(DEFAULT, COPY, "bead seat plus twice the width, ISO 5775-1 as summarised");
    }

    private static Quantity.Draft charted(String name, String label, double from, double to) {
        return Quantity.of(
                        "charted." + name,
                        label + ", charted",
                        Unit.MILLIMETRE,
                        "As printed by the maker; only ever a check.")
                .source(DEFINITION, PRACTICE, "")
                .within(from, to);
    }
}
