package rakeline.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static rakeline.geometry.Bikes.value;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rakeline.quantity.Reading;

/**
 * Trail, flop, drop and ground steer against values of closed forms that were proved by brute force elsewhere, and the
 * steady turn of Meijaard, Papadopoulos, Ruina and Schwab 2007 in its kinematic form.
 */
class SideViewTest {
    private static final double PRINTED = 1e-6;

    @ParameterizedTest(name = "head {0}, radius {1}, offset {2}")
    @CsvSource({
        // derived: trail, mechanical trail, flop, crossing in % of the radius
        "73, 340, 45, 56.892303, 54.406380, 15.906886, 54.7313",
        "72, 336, 50, 56.599907, 53.829710, 16.634295, 51.8442"
    })
    void aFrontEndHasTheDerivedTrailFlopAndCrossing(
            double head, double radius, double offset, double trail, double mechanical, double flop, double crossing) {
        Bike bike = Bikes.front(head, radius, offset);
        assertThat(value(bike, Measures.TRAIL)).isCloseTo(trail, within(PRINTED));
        assertThat(value(bike, Measures.MECHANICAL_TRAIL)).isCloseTo(mechanical, within(PRINTED));
        assertThat(value(bike, Measures.WHEEL_FLOP)).isCloseTo(flop, within(PRINTED));
        assertThat(value(bike, Measures.AXIS_CROSSING)).isCloseTo(crossing, within(1e-4));
    }

    @ParameterizedTest(name = "head {0}, steer {3}")
    @CsvSource({
        // derived
        "73, 340, 45, 5, 0.060338",
        "73, 340, 45, 10, 0.238590",
        "73, 340, 45, 20, 0.910722",
        "73, 340, 45, 40, 2.980076",
        "73, 340, 45, 90, 1.699656",
        "72, 336, 50, 5, 0.063088",
        "72, 336, 50, 10, 0.249358",
        "72, 336, 50, 20, 0.950094",
        "72, 336, 50, 40, 3.080295",
        "72, 336, 50, 90, 0.994161"
    })
    void theFrontEndComesDownByTheDerivedDrop(double head, double radius, double offset, double steer, double drop) {
        Bike bike = Bikes.front(head, radius, offset).with(Inputs.RIDE_STEER, steer);
        assertThat(value(bike, Measures.FRONT_DROP)).isCloseTo(drop, within(PRINTED));
    }

    @ParameterizedTest(name = "steer {0}, lean {1}")
    @CsvSource({
        // derived, head angle 73
        "10, 0, 9.57131037",
        "30, 0, 28.90409042",
        "10, 20, 10.36348073"
    })
    void theTracksStandAtTheDerivedGroundSteer(double steer, double lean, double groundSteer) {
        Bike bike = Bikes.redrawn(Bikes.front(73, 340, 45), Map.of("ride.steerDeg", steer, "ride.leanDeg", lean));
        assertThat(value(bike, Measures.GROUND_STEER)).isCloseTo(groundSteer, within(1e-8));
    }

    @ParameterizedTest(name = "{0} km/h at {1}°")
    @CsvSource({
        // derived: wheelbase 0.985 m, head angle 71; steer printed to 0.01°
        "10, 10, 12.79",
        "8, 10, 19.40",
        "5, 5, 24.50"
    })
    void theSteerOfASteadyTurnGivesTheRadiusOfItsSpeedAndLean(double speedKmh, double lean, double steer) {
        Bike bike = Bikes.reaching(Bikes.front(71, 340, 45), Measures.WHEELBASE, 985);
        double speedMps = speedKmh / 3.6;
        double radiusM = speedMps * speedMps / (9.81 * Math.tan(Math.toRadians(lean)));
        assertThat(turnRadius(bike, steer - 0.005, lean)).isGreaterThan(radiusM);
        assertThat(turnRadius(bike, steer + 0.005, lean)).isLessThan(radiusM);
    }

    @ParameterizedTest(name = "lean {0}")
    @CsvSource({"5, 7", "10, 10", "15, 12", "20, 13.5"})
    void aTurnOf13AndAHalfDegreesOfSteerIsRiddenAtTheSpeedsOfCommonPractice(double lean, double speedKmh) {
        // common practice
        double radiusM = turnRadius(Bikes.plain(), 13.5, lean);
        double speedMps = Math.sqrt(9.81 * Math.tan(Math.toRadians(lean)) * radiusM);
        assertThat(speedMps * 3.6).isCloseTo(speedKmh, within(0.5));
    }

    @Test
    void aLeaningBikeAt13AndAHalfDegreesTurnsAboutFourMetresTwenty() {
        // common practice
        assertThat(turnRadius(Bikes.plain(), 13.5, 10)).isCloseTo(4.2, within(0.1));
    }

    @Test
    void theDropAtASmallAngleIsHalfTheFlopTimesTheAngleSquared() {
        Bike bike = Bikes.front(73, 340, 45);
        double drop = value(bike.with(Inputs.RIDE_STEER, 0.1), Measures.FRONT_DROP);
        double angle = Math.toRadians(0.1);
        assertThat(2 * drop / (angle * angle)).isCloseTo(value(bike, Measures.WHEEL_FLOP), within(1e-3));
    }

    @Test
    void straightAheadHasNoTurnRadius() {
        Bike bike = Bikes.plain().with(Inputs.RIDE_STEER, 0);
        assertThat(Measures.TURN_RADIUS.read(Geometry.of(bike))).isInstanceOf(Reading.Nowhere.class);
    }

    @Test
    void aBikeWithoutRidingConditionsLacksTheTurnRadius() {
        assertThat(Measures.TURN_RADIUS.read(Geometry.of(Bikes.plain())).reason())
                .contains("speed, lean and steering angle");
    }

    @Test
    void bottomBracketHeightFollowsTheRearWheel() {
        Bike bike = Bikes.plain().with("wheels.rear.radiusMm", 330);
        assertThat(value(bike, Measures.BB_HEIGHT)).isEqualTo(330.0 - 74);
    }

    @Test
    void theFrontCentreIsTheHypotenuseOfItsParts() {
        double x = value(Bikes.plain(), Measures.FRONT_CENTRE_X);
        assertThat(value(Bikes.plain(), Measures.FRONT_CENTRE)).isCloseTo(Math.hypot(x, 74), within(1e-9));
    }

    private static double turnRadius(Bike bike, double steer, double lean) {
        return value(Bikes.redrawn(bike, Map.of("ride.steerDeg", steer, "ride.leanDeg", lean)), Measures.TURN_RADIUS);
    }
}
