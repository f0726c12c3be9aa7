package rakeline.study.fit;

import static rakeline.quantity.Unit.MILLIMETRE;
import static rakeline.quantity.Unit.PERCENT;

import rakeline.quantity.Quantity;

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

    private FitQuantities() {}
}
