package rakeline.rider;

import static rakeline.quantity.SourceNote.Part.DEFAULT;
import static rakeline.quantity.SourceNote.Part.FORMULA;
import static rakeline.quantity.SourceNote.Part.LIMIT;
import static rakeline.quantity.SourceStanding.DERIVED;
import static rakeline.quantity.SourceStanding.MEMORY;
import static rakeline.quantity.SourceStanding.PRACTICE;
import static rakeline.quantity.SourceStanding.READ;
import static rakeline.quantity.Unit.DEGREE;
import static rakeline.quantity.Unit.MILLIMETRE;
import static rakeline.quantity.Unit.PERCENT;

import java.util.List;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import rakeline.geometry.Bike;
import rakeline.geometry.BikeGroups;
import rakeline.geometry.Cautions;
import rakeline.geometry.Geometry;
import rakeline.geometry.Inputs;
import rakeline.geometry.Measures;
import rakeline.geometry.OwnMass;
import rakeline.geometry.SideView;
import rakeline.quantity.Caution;
import rakeline.quantity.Measure;
import rakeline.quantity.Quantity;
import rakeline.quantity.Reading;

/** What follows from a rider on a bicycle; each declared once. */
public final class RiderMeasures {
    private static final Caution CLINICIAN = new Caution(
            "posture",
            "A posture in a plane of rigid segments, for an adult. Pain, numbness and the fitting of children belong to a"
                    + " clinician.");
    private static final String HOLLIDAY = "Holliday and Swart 2021, measured on 50 riders";
    private static final String OTHER_LANDMARKS = "The trunk is the straight line from hip to shoulder; the published"
            + " means of hip and shoulder do not both belong to such a trunk, so compare changes with them, not values.";
    private static final String SEGMENTS = "plane geometry of straight segments";
    private static final String TABLES = "Dempster in Winter, de Leva 1996, as the rider's file chooses";
    private static final String MANUALS = "makers' manuals, by common practice";
    private static final String STATIC_KNEE = "common fit rule, knee 25 to 35° at the bottom, static";

    public static final Measure<Ridden> KNEE_FLEXION_BOTTOM = legs(
            deg("kneeFlexionBottomDeg", "Knee flexion, crank down", "180° − the knee's angle, crank straight down.")
                    .limit(25, "static from", STATIC_KNEE)
                    .atMost(35, "static to", STATIC_KNEE)
                    .about(36, "mean of measured riders, ± 7", HOLLIDAY)
                    .source(LIMIT, READ, "fit rule in Peveler et al. 2005; " + HOLLIDAY),
            legs -> legs.kneeFlexionDeg(-Math.PI / 2));
    public static final Measure<Ridden> KNEE_FLEXION_LEAST = legs(
            deg("kneeFlexionLeastDeg", "Knee flexion, least", "180° − the knee's angle where the leg is longest."),
            Legs::kneeFlexionLeastDeg);
    public static final Measure<Ridden> HIP_ANGLE_AT_TOP = hip(
            deg(
                            "hipAngleAtTopDeg",
                            "Hip angle, crank up",
                            "Trunk to thigh, crank straight up; a right angle opens to more, a folded hip to less."
                                    + " " + OTHER_LANDMARKS)
                    .about(77, "mean of measured riders, ± 5", HOLLIDAY)
                    .source(LIMIT, READ, HOLLIDAY),
            legs -> legs.thighRad(Math.PI / 2));
    public static final Measure<Ridden> HIP_ANGLE_LEAST = hip(
            deg("hipAngleLeastDeg", "Hip angle, least", "Trunk to thigh, least over the crank's turn."),
            Legs::thighHighestRad);
    public static final Measure<Ridden> TORSO_ANGLE =
            torso(deg("torsoAngleDeg", "Torso angle", "Trunk, hip to shoulder, to the horizontal."), Torso::angleRad);
    public static final Measure<Ridden> SHOULDER_ANGLE = torso(
            deg(
                            "shoulderAngleDeg",
                            "Shoulder angle",
                            "Trunk to upper arm; 0 with the arm along the trunk. " + OTHER_LANDMARKS)
                    .about(112, "mean of measured riders, ± 7", HOLLIDAY)
                    .source(LIMIT, READ, HOLLIDAY),
            Torso::shoulderAngleRad);
    public static final Measure<Ridden> MASS_CENTRE_X = body(
            mm("massCentreXMm", "Mass centre, x", "The rider's mass centre ahead of BB, cranks level.")
                    .source(FORMULA, READ, TABLES),
            body -> mean(body, BodyPart::xMm));
    public static final Measure<Ridden> MASS_CENTRE_Y = body(
            mm("massCentreYMm", "Mass centre, y", "The rider's mass centre above BB, cranks level.")
                    .source(FORMULA, READ, TABLES),
            body -> mean(body, BodyPart::yMm));
    public static final Measure<Ridden> FRONT_SHARE = new Measure<>(
            Quantity.of(
                            "frontSharePercent",
                            "Share on the front wheel",
                            PERCENT,
                            "Share of rider and bicycle on the front wheel, standing level, cranks level; the bicycle"
                                    + " counts with its masses group, and where that says nothing with 9.2 kg in four"
                                    + " parts at their usual places.")
                    .source(FORMULA, READ, TABLES)
                    .source(
                            DEFAULT,
                            MEMORY,
                            "the defaults of the masses keys, whose places are those of specimen B of Moore 2012")
                    .declared(),
            ridden -> ridden.ofBody(body -> frontShare(ridden.geometry(), body)));
    public static final Measure<Ridden> STANDOVER_CLEARANCE = new Measure<>(
            mm("standoverClearanceMm", "Standover clearance", "The rider's inseam in riding shoes minus standover.")
                    .limit(50, "on the road", MANUALS)
                    .limit(75, "unpaved", MANUALS)
                    .limit(100, "off road", MANUALS)
                    .source(LIMIT, PRACTICE, "makers' manuals")
                    .caution(Cautions.STANDOVER)
                    .declared(),
            ridden -> plus(ridden.ofRider(who -> who.get(RiderInputs.INSEAM)), ridden.geometry()));
    public static final Measure<Ridden> SADDLE_HEIGHT_OF_INSEAM = saddle(
            percent("saddleHeightOfInseamPercent", "Saddle height of inseam", "BB to sit point, in % of the inseam.")
                    .about(88.3, "0.883 × inseam", "in Peveler et al. 2005")
                    .source(LIMIT, READ, "in Peveler et al. 2005"),
            bike -> 0);
    public static final Measure<Ridden> SADDLE_TO_PEDAL_OF_INSEAM = saddle(
            percent(
                            "saddleToPedalOfInseamPercent",
                            "Saddle to pedal of inseam",
                            "Sit point to the pedal axis in line with BB, in % of the inseam.")
                    .about(109, "1.09 × inseam", "Hamley and Thomas 1967")
                    .source(LIMIT, READ, "Hamley and Thomas 1967"),
            bike -> bike.get(Inputs.CRANK_LENGTH));
    public static final Measure<Ridden> TOE_FORWARD_FROM_BODY = new Measure<>(
            mm(
                            "toeForwardFromBodyMm",
                            "Toe ahead of the pedal, from the body",
                            "0.26 × foot + what the shoe adds + cleat setback; shoe.toeForwardMm, where measured, is"
                                    + " what counts.")
                    .source(FORMULA, PRACTICE, "ANSUR II 2012 for the ball of the foot")
                    .declared(),
            ridden -> ridden.ofRider(Rider::toeForwardMm));

