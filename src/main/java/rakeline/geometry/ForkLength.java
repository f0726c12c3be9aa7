package rakeline.geometry;

import java.util.List;
import rakeline.quantity.Reading;

/** The fork length that a side view implies. */
final class ForkLength {
    private ForkLength() {}

    /**
     * Axle to crown, straight, of the unsagged fork that closes the side view; needs head tube and lower stack.
     */
    static Reading impliedMm(Bike bike, SideView side) {
        String missing = BikeGroups.missingWords(bike, List.of(Inputs.HEAD_TUBE, Inputs.LOWER_STACK));
        if (!missing.isEmpty()) {
            return Reading.lacking(missing);
        }
        double along = side.axisLengthMm()
                - bike.get(Inputs.HEAD_TUBE)
                - bike.get(Inputs.LOWER_STACK)
                + bike.get(Inputs.FORK_SAG);
        return Reading.of(Math.hypot(along, side.offsetMm()));
    }
}
