package rakeline.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static rakeline.geometry.Bikes.value;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rakeline.quantity.Reading;

/** Toe clearance and pedal strike of whole bikes, as a person asks for them. */
class ToeMeasuresTest {
    @ParameterizedTest(name = "crank {0}")
    @CsvSource({
        // derived from 16 CFR 1512.17(d), pedal level, steer grid 0.05°, ±0.01 mm
        "170, 103.4100",
        "175, 98.4100"
    })
    void theLevelPedalHasTheClearanceOfTheRegulation(double crank, double clearance) {
        assertThat(value(regulation(crank), ToeMeasures.PEDAL_TO_TYRE_LEVEL)).isCloseTo(clearance, within(0.01));
    }

    @Test
    void aPedalStrikesTheGroundAtTheLeanOfTheRegulation() {
        // derived from 16 CFR 1512.17(c): tyre section radius 12.5, half thickness 10, y 165
        assertThat(value(regulation(170), ToeMeasures.PEDAL_STRIKE_LEAN)).isCloseTo(29.091182, within(1e-6));
    }

    @Test
    void theWorkedBikeHasTheWorkedPedalClearance() {
        // worked: two implementations by different hands agree to 1e-3
        assertThat(value(Bikes.withFoot(), ToeMeasures.PEDAL_TO_TYRE)).isCloseTo(97.4268, within(1e-3));
        assertThat(value(Bikes.withFoot(), ToeMeasures.PEDAL_TO_TYRE_STEER)).isCloseTo(23.62, within(0.01));
        assertThat(value(Bikes.withFoot(), ToeMeasures.PEDAL_TO_TYRE_CRANK)).isCloseTo(8.78, within(0.01));
    }

    @Test
    void theWorkedBikeHasTheWorkedLevelClearance() {
        assertThat(value(Bikes.withFoot(), ToeMeasures.PEDAL_TO_TYRE_LEVEL)).isCloseTo(100.4505, within(1e-3));
    }

    @Test
    void theWorkedBikeHasTheWorkedToeRoom() {
        assertThat(value(Bikes.withFoot(), ToeMeasures.TOE_ROOM)).isCloseTo(-20.446, within(1e-3));
        assertThat(value(Bikes.withFoot(), ToeMeasures.TOE_ROOM_STEER)).isCloseTo(18.07, within(0.01));
        assertThat(value(Bikes.withFoot(), ToeMeasures.TOE_ROOM_CRANK)).isCloseTo(4.85, within(0.01));
    }

    @Test
    void theWorkedBikeHasTheWorkedContact() {
        assertThat(value(Bikes.withFoot(), ToeMeasures.TOE_CONTACT_STEER)).isCloseTo(12.2471, within(1e-3));
        assertThat(value(Bikes.withFoot(), ToeMeasures.TOE_CONTACT_CRANK)).isCloseTo(0.15, within(0.01));
    }

    @Test
    void theWorkedBikeHasTheWorkedGapStraight() {
        assertThat(value(Bikes.withFoot(), ToeMeasures.TOE_GAP_STRAIGHT)).isCloseTo(56.0837, within(1e-3));
    }

    @Test
    void whereTheyOverlapTheLeastGapIsZero() {
        assertThat(value(Bikes.withFoot(), ToeMeasures.TOE_GAP_LEAST)).isZero();
    }

    @Test
    void theWorkedShorterShoeHasTheWorkedRoomAndGaps() {
        Bike shorter = Bikes.withFoot().with(Inputs.TOE_FORWARD, 80);
        assertThat(value(shorter, ToeMeasures.TOE_ROOM)).isCloseTo(4.554, within(1e-3));
        assertThat(value(shorter, ToeMeasures.TOE_GAP_LEAST)).isCloseTo(4.3303, within(1e-3));
        assertThat(value(shorter, ToeMeasures.TOE_GAP_STRAIGHT)).isCloseTo(60.297, within(1e-3));
    }

    @Test
    void theWorkedShorterShoeNeverTouches() {
        Bike shorter = Bikes.withFoot().with(Inputs.TOE_FORWARD, 80);
        assertThat(ToeMeasures.TOE_CONTACT_STEER.read(Geometry.of(shorter))).isInstanceOf(Reading.Nowhere.class);
    }

    @Test
    void theFlatRulesAreFrontCentreMinusRadiusCrankAndToe() {
        double flat = value(Bikes.withFoot(), Measures.FRONT_CENTRE) - 339 - 165;
        assertThat(value(Bikes.withFoot(), Measures.PEDAL_MARGIN_FLAT)).isCloseTo(flat, within(1e-9));
        assertThat(value(Bikes.withFoot(), Measures.TOE_MARGIN_FLAT)).isCloseTo(flat - 105, within(1e-9));
    }