    private RiderMeasures() {}

    private static Measure<Ridden> legs(Quantity.Draft quantity, ToDoubleFunction<Legs> formula) {
        return new Measure<>(quantity.declared(), ridden -> ridden.ofLegs(formula));
    }

    /** Trunk to thigh, for a direction of the thigh. */
    private static Measure<Ridden> hip(Quantity.Draft quantity, ToDoubleFunction<Legs> thighRad) {
        return new Measure<>(
                quantity.declared(),
                ridden -> ridden.ofLegs(thighRad) instanceof Reading.Known thigh
                        ? ridden.ofTorso(torso -> Math.toDegrees(torso.angleRad() - thigh.value()))
                        : ridden.ofLegs(thighRad));
    }

    private static Measure<Ridden> torso(Quantity.Draft quantity, ToDoubleFunction<Torso> angleRad) {
        return new Measure<>(
                quantity.declared(), ridden -> ridden.ofTorso(torso -> Math.toDegrees(angleRad.applyAsDouble(torso))));
    }

    private static Measure<Ridden> body(Quantity.Draft quantity, ToDoubleFunction<List<BodyPart>> formula) {
        return new Measure<>(quantity.declared(), ridden -> ridden.ofBody(formula));
    }

    private static Measure<Ridden> saddle(Quantity.Draft quantity, ToDoubleFunction<Bike> crankMm) {
        return new Measure<>(quantity.declared(), ridden -> {
            Bike bike = ridden.geometry().bike();
            double height = Math.hypot(bike.get(Inputs.CONTACT_SIT_X), bike.get(Inputs.CONTACT_SIT_Y))
                    + crankMm.applyAsDouble(bike);
            return Double.isNaN(height)
                    ? Reading.lacking(BikeGroups.missingWords(bike, List.of(Inputs.CONTACT_SIT_X, Inputs.CRANK_LENGTH)))
                    : ridden.ofRider(who -> 100 * height / who.get(RiderInputs.INSEAM));
        });
    }

    private static Reading plus(Reading inseam, Geometry geometry) {
        Reading standover = Measures.STANDOVER.read(geometry);
        return inseam instanceof Reading.Known known && standover instanceof Reading.Known height
                ? Reading.of(known.value() - height.value())
                : inseam instanceof Reading.Known ? standover : inseam;
    }

    private static double frontShare(Geometry geometry, List<BodyPart> body) {
        OwnMass bicycle = OwnMass.of(geometry);
        SideView side = geometry.side();
        double rider = body.stream().mapToDouble(BodyPart::massKg).sum();
        double centre = (rider * mean(body, BodyPart::xMm) + bicycle.massKg() * bicycle.centreXMm())
                / (rider + bicycle.massKg());
        return 100 * (centre - side.rearAxleXMm()) / side.wheelbaseMm();
    }

    private static double mean(List<BodyPart> body, Function<BodyPart, Double> place) {
        double mass = body.stream().mapToDouble(BodyPart::massKg).sum();
        return body.stream()
                        .mapToDouble(part -> part.massKg() * place.apply(part))
                        .sum()
                / mass;
    }

    private static Quantity.Draft deg(String key, String label, String definition) {
        return Quantity.of(key, label, DEGREE, definition).caution(CLINICIAN).source(FORMULA, DERIVED, SEGMENTS);
    }

    private static Quantity.Draft mm(String key, String label, String definition) {
        return Quantity.of(key, label, MILLIMETRE, definition).source(FORMULA, DERIVED, SEGMENTS);
    }

    private static Quantity.Draft percent(String key, String label, String definition) {
        return Quantity.of(key, label, PERCENT, definition).source(FORMULA, DERIVED, SEGMENTS);
    }
}
