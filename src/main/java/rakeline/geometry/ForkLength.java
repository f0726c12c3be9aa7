package rakeline.geometry;

import rakeline.quantity.Reading;

/** The fork length that a side view implies. */
final class ForkLength {
    private ForkLength() {}

    /**
     * Axle to crown, straight, of the unsagged fork that closes the side view; needs head tube and lower stack.
     */
    static Reading impliedMm(Bike bike, SideView side) {
        if (!bike.has(Inputs.HEAD_TUBE)) {
            return Reading.lacking(Inputs.HEAD_TUBE.key());
        }
        if (!bike.has(Inputs.LOWER_STACK)) {
            return Reading.lacking(Inputs.LOWER_STACK.key());
        }
        double along = side.axisLengthMm()
                - bike.get(Inputs.HEAD_TUBE)
                - bike.get(Inputs.LOWER_STACK)
                + bike.get(Inputs.FORK_SAG);
        return Reading.of(Math.hypot(along, side.offsetMm()));
    }
}
