package rakeline.geometry;

import rakeline.quantity.Input;
import rakeline.quantity.Refusal;

/**
 * Whether a bicycle's numbers are those of one that could be built at all: its triangles close, its wheels do not overlap,
 * and the fork holds its axle below its crown. What is merely tight or low, as toe room, a tyre in its fork or the height of
 * BB, is a measure and no matter of shape.
 */
final class Shape {
    private final Bike bike;
    private final SideView side;

    private Shape(Bike bike) {
        this.bike = bike;
        this.side = bike.side();
    }

    /**
     * Refuses a bicycle that cannot be built.
     *
     * @throws Refusal with the numbers that do not go together
     */
    static void check(Bike bike) {
        Shape shape = new Shape(bike);
        shape.checkRearTriangle();
        shape.checkTyre(Inputs.FRONT_TYRE, Inputs.FRONT_RADIUS);
        shape.checkTyre(Inputs.REAR_TYRE, Inputs.REAR_RADIUS);
        shape.checkWheels();
        shape.checkCrown();
        if (!Double.isFinite(bike.side().frontCentreMm())) {
            throw shape.impossible("its numbers have no finite side view");
        }
    }

    /**
     * Refuses axles so near one another that no turn of the frame puts both wheels on the ground.
     *
     * @param rise of the front axle above the rear, mm
     */
    static void checkApart(Bike bike, Point rearToFront, double rise) {
        if (!(rearToFront.length() > Math.abs(rise))) {
            throw new Shape(bike)
                    .impossible("its wheels overlap, since the axles are " + mm(rearToFront.length())
                            + " apart and the wheels' radii differ by " + mm(Math.abs(rise)));
        }
    }

    private void checkRearTriangle() {
        if (!(Math.abs(bike.get(Inputs.BB_DROP)) < bike.get(Inputs.CHAINSTAY))) {
            throw impossible("the rear triangle does not close, since the " + said(Inputs.CHAINSTAY)
                    + " must be longer than the " + said(Inputs.BB_DROP));
        }
    }

    private void checkTyre(Input tyre, Input radius) {
        if (!(bike.get(radius) > bike.get(tyre) / 2)) {
            throw impossible("a " + said(tyre) + " does not fit a " + said(radius));
        }
    }

    /** On level ground two wheels touch where the wheelbase is 2 √(Rf Rr). */
    private void checkWheels() {
        double least = 2 * Math.sqrt(bike.get(Inputs.FRONT_RADIUS) * bike.get(Inputs.REAR_RADIUS));
        if (!(side.wheelbaseMm() > least)) {
            throw impossible("its wheels overlap, since a wheelbase of " + mm(side.wheelbaseMm())
                    + " is no more than the " + mm(least) + " that a " + said(Inputs.FRONT_RADIUS) + " and a "
                    + said(Inputs.REAR_RADIUS) + " take up");
        }
    }

    /** The head tube with what is known of the headset must end above the foot of the perpendicular from the axle. */
    private void checkCrown() {
        double taken = known(Inputs.HEAD_TUBE) + known(Inputs.LOWER_STACK);
        if (!(side.axisLengthMm() > taken)) {
            throw impossible("the fork's crown would not be above the front axle, since along the steering axis the"
                    + " head tube's upper edge is " + mm(side.axisLengthMm()) + " above the axle and "
                    + (taken > 0 ? "head tube and headset take " + mm(taken) : "the head tube is below that edge"));
        }
    }

    private double known(Input input) {
        return bike.has(input) ? bike.get(input) : 0;
    }

    private Refusal impossible(String why) {
        return new Refusal(bike.name() + " cannot be built: " + why + ".");
    }

    /** As in {@code BB drop of 72 mm (frame.bbDropMm)}. */
    private String said(Input input) {
        return input.quantity().inSentence() + " of " + input.quantity().said(bike.get(input)) + " (" + input.key()
                + ")";
    }

    private static String mm(double value) {
        return Measures.WHEELBASE.quantity().formatWithUnit(value);
    }
}
