package rakeline.geometry.toe;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/**
 * One small bike in full. Source of the lengths: two implementations by different hands that agree to 0.001 mm; their
 * angles come from grids and hold to 0.01°.
 */
class ToeWorkedExampleTest {
    private static final Offset<Double> THOUSANDTH = within(0.001);
    private static final Offset<Double> ROUNDED = within(0.00006);
    private static final Offset<Double> HUNDREDTH = within(0.0101);

    private final Pedals pedals = new Pedals(165, 230);
    private final PedalClearance pedal = new PedalClearance(wheel(), pedals);
    private final ToeClearance longShoe = new ToeClearance(wheel(), pedals, shoe(105));
    private final ToeClearance shortShoe = new ToeClearance(wheel(), pedals, shoe(80));

    /** Stack 515, reach 366, head angle 70.5°, offset 47, drop 74, wheels 622 × 28. */
    static FrontWheel wheel() {
        double head = Math.toRadians(70.5);
        double axleX = 366 + (515 - 74) / Math.tan(head) + 47 / Math.sin(head);
        return new FrontWheel(70.5, axleX, 74, 47, 339, 28, 0, 90);
    }

    static Shoe shoe(double toeForwardMm) {
        return new Shoe(toeForwardMm, 30, 25, 20, 0, 0);
    }

    @Test
    void pedalHasItsRoomToTheTyre() {
        assertThat(pedal.pedalToTyre().orElseThrow().valueMm()).isCloseTo(97.4268, ROUNDED);
    }

    @Test
    void pedalIsNearestToTheTyreAtItsSteeringAngle() {
        assertThat(pedal.pedalToTyre().orElseThrow().steerDeg()).isCloseTo(23.62, HUNDREDTH);
    }

    @Test
    void pedalIsNearestToTheTyreAtItsCrankAngle() {
        assertThat(pedal.pedalToTyre().orElseThrow().crankDeg()).isCloseTo(8.78, HUNDREDTH);
    }

    @Test
    void levelPedalHasItsRoomToTheTyre() {
        assertThat(pedal.pedalToTyreLevel().orElseThrow().valueMm()).isCloseTo(100.4505, ROUNDED);
    }

    @Test
    void levelPedalIsNearestToTheTyreAtItsSteeringAngle() {
        assertThat(pedal.pedalToTyreLevel().orElseThrow().steerDeg()).isCloseTo(23.33, HUNDREDTH);
    }

    @Test
    void levelPedalHasItsCrankStraightForward() {
        assertThat(pedal.pedalToTyreLevel().orElseThrow().crankDeg()).isZero();
    }

    @Test
    void longShoeHasToGoBackToClear() {
        assertThat(longShoe.toeRoom().orElseThrow().valueMm()).isCloseTo(-20.446, THOUSANDTH);
    }

    @Test
    void longShoeOverlapsMostAtItsSteeringAngle() {
        assertThat(longShoe.toeRoom().orElseThrow().steerDeg()).isCloseTo(18.07, HUNDREDTH);
    }

    @Test
    void longShoeOverlapsMostAtItsCrankAngle() {
        assertThat(longShoe.toeRoom().orElseThrow().crankDeg()).isCloseTo(4.85, HUNDREDTH);
    }

    @Test
    void longShoeHasAGapWhileSteeringStraight() {
        assertThat(longShoe.toeGapStraightMm()).isCloseTo(56.0837, ROUNDED);
    }

    @Test
    void longShoeTouchesAtItsSteeringAngle() {
        assertThat(longShoe.toeContact().orElseThrow().steerDeg()).isCloseTo(12.2471, ROUNDED);
    }

    @Test
    void longShoeTouchesAtItsCrankAngle() {
        assertThat(longShoe.toeContact().orElseThrow().crankDeg()).isCloseTo(0.15, HUNDREDTH);
    }

    @Test
    void longShoeHasNoGapWhereItFirstTouches() {
        Touch touch = longShoe.toeContact().orElseThrow();
        assertThat(longShoe.toeGapLeast()).isEqualTo(new Place(0, touch.steerDeg(), touch.crankDeg()));
    }

    @Test
    void shortShoeHasRoomToSpare() {
        assertThat(shortShoe.toeRoom().orElseThrow().valueMm()).isCloseTo(4.554, THOUSANDTH);
    }

    @Test
    void shortShoeHasAGapAtAnySteeringAngle() {
        assertThat(shortShoe.toeGapLeast().valueMm()).isCloseTo(4.3303, within(0.0001));
    }

    @Test
    void shortShoeComesNearestAtItsSteeringAngle() {
        assertThat(shortShoe.toeGapLeast().steerDeg()).isCloseTo(17.82, HUNDREDTH);
    }

    @Test
    void shortShoeComesNearestAtItsCrankAngle() {
        assertThat(shortShoe.toeGapLeast().crankDeg()).isCloseTo(4.80, HUNDREDTH);
    }

    @Test
    void shortShoeHasAGapWhileSteeringStraight() {
        assertThat(shortShoe.toeGapStraightMm()).isCloseTo(60.297, THOUSANDTH);
    }

    @Test
    void shortShoeNeverTouches() {
        assertThat(shortShoe.toeContact()).isEmpty();
    }
}
