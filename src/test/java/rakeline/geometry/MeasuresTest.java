package rakeline.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static rakeline.geometry.Bikes.value;

import java.util.Map;
import org.junit.jupiter.api.Test;
import rakeline.quantity.Measure;
import rakeline.quantity.Reading;

/** Margins to the limits of parts, hands, and what a measure says where something is not given. */
class MeasuresTest {
    @Test
    void handsOnTheTopsAreAtTheClamp() {
        Geometry tops = Geometry.of(Bikes.whole(), Hands.TOPS);
        assertThat(Measures.HAND_X.read(tops)).isEqualTo(Measures.BAR_X.read(tops));
        assertThat(Measures.HAND_TRAVEL_FORE_AFT.read(tops).orNaN()).isCloseTo(95 * Math.PI / 180, within(1e-9));
    }

    @Test
    void handsOnTheDropsAreBelowTheClamp() {
        Geometry drops = Geometry.of(Bikes.whole(), Hands.DROPS);
        assertThat(Measures.HAND_Y.read(drops).orNaN())
                .isCloseTo(Measures.BAR_Y.read(drops).orNaN() - 120, within(1e-9));
    }

    @Test
    void aStemOf80And120DiffersByATenthAtTheHoodsAndAFifthAtTheTops() {
        // common practice: about 10 % at the hoods and about 20 % at the tops
        assertThat(leverRatio(Hands.HOODS)).isCloseTo(1.10, within(0.05));
        assertThat(leverRatio(Hands.TOPS)).isCloseTo(1.20, within(0.07));
    }

    @Test
    void turnPerHandTravelIsTheSineOverWheelbaseTimesLever() {
        Bike bike = Bikes.whole();
        double wheelbaseM = value(bike, Measures.WHEELBASE) / 1000;
        double leverM = value(bike, Measures.HAND_LEVER) / 1000;
        assertThat(value(bike, Measures.TURN_PER_HAND_TRAVEL))
                .isCloseTo(Math.sin(Math.toRadians(70.5)) / (wheelbaseM * leverM), within(1e-9));
    }

    @Test
    void turnPerHandTravelIsTheGroundSteerPerTravelForASmallAngle() {
        Bike bike = Bikes.redrawn(Bikes.whole(), Map.of("ride.steerDeg", 0.01, "ride.leanDeg", 0.0));
        double curvature = 1 / value(bike, Measures.TURN_RADIUS);
        double travelM = value(bike, Measures.HAND_TRAVEL) * 0.01 / 1000;
        assertThat(curvature / travelM).isCloseTo(value(bike, Measures.TURN_PER_HAND_TRAVEL), within(1e-5));
    }

    @Test
    void spacersLeftAreNegativeBeyondTheLimit() {
        assertThat(value(Bikes.whole().with(Inputs.SPACERS, 42), Measures.SPACERS_LEFT))
                .isEqualTo(30.0 - 42);
    }

    @Test
    void steererLeftIsWhatTheStackLeaves() {
        assertThat(value(Bikes.whole(), Measures.STEERER_LEFT)).isEqualTo(190.0 - 102 - 1 - 8 - 15 - 40);
    }

    @Test
    void aLongerPostLeavesMoreInsertionAndLessDepth() {
        Bike longer = Bikes.whole().with(Inputs.POST_LENGTH, 400);
        assertThat(change(longer, Measures.POST_INSERTION_LEFT)).isCloseTo(50, within(1e-9));
        assertThat(change(longer, Measures.POST_DEPTH_LEFT)).isCloseTo(-50, within(1e-9));
    }

    @Test
    void postLengthIsExtensionPlusInsertionPlusWhatIsLeft() {
        Bike bike = Bikes.whole();
        assertThat(value(bike, Measures.POST_EXTENSION) + 80 + value(bike, Measures.POST_INSERTION_LEFT))
                .isCloseTo(350, within(1e-9));
    }

    @Test
    void railLeftShrinksWithTheShiftToEitherSide() {
        double shift = value(Bikes.whole(), Measures.RAIL_SHIFT);
        assertThat(value(Bikes.whole(), Measures.RAIL_LEFT)).isCloseTo(20 - Math.abs(shift), within(1e-9));
        Bike back = Bikes.whole().with(Inputs.CONTACT_SIT_X, -200 - 2 * shift);
        assertThat(value(back, Measures.RAIL_LEFT)).isCloseTo(20 - Math.abs(shift), within(1e-9));
    }

