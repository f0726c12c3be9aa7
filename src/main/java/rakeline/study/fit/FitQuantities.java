package rakeline.study.fit;

import static rakeline.quantity.Unit.MILLIMETRE;
import static rakeline.quantity.Unit.PERCENT;

import rakeline.geometry.Geometry;
import rakeline.geometry.Inputs;
import rakeline.quantity.Limit;
import rakeline.quantity.Measure;
import rakeline.quantity.Quantity;
import rakeline.quantity.Reading;

/** Numbers that say how one bike stands to wanted points or to another bike. */
final class FitQuantities {
    static final Quantity HAND_DX = Quantity.of(
                    "handDxMm", "Hands from target, forward", MILLIMETRE, "Hoods ahead of where they are wanted.")
            .declared();
    static final Quantity HAND_DY = Quantity.of(
                    "handDyMm", "Hands from target, up", MILLIMETRE, "Hoods above where they are wanted.")
            .declared();
    static final Quantity DISTANCE = Quantity.of(
                    "distanceMm", "Hands from target", MILLIMETRE, "Hoods to where they are wanted, straight.")
            .declared();
    static final Quantity LEVER_CHANGE = Quantity.of(
                    "handLeverChangePercent", "Lever change", PERCENT, "Hand lever against the reference bike's.")
            .declared();
    static final Quantity TURN_CHANGE = Quantity.of(
                    "turnPerHandTravelChangePercent",
                    "Turn change",
                    PERCENT,
                    "Turn per hand travel against the reference bike's; never a score.")
            .declared();

    /** A stem that stands on no spacers cannot come down. */
    static final Limit NONE_BELOW = new Limit(0, "no spacer left to take out", "by definition");

    static final Measure<Geometry> SPACERS_BELOW = new Measure<>(
            Quantity.of("spacersBelowMm", "Spacers below the stem", MILLIMETRE, "What a stem can still come down.")
                    .declared(),
            geometry -> Reading.of(geometry.bike().get(Inputs.SPACERS)));

    private FitQuantities() {}
}