    @Test
    void theContactSpeedIsThatOfTheSteadyTurnWithTheContactsSteer() {
        Bike leaning = Bikes.redrawn(Bikes.withFoot(), Map.of("ride.leanDeg", 10.0, "ride.steerDeg", 0.0));
        double steer = value(leaning, ToeMeasures.TOE_CONTACT_STEER);
        double radiusM = value(leaning.with(Inputs.RIDE_STEER, steer), Measures.TURN_RADIUS);
        double speedMps = Math.sqrt(9.81 * Math.tan(Math.toRadians(10)) * radiusM);
        assertThat(value(leaning, ToeMeasures.TOE_CONTACT_SPEED)).isCloseTo(3.6 * speedMps, within(1e-9));
    }

    @Test
    void theContactSpeedAgreesWithTheTableOfSteadyTurns() {
        // derived: wheelbase 0.985 m, head angle 71, lean 10°: steer 12.79° at 10 km/h
        Bike bike = Bikes.reaching(Bikes.withFoot().with(Inputs.HEAD_ANGLE, 71), Measures.WHEELBASE, 985);
        Bike touching = touchingAt(12.79, bike.with(Inputs.RIDE_LEAN, 10));
        assertThat(value(touching, ToeMeasures.TOE_CONTACT_STEER)).isCloseTo(12.79, within(1e-6));
        assertThat(value(touching, ToeMeasures.TOE_CONTACT_SPEED)).isCloseTo(10, within(0.003));
    }

    @Test
    void withoutLeanThereIsNoSteadyTurnToTouchIn() {
        Bike upright = Bikes.withFoot().with(Inputs.RIDE_LEAN, 0);
        assertThat(ToeMeasures.TOE_CONTACT_SPEED.read(Geometry.of(upright))).isInstanceOf(Reading.Nowhere.class);
    }

    @Test
    void theRearTyreTakesNoRoomFromTheToes() {
        Bike held = Bikes.withFoot().with("wheels.both.radiusMm", 339);
        Bike wider = Bikes.redrawn(held, Map.of("wheels.rear.tyreMm", 50.0, "wheels.rear.radiusMm", 339.0));
        assertThat(value(wider, ToeMeasures.TOE_ROOM)).isEqualTo(value(held, ToeMeasures.TOE_ROOM));
    }

    @Test
    void aMudguardTakesAtLeastItsGapFromTheLevelPedal() {
        Bike guarded = Bikes.withFoot().with("wheels.front.mudguardGapMm", 12);
        double taken = value(Bikes.withFoot(), ToeMeasures.PEDAL_TO_TYRE_LEVEL)
                - value(guarded, ToeMeasures.PEDAL_TO_TYRE_LEVEL);
        assertThat(taken).isBetween(12.0, 24.0);
    }

    @Test
    void aBarThatCannotTurnAsFarIsNearestAtItsLimit() {
        // worked: the pedal is nearest at 23.62° where the bar turns as far
        Bike limited = Bikes.withFoot().with(Inputs.STEERING_LIMIT, 22.5);
        assertThat(value(limited, ToeMeasures.PEDAL_TO_TYRE_STEER)).isCloseTo(22.5, within(0.01));
    }

    @Test
    void aBikeWithoutCranksSaysWhichGroupItNeeds() {
        assertThat(ToeMeasures.TOE_ROOM.read(Geometry.of(Bikes.plain())).reason())
                .contains("cranks");
    }

    @Test
    void aBikeWithoutAShoeSaysWhichGroupItNeeds() {
        Bike noShoe = Bikes.redrawn(Bikes.plain(), Map.of("crank.lengthMm", 165.0, "crank.stanceWidthMm", 230.0));
        assertThat(ToeMeasures.TOE_ROOM.read(Geometry.of(noShoe)).reason()).contains("a shoe");
    }

    /** The regulation's drawing: 580 mm from BB to the axle, horizontal; BB 270 mm up; pedal centre 120 mm out. */
    private static Bike regulation(double crank) {
        Bike front = Bikes.redrawn(
                Bikes.front(73, 340, 45),
                Map.of(
                        "frame.bbDropMm", 70.0,
                        "wheels.both.tyreMm", 25.0,
                        "wheels.both.radiusMm", 340.0,
                        "crank.lengthMm", crank,
                        "crank.stanceWidthMm", 240.0));
        return Bikes.reaching(front, Measures.FRONT_CENTRE_X, 580);
    }

    /** With a shoe as long as it takes to touch first at that steering angle. */
    private static Bike touchingAt(double steer, Bike bike) {
        double shorter = 60;
        double longer = 140;
        while (longer - shorter > 1e-9) {
            double middle = (shorter + longer) / 2;
            double contact = value(bike.with(Inputs.TOE_FORWARD, middle), ToeMeasures.TOE_CONTACT_STEER);
            if (contact < steer) {
                longer = middle;
            } else {
                shorter = middle;
            }
        }
        return bike.with(Inputs.TOE_FORWARD, longer);
    }
}
