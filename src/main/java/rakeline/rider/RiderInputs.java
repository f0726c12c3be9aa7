package rakeline.rider;

import static rakeline.quantity.Input.byDefault;
import static rakeline.quantity.Input.derived;
import static rakeline.quantity.Input.optional;
import static rakeline.quantity.Input.required;
import static rakeline.quantity.SourceNote.Part.DEFAULT;
import static rakeline.quantity.SourceNote.Part.DEFINITION;
import static rakeline.quantity.SourceStanding.COPY;
import static rakeline.quantity.SourceStanding.MEMORY;
import static rakeline.quantity.SourceStanding.PRACTICE;
import static rakeline.quantity.SourceStanding.READ;
import static rakeline.quantity.Unit.DEGREE;
import static rakeline.quantity.Unit.KILOGRAM;
import static rakeline.quantity.Unit.MILLIMETRE;

import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import rakeline.quantity.Decimals;
import rakeline.quantity.Declared;
import rakeline.quantity.Entries;
import rakeline.quantity.Input;
import rakeline.quantity.Quantity;

/** The numbers of a body that a rider file may give; each is declared here and nowhere else. */
public final class RiderInputs {
    private static final AtomicInteger NEXT_SLOT = new AtomicInteger();
    private static final String DRILLIS = "Drillis and Contini 1966 in Winter";
    private static final String ANSUR = "ANSUR II 2012 survey, means of men and women";
    private static final String MEASURE = "measure it where it matters";

    /** Pedal and sole under the foot where a bike and its shoe do not say; from memory. */
    static final double USUAL_FOOTING_MM = 25;

    // The body as measured

    public static final Input STATURE =
            input(mm("statureMm", "Stature", "Height without shoes.").within(700, 2500), required());
    public static final Input INSEAM =
            input(mm("inseamMm", "Inseam", "Ground to crotch, in riding shoes.").within(300, 1300), required());
    public static final Input MASS = input(
            Quantity.of("massKg", "Body mass", KILOGRAM, "Mass of the rider, clothes and shoes included.")
                    .source(DEFINITION, PRACTICE, "")
                    .within(10, 250),
            required());
    public static final Input FOOT = input(
            mm("footMm", "Foot length", "Heel to the longest toe.")
                    .within(100, 400)
                    .source(DEFAULT, COPY, DRILLIS),
            ofStature(0.152));

    // Segments, joint to joint

    public static final Input THIGH = input(segment("thighMm", "Thigh", "Hip to knee.", 50), ofStature(0.245));
    public static final Input SHANK = input(segment("shankMm", "Shank", "Knee to ankle.", 50), ofStature(0.246));
    public static final Input TRUNK = input(segment("trunkMm", "Trunk", "Hip to shoulder.", 50), ofStature(0.288));
    public static final Input UPPER_ARM =
            input(segment("upperArmMm", "Upper arm", "Shoulder to elbow.", 50), ofStature(0.186));
    public static final Input FOREARM = input(segment("forearmMm", "Forearm", "Elbow to wrist.", 50), ofStature(0.146));
    public static final Input HAND = input(
            segment("handMm", "Hand", "Wrist to fingertip; the grip is at half of it.", 40)
                    .source(DEFAULT, MEMORY, MEASURE),
            ofStature(0.108));
    public static final Input SHOULDER_WIDTH = input(
            segment("shoulderWidthMm", "Shoulder width", "Biacromial breadth.", 100)
                    .source(DEFAULT, READ, ANSUR),
            ofStature(0.231));
    public static final Input HIP_WIDTH = input(
            segment("hipWidthMm", "Hip width", "Hip joint to hip joint.", 50).source(DEFAULT, MEMORY, MEASURE),
            ofStature(0.1));

    // The posture

    public static final Input ELBOW = input(
            deg(
                            "elbowDeg",
                            "Elbow",
                            "Bend of the elbow. Below 90 it is counted from the straight arm, above from the closed"
                                    + " one: 15 and 165 are the same elbow.")
                    .within(0, 180)
                    .source(DEFAULT, MEMORY, MEASURE),
            byDefault(15));
    public static final Input HIP_UP = input(
            mm("hipUpMm", "Hip above the sit point", "Hip joint above the sit point.")
                    .within(0, 200)
                    .source(DEFAULT, MEMORY, MEASURE),
            byDefault(85));
    public static final Input HIP_AHEAD = input(
            mm("hipAheadMm", "Hip ahead of the sit point", "Hip joint ahead of the sit point.")
                    .within(-150, 150)
                    .source(DEFAULT, MEMORY, MEASURE),
            byDefault(0));
    public static final Input FOOT_PITCH = input(
            deg(
                            "footPitchDeg",
                            "Foot pitch",
                            "How far the toes point down while pedalling; separate from shoe.pitchDeg, which moves the"
                                    + " shoe alone.")
                    .within(-45, 60)
                    .source(DEFAULT, MEMORY, MEASURE),
            byDefault(15));
    public static final Input BALL_TO_ANKLE = input(
            mm("ballToAnkleMm", "Ball to ankle", "Pedal axis back to the ankle, along the foot.")
                    .within(50, 300)
                    .source(DEFAULT, MEMORY, MEASURE),
            derived("0.7 × footMm", given -> 0.7 * footOf(given)));
    public static final Input ANKLE_HEIGHT = input(
            mm("ankleHeightMm", "Ankle height", "Ankle above the pedal axis, square to the foot, shoe included.")
                    .within(20, 200)
                    .source(DEFAULT, MEMORY, MEASURE),
            derived("0.039 × statureMm + 25", given -> 0.039 * given.get(STATURE) + USUAL_FOOTING_MM));
    public static final Input SHOE_AHEAD = input(
            mm("shoeAheadMm", "Shoe ahead of the toes", "What the shoe adds ahead of the longest toe.")
                    .within(0, 60)
                    .source(DEFAULT, PRACTICE, "15 to 20 mm"),
            byDefault(17.5));
    public static final Input CLEAT_SETBACK = input(
            mm(
                            "cleatSetbackMm",
                            "Cleat setback",
                            "Pedal axis behind the ball of the foot; moved further back, the toe of the shoe comes"
                                    + " forward by as much.")
                    .within(-40, 120),
            optional());

    private static final List<Input> ALL = Declared.listIn(RiderInputs.class, Input.class);

    private RiderInputs() {}

    /** Every input of a body, in the order of the declarations. */
    public static List<Input> all() {
        return ALL;
    }

    private static double footOf(Entries given) {
        return given.has(FOOT) ? given.get(FOOT) : 0.152 * given.get(STATURE);
    }

    private static Input.Presence ofStature(double share) {
        return derived(Decimals.shortest(share) + " × statureMm", given -> share * given.get(STATURE));
    }

    private static Input input(Quantity.Draft quantity, Input.Presence presence) {
        return new Input(quantity.declared(), presence, NEXT_SLOT.getAndIncrement());
    }

    private static Quantity.Draft segment(String name, String label, String definition, double least) {
        return mm("segments." + name, label, definition).within(least, 900).source(DEFAULT, COPY, DRILLIS);
    }

    private static Quantity.Draft mm(String key, String label, String definition) {
        return Quantity.of(key, label, MILLIMETRE, definition).source(DEFINITION, PRACTICE, "");
    }

    private static Quantity.Draft deg(String key, String label, String definition) {
        return Quantity.of(key, label, DEGREE, definition).source(DEFINITION, PRACTICE, "");
    }
}
