package rakeline.geometry.toe;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.assertj.core.data.Offset;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What must hold of every bike, tried on seeded ones of all kinds. */
class ToePropertiesTest {
    private static final Offset<Double> EXACT = within(1e-6);
    private static final double SCALE = 1.75;
    private static final double NEVER = Double.POSITIVE_INFINITY;

    static Stream<ToeCase> bikes() {
        return LongStream.range(0, 42).mapToObj(ToeCase::seeded);
    }

    static Stream<ToeCase> bikesThatMeetTheirWheel() {
        return bikes().filter(bike -> bike.toe().toeRoom().isPresent());
    }

    @ParameterizedTest
    @MethodSource("bikes")
    void roomGrowsWithEveryLength(ToeCase bike) {
        assertThat(orFar(bike.scaled(SCALE).toe().toeRoom()))
                .isCloseTo(SCALE * orFar(bike.toe().toeRoom()), EXACT);
    }

    @ParameterizedTest
    @MethodSource("bikes")
    void pedalClearanceGrowsWithEveryLength(ToeCase bike) {
        assertThat(orFar(bike.scaled(SCALE).pedal().pedalToTyre()))
                .isCloseTo(SCALE * orFar(bike.pedal().pedalToTyre()), EXACT);
    }

    @ParameterizedTest
    @MethodSource("bikes")
    void gapGrowsWithEveryLength(ToeCase bike) {
        assertThat(bike.scaled(SCALE).toe().toeGapLeast().valueMm())
                .isCloseTo(SCALE * bike.toe().toeGapLeast().valueMm(), EXACT);
    }

    @ParameterizedTest
    @MethodSource("bikes")
    void contactStaysAtItsAngleWhenEveryLengthGrows(ToeCase bike) {
        assertThat(steerOrNever(bike.scaled(SCALE))).isCloseTo(steerOrNever(bike), EXACT);
    }

    @ParameterizedTest
    @MethodSource("bikes")
    void roomIsFrontCentreToSpare(ToeCase bike) {
        assertThat(orFar(bike.axleAhead(13).toe().toeRoom()))
                .isCloseTo(orFar(bike.toe().toeRoom()) + 13, EXACT);
    }

    @ParameterizedTest
    @MethodSource("bikesThatMeetTheirWheel")
    void axleMovedBackByTheRoomLeavesNone(ToeCase bike) {
        ToeCase touching = bike.axleAhead(-orFar(bike.toe().toeRoom()));
        assertThat(orFar(touching.toe().toeRoom())).isCloseTo(0, EXACT);
    }

    @ParameterizedTest
    @MethodSource("bikes")
    void mudguardTakesItsWidthFromTheGap(ToeCase bike) {
        double without = bike.toe().toeGapLeast().valueMm();
        assertThat(bike.guarded(3).toe().toeGapLeast().valueMm()).isCloseTo(Math.max(0, without - 3), EXACT);
    }

    @ParameterizedTest
    @MethodSource("bikes")
    void mudguardNeverGivesRoom(ToeCase bike) {
        assertThat(orFar(bike.guarded(3).toe().toeRoom()))
                .isLessThanOrEqualTo(orFar(bike.toe().toeRoom()) + 1e-6);
    }

    @ParameterizedTest
    @MethodSource("bikes")
    void mudguardNeverDelaysContact(ToeCase bike) {
        assertThat(steerOrNever(bike.guarded(3))).isLessThanOrEqualTo(steerOrNever(bike) + 1e-6);
    }

    @ParameterizedTest
    @MethodSource("bikes")
    void lessSteeringNeverTakesRoom(ToeCase bike) {
        assertThat(orFar(bike.limited(0.6).toe().toeRoom()))
                .isGreaterThanOrEqualTo(orFar(bike.toe().toeRoom()) - 1e-6);
    }

    @ParameterizedTest
    @MethodSource("bikes")
    void lessSteeringNeverNarrowsTheGap(ToeCase bike) {
        assertThat(bike.limited(0.6).toe().toeGapLeast().valueMm())
                .isGreaterThanOrEqualTo(bike.toe().toeGapLeast().valueMm() - 1e-6);
    }

    @ParameterizedTest
    @MethodSource("bikes")
    void contactWithinLessSteeringIsTheSame(ToeCase bike) {
        Optional<Touch> less = bike.limited(0.6).toe().toeContact();
        double expected = less.isPresent() ? steerOrNever(bike) : NEVER;
        assertThat(less.map(Touch::steerDeg).orElse(NEVER)).isCloseTo(expected, EXACT);
    }

    private static double orFar(Optional<Place> place) {
        return place.map(Place::valueMm).orElse(NEVER);
    }

    private static double steerOrNever(ToeCase bike) {
        return bike.toe().toeContact().map(Touch::steerDeg).orElse(NEVER);
    }
}
