package rakeline.study;

import java.util.Arrays;
import java.util.List;
import rakeline.geometry.Bike;
import rakeline.geometry.Inputs;
import rakeline.geometry.Setting;
import rakeline.quantity.Input;

/**
 * A way in which makers come to print another number (common practice), with the number that it would have to be.
 *
 * @param share how often it is that, among all that can be wrong with this number
 */
record Slip(double wouldBe, double share, String because) {
    private static final double USUAL = 0.1;
    private static final double OTHER_SIZE = 0.005;
    private static final String HORIZONTAL = "the printed one is its horizontal length";

    /** Bead-seat diameters in mm. Source: ISO 5775, read in a secondary copy. */
    private static final double[] BEAD_SEATS = {622, 584, 571, 559, 590, 630, 507, 451, 406, 349};

    /** Whether a number is a size by name, of which there are only so many. */
    static boolean isSizeByName(Setting setting) {
        return setting.inputs().get(0).name().equals(Inputs.FRONT_BEAD_SEAT.name());
    }

    /** The ways known for a number of a bike. */
    static List<Slip> of(Setting setting, Bike bike) {
        Input input = setting.inputs().get(0);
        if (isSizeByName(setting)) {
            return otherSizes();
        }
        if (input.equals(Inputs.CHAINSTAY)) {
            return List.of(horizontal(bike.get(input), bike.get(Inputs.BB_DROP)));
        }
        if (input.equals(Inputs.CHARTED_FRONT_CENTRE)) {
            return List.of(horizontal(bike.get(input), frontAxleRise(bike)));
        }
        return input.equals(Inputs.STACK) && bike.has(Inputs.HEADSET_COVER) ? List.of(withCover(bike)) : List.of();
    }

    private static List<Slip> otherSizes() {
        return Arrays.stream(BEAD_SEATS)
                .mapToObj(size -> new Slip(size, OTHER_SIZE, "it may be another wheel size"))
                .toList();
    }

    private static Slip horizontal(double printed, double rise) {
        return new Slip(Math.hypot(printed, rise), USUAL, HORIZONTAL);
    }

    private static double frontAxleRise(Bike bike) {
        return bike.get(Inputs.FRONT_RADIUS) - bike.get(Inputs.REAR_RADIUS) + bike.get(Inputs.BB_DROP);
    }

    private static Slip withCover(Bike bike) {
        double cover = bike.get(Inputs.HEADSET_COVER) * Math.sin(Math.toRadians(bike.get(Inputs.HEAD_ANGLE)));
        return new Slip(bike.get(Inputs.STACK) - cover, USUAL, "the headset cover is counted into the printed one");
    }
}
