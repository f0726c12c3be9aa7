package rakeline.prelude;

import java.util.List;
import rakeline.figure.BikeDrawing;
import rakeline.figure.Drawing;
import rakeline.geometry.Bike;
import rakeline.geometry.Inputs;
import rakeline.handling.Ride;

/** The drawings that stand beside a page for a value that a row ends in. */
public final class Pictures {
    private static final double USUAL_STEER_DEG = 15;

    private Pictures() {}

    /** Side view and, with cranks, the plan view of a bike; none for anything else. */
    public static List<Drawing> of(Object value) {
        if (!(value instanceof Bike bike)) {
            return List.of();
        }
        Ride ride = Ride.of(bike);
        Drawing side = BikeDrawing.sideView(List.of(ride));
        return bike.hasGroup("crank") ? List.of(side, BikeDrawing.planView(ride, steer(bike))) : List.of(side);
    }

    private static double steer(Bike bike) {
        double given = bike.has(Inputs.RIDE_STEER) ? bike.get(Inputs.RIDE_STEER) : 0;
        return given > 0 ? given : USUAL_STEER_DEG;
    }
}
