package rakeline.handling;

import java.util.ArrayList;
import java.util.List;
import rakeline.geometry.Geometry;
import rakeline.geometry.Hands;

/**
 * What hands somewhere on the bar feel of a steady turn.
 *
 * @param hands where
 * @param leverMm hand to steering axis
 * @param perHandN force of each of two hands, square to the lever; NaN without a rider, whose mass it hangs on
 * @param oneHandN force of one hand alone; NaN without a rider
 */
public record HandForce(Hands hands, double leverMm, double perHandN, double oneHandN) {

    /** At tops, hoods and drops, as far as the bike gives them. */
    public static List<HandForce> of(Ride ride, SteadyTurn turn) {
        List<HandForce> forces = new ArrayList<>();
        for (Hands hands : Hands.values()) {
            Geometry.of(ride.bike(), hands)
                    .handPoint()
                    .ifPresent(point -> forces.add(of(hands, point.leverMm(), turn, ride.isRidden())));
        }
        return List.copyOf(forces);
    }

    private static HandForce of(Hands hands, double leverMm, SteadyTurn turn, boolean ridden) {
        return ridden
                ? new HandForce(hands, leverMm, turn.forcePerHandN(leverMm), turn.forceOneHandN(leverMm))
                : new HandForce(hands, leverMm, Double.NaN, Double.NaN);
    }
}
