package rakeline.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.function.ToDoubleFunction;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rakeline.quantity.Measure;

/** Closed forms against vectors, on seeded bikes. */
class BruteForceTest {
    private static final double CLOSE = 1e-7;

    static LongStream seeds() {
        return RandomBikes.seeds(100);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void theSideViewIsThatOfLinesThatMeet(long seed) {
        Bike bike = RandomBikes.seeded(seed);
        agree(bike, Measures.BB_HEIGHT, BruteBike::bbHeight, CLOSE);
        agree(bike, Measures.FRONT_CENTRE, BruteBike::frontCentre, CLOSE);
        agree(bike, Measures.FRONT_CENTRE_X, BruteBike::frontCentreX, CLOSE);
        agree(bike, Measures.WHEELBASE, BruteBike::wheelbase, CLOSE);
        agree(bike, Measures.TRAIL, BruteBike::trail, CLOSE);
        agree(bike, Measures.MECHANICAL_TRAIL, BruteBike::mechanicalTrail, CLOSE);
        agree(bike, Measures.AXIS_CROSSING, BruteBike::axisCrossing, CLOSE);
        agree(bike, Measures.AXLE_TO_CROWN_IMPLIED, BruteBike::axleToCrown, CLOSE);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void theFrontDropIsTheHeightOfTheTurnedWheelsLowestPoint(long seed) {
        Bike bike = RandomBikes.seeded(seed);
        double steer = Math.toRadians(bike.get(Inputs.RIDE_STEER));
        agree(bike, Measures.FRONT_DROP, brute -> brute.frontDrop(steer), CLOSE);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void theFlopIsTheCurvatureOfThatHeight(long seed) {
        agree(RandomBikes.seeded(seed), Measures.WHEEL_FLOP, BruteBike::wheelFlop, 1e-3);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void theGroundSteerIsTheAngleOfTheTracksOnTheGround(long seed) {
        agree(RandomBikes.seeded(seed), Measures.GROUND_STEER, BruteBike::groundSteer, CLOSE);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void theTurnRadiusPutsTheRearContactBesideTheCentre(long seed) {
        agree(
                RandomBikes.seeded(seed),
                Measures.TURN_RADIUS,
                brute -> brute.wheelbase() / Math.tan(Math.toRadians(brute.groundSteer())) / 1000,
                CLOSE);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void theBarIsWhereItsPartsAddUp(long seed) {
        Bike bike = RandomBikes.seeded(seed);
        agree(bike, Measures.BAR_X, brute -> brute.clamp().x(), CLOSE);
        agree(bike, Measures.BAR_Y, brute -> brute.clamp().y(), CLOSE);
        agree(bike, Measures.HAND_X, brute -> brute.hood().x(), CLOSE);
        agree(bike, Measures.HAND_Y, brute -> brute.hood().y(), CLOSE);
        agree(
                bike,
                Measures.SADDLE_TO_BAR,
                brute -> brute.number("contact.sitYMm") - brute.clamp().y(),
                CLOSE);
        agree(bike, Measures.SADDLE_TO_HAND, brute -> brute.hood().x() - brute.number("contact.sitXMm"), CLOSE);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void theHandsTravelAsTheTurnedPointDoes(long seed) {
        Bike bike = RandomBikes.seeded(seed);
        agree(bike, Measures.HAND_LEVER, brute -> brute.lever(brute.hood()), CLOSE);
        agree(
                bike,
                Measures.HAND_TRAVEL,
                brute -> brute.travelPerDegree(brute.hood()).length(),
                CLOSE);
        agree(
                bike,
                Measures.HAND_TRAVEL_SIDEWAYS,
                brute -> -brute.travelPerDegree(brute.hood()).z(),
                CLOSE);
        agree(
                bike,
                Measures.HAND_TRAVEL_FORE_AFT,
                brute -> Math.hypot(
                        brute.travelPerDegree(brute.hood()).x(),
                        brute.travelPerDegree(brute.hood()).y()),
                CLOSE);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void handsOnTheDropsTravelAsTheirPointDoes(long seed) {
        Bike bike = RandomBikes.seeded(seed);
        double lever = Measures.HAND_LEVER.read(Geometry.of(bike, Hands.DROPS)).orNaN();
        BruteBike brute = new BruteBike(bike);
        assertThat(lever).isCloseTo(brute.lever(brute.drops()), within(CLOSE));
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void theEffectiveTopTubeEndsWhereTheLevelLineMeetsTheSeatAxis(long seed) {
        agree(RandomBikes.seeded(seed), Measures.EFFECTIVE_TOP_TUBE, BruteBike::effectiveTopTube, CLOSE);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void theStandoverIsTheHeightOfTheTubesEdge(long seed) {
        agree(RandomBikes.seeded(seed), Measures.STANDOVER, BruteBike::standover, CLOSE);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void postAndRailsPutTheSitPointWhereItIsWanted(long seed) {
        Bike bike = RandomBikes.seeded(seed);
        agree(bike, Measures.RAIL_SHIFT, BruteBike::railShift, CLOSE);
        agree(bike, Measures.POST_EXTENSION, BruteBike::postExtension, CLOSE);
    }

    private static void agree(
            Bike bike, Measure<Geometry> measure, ToDoubleFunction<BruteBike> brute, double tolerance) {
        assertThat(Bikes.value(bike, measure))
                .as(measure.key())
                .isCloseTo(brute.applyAsDouble(new BruteBike(bike)), within(tolerance));
    }
}
