package rakeline.geometry;

import static rakeline.quantity.Input.byDefault;
import static rakeline.quantity.Input.optional;
import static rakeline.quantity.SourceNote.Part.DEFAULT;
import static rakeline.quantity.SourceNote.Part.DEFINITION;
import static rakeline.quantity.SourceStanding.DERIVED;
import static rakeline.quantity.SourceStanding.MEMORY;
import static rakeline.quantity.SourceStanding.READ;

import rakeline.quantity.Input;
import rakeline.quantity.Quantity;
import rakeline.quantity.SourceStanding;
import rakeline.quantity.Unit;

/**
 * Masses and moments of inertia of the bicycle's four rigid parts; each has a default, with its source, so that none need
 * be given. Centres of mass are millimetres from BB, moments kg m² about axes parallel to the frame of reference through
 * the part's own centre of mass.
 */
public final class MassInputs {
    private static final String MODEL = "Meijaard, Papadopoulos, Ruina and Schwab 2007";
    private static final String ROAD_BICYCLE = "a light road bicycle";
    private static final String SPECIMEN_A = "mass times the ratio of specimen A, Moore 2012, chapter Physical"
            + " Parameters, and of the wheel's radius squared";
    private static final String SPECIMEN_B =
            "mass times the ratio of specimen B, Moore 2012, chapter Physical Parameters";
    private static final String FRAME_X = "0.314 of the wheelbase ahead of the rear axle, as specimen B, Moore"
            + " 2012, chapter Physical Parameters";
    private static final String FRAME_Y =
            "1.427 rear wheel radii above the ground, as specimen B, Moore 2012," + " chapter Physical Parameters";
    private static final String FORK = "0.6 of the way from the front axle to the bar clamp, close to specimen"
            + " B, Moore 2012, whose bar height is assumed";

    public static final Input FRONT_WHEEL_MASS =
            mass("masses.frontWheel.massKg", "Front wheel mass", "Mass of the front wheel with its tyre.", 1.2);
    public static final Input FRONT_WHEEL_SPIN =
            moment("masses.frontWheel.spinKgM2", "Front wheel spin inertia", "its axle", SPECIMEN_A);
    public static final Input FRONT_WHEEL_DIAMETRAL =
            moment("masses.frontWheel.diametralKgM2", "Front wheel diametral inertia", "a diameter", SPECIMEN_A);

    public static final Input REAR_WHEEL_MASS = mass(
            "masses.rearWheel.massKg", "Rear wheel mass", "Mass of the rear wheel with its tyre and sprockets.", 1.6);
    public static final Input REAR_WHEEL_SPIN =
            moment("masses.rearWheel.spinKgM2", "Rear wheel spin inertia", "its axle", SPECIMEN_A);
    public static final Input REAR_WHEEL_DIAMETRAL =
            moment("masses.rearWheel.diametralKgM2", "Rear wheel diametral inertia", "a diameter", SPECIMEN_A);

    public static final Input FORK_MASS = mass(
            "masses.fork.massKg",
            "Fork and bar mass",
            "Mass of all that steers but the wheel: fork, stem, bar, levers.",
            1.8);
    public static final Input FORK_MASS_X =
            centre("masses.fork.xMm", "Fork and bar mass, x", "ahead of BB", MEMORY, FORK);
    public static final Input FORK_MASS_Y = centre("masses.fork.yMm", "Fork and bar mass, y", "above BB", MEMORY, FORK);
    public static final Input FORK_ROLL =
            moment("masses.fork.rollKgM2", "Fork and bar roll inertia", "the forward axis", SPECIMEN_B);
    public static final Input FORK_YAW =
            moment("masses.fork.yawKgM2", "Fork and bar yaw inertia", "the upward axis", SPECIMEN_B);
    public static final Input FORK_PITCH =
            moment("masses.fork.pitchKgM2", "Fork and bar pitch inertia", "the axis to the right", SPECIMEN_B);
    public static final Input FORK_PRODUCT = product("masses.fork.productKgM2", "Fork and bar product of inertia");

    public static final Input FRAME_MASS = mass(
            "masses.frame.massKg",
            "Frame mass",
            "Mass of all that neither steers nor is a wheel: frame, post, saddle, cranks.",
            4.6);
    public static final Input FRAME_MASS_X = centre("masses.frame.xMm", "Frame mass, x", "ahead of BB", READ, FRAME_X);
    public static final Input FRAME_MASS_Y = centre("masses.frame.yMm", "Frame mass, y", "above BB", READ, FRAME_Y);
    public static final Input FRAME_ROLL =
            moment("masses.frame.rollKgM2", "Frame roll inertia", "the forward axis", SPECIMEN_B);
    public static final Input FRAME_YAW =
            moment("masses.frame.yawKgM2", "Frame yaw inertia", "the upward axis", SPECIMEN_B);
    public static final Input FRAME_PITCH =
            moment("masses.frame.pitchKgM2", "Frame pitch inertia", "the axis to the right", SPECIMEN_B);
    public static final Input FRAME_PRODUCT = product("masses.frame.productKgM2", "Frame product of inertia");

    public static final Input HAND_SHARE = Slots.declared(
            Quantity.of(
                            "masses.handSharePercent",
                            "Arms carried by the bar",
                            Unit.PERCENT,
                            "Share of forearms and hands that moves with the bar; it is taken off the rider.")
                    .within(0, 100)
                    .decimals(0)
                    .source(DEFINITION, DERIVED, "a share of a mass")
                    .source(DEFAULT, MEMORY, "half of them"),
            byDefault(50));

    private MassInputs() {}

    private static Input mass(String key, String label, String definition, double usual) {
        return Slots.declared(
                Quantity.of(key, label, Unit.KILOGRAM, definition)
                        .within(0.01, 60)
                        .decimals(2)
                        .source(DEFINITION, READ, MODEL)
                        .source(DEFAULT, MEMORY, ROAD_BICYCLE),
                byDefault(usual));
    }

    private static Input centre(String key, String label, String where, SourceStanding standing, String source) {
        return Slots.declared(
                Quantity.of(key, label, Unit.MILLIMETRE, "Centre of mass " + where + ".")
                        .within(-1000, 2000)
                        .source(DEFINITION, READ, MODEL)
                        .source(DEFAULT, standing, source),
                optional());
    }

    private static Input moment(String key, String label, String axis, String source) {
        return Slots.declared(
                Quantity.of(
                                key,
                                label,
                                Unit.KILOGRAM_SQUARE_METRE,
                                "Moment of inertia about " + axis + " through the centre of mass.")
                        .within(1e-6, 50)
                        .decimals(4)
                        .source(DEFINITION, READ, MODEL)
                        .source(DEFAULT, READ, source),
                optional());
    }

    private static Input product(String key, String label) {
        return Slots.declared(
                Quantity.of(
                                key,
                                label,
                                Unit.KILOGRAM_SQUARE_METRE,
                                "∫ x y dm about the centre of mass, forward and up.")
                        .within(-50, 50)
                        .decimals(4)
                        .source(DEFINITION, READ, MODEL)
                        .source(DEFAULT, READ, SPECIMEN_B),
                optional());
    }
}