    @Test
    void beyondTheRailsTheRestIsNegativeByHowFar() {
        double shift = value(Bikes.whole(), Measures.RAIL_SHIFT);
        Bike far = Bikes.whole().with(Inputs.CONTACT_SIT_X, -200 - shift + 33);
        assertThat(value(far, Measures.RAIL_LEFT)).isCloseTo(20 - 33, within(1e-9));
    }

    @Test
    void saddleHeightAndSetbackAreThoseOfTheSitPoint() {
        assertThat(value(Bikes.whole(), Measures.SADDLE_HEIGHT)).isCloseTo(Math.hypot(200, 660), within(1e-9));
        assertThat(value(Bikes.whole(), Measures.SADDLE_SETBACK)).isEqualTo(200);
    }

    @Test
    void aDegreeOfSeatAngleIsAbout13MillimetresOfSaddleAt750() {
        // common practice: 13.7 mm at a fixed height
        Bike bike = Bikes.redrawn(
                Bikes.plain(), Map.of("frame.seatAngleDeg", 73.0, "frame.stackMm", 750 * Math.sin(Math.toRadians(73))));
        Bike steeper = bike.with(Inputs.SEAT_ANGLE, 74);
        assertThat(value(bike, Measures.EFFECTIVE_TOP_TUBE) - value(steeper, Measures.EFFECTIVE_TOP_TUBE))
                .isCloseTo(13.7, within(0.3));
    }

    @Test
    void aStraddlePointOffTheTubeHasNoStandover() {
        Bike off = Bikes.whole().with(Inputs.STRADDLE_X, 600);
        assertThat(Measures.STANDOVER.read(Geometry.of(off))).isInstanceOf(Reading.Nowhere.class);
    }

    @Test
    void dropsThatAreNotGivenAreNamed() {
        Bike flat = Bikes.of(numbersWithoutDrops());
        Geometry drops = Geometry.of(flat, Hands.DROPS);
        assertThat(Measures.HAND_X.read(drops)).isInstanceOf(Reading.Lacking.class);
        assertThat(Measures.SADDLE_TO_HAND.read(drops)).isInstanceOf(Reading.Lacking.class);
        assertThat(Measures.SADDLE_TO_HAND.read(drops).reason()).contains("bar reach and bar drop");
    }

    @Test
    void anAbsentGroupIsNamed() {
        lacks(Measures.BAR_X, "stem and spacers");
        lacks(Measures.HAND_X, "a handlebar");
        lacks(Measures.STANDOVER, "the top tube");
        lacks(Measures.SADDLE_HEIGHT, "contact points");
        lacks(Measures.PEDAL_MARGIN_FLAT, "cranks");
        lacks(Measures.FRONT_DROP, "speed, lean and steering angle");
        lacks(Measures.SADDLE_TO_HAND, "contact points");
    }

    @Test
    void anAbsentKeyOfAPresentGroupIsNamed() {
        lacks(Measures.AXLE_TO_CROWN_IMPLIED, "head tube and lower headset stack");
        lacks(Measures.STEERER_LEFT, "steerer length, head tube, lower headset stack and stem and spacers");
    }

    private static void lacks(Measure<Geometry> measure, String what) {
        Reading reading = measure.read(Geometry.of(Bikes.plain()));
        assertThat(reading).as(measure.key()).isInstanceOf(Reading.Lacking.class);
        assertThat(reading.reason()).contains(what);
    }

    private static double change(Bike changed, Measure<Geometry> measure) {
        return value(changed, measure) - value(Bikes.whole(), measure);
    }

    private static double leverRatio(Hands hands) {
        double longer = Measures.HAND_LEVER
                .read(Geometry.of(Bikes.whole().with(Inputs.STEM_LENGTH, 120), hands))
                .orNaN();
        double shorter = Measures.HAND_LEVER
                .read(Geometry.of(Bikes.whole().with(Inputs.STEM_LENGTH, 80), hands))
                .orNaN();
        return longer / shorter;
    }

    private static Map<String, Double> numbersWithoutDrops() {
        Map<String, Double> numbers = new java.util.HashMap<>();
        Inputs.all().stream()
                .filter(Bikes.whole()::has)
                .filter(input -> !input.equals(Inputs.BAR_REACH) && !input.equals(Inputs.BAR_DROP))
                .forEach(input -> numbers.put(input.key(), Bikes.whole().get(input)));
        return numbers;
    }
}
