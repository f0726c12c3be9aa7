package rakeline.geometry.toe;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every number of some two hundred seeded bikes against brute force. A length must be no greater than brute force finds,
 * and true at the place it is claimed for: so it is the least. Angles must agree to 0.01° unless brute force says the
 * same length at both places to a millionth of a millimetre, where the minimum is a tie or too flat to have one place.
 */
@Tag("slow")
class ToeAgainstBruteForceTest {
    private static final Offset<Double> LENGTH_MM = within(0.01);
    private static final double FLAT_MM = 1e-6;
    private static final double ANGLE_DEG = 0.01;
    private static final double ANGLE = Math.toRadians(ANGLE_DEG);
    private static final int STEERS = 31;
    private static final int RING = 72;

    static Stream<ToeCase> bikes() {
        return LongStream.range(1000, 1203).mapToObj(ToeCase::seeded);
    }

    @ParameterizedTest
    @MethodSource("bikes")
    void pedalToTyreIsTheLeast(ToeCase bike) {
        assertLeast(bike, BruteForce.Length.PEDAL, bike.pedal().pedalToTyre());
    }

    @ParameterizedTest
    @MethodSource("bikes")
    void levelPedalToTyreIsTheLeast(ToeCase bike) {
        assertLeast(bike, BruteForce.Length.LEVEL, bike.pedal().pedalToTyreLevel());
    }

    @ParameterizedTest
    @MethodSource("bikes")
    void toeRoomIsTheLeast(ToeCase bike) {
        assertLeast(bike, BruteForce.Length.ROOM, bike.toe().toeRoom());
    }

    static Stream<ToeCase> fewBikes() {
        return LongStream.range(1000, 1014).mapToObj(ToeCase::seeded);
    }

    @ParameterizedTest
    @MethodSource("fewBikes")
    void theOtherFootHasTheSameRoomWithTheBarTurnedTheOtherWay(ToeCase bike) {
        BruteForce left = new BruteForce(bike.wheel(), bike.pedals(), bike.shoe(), BruteForce.Length.ROOM, -1);
        double limit = Math.toRadians(bike.wheel().steeringLimitDeg());
        double least = left.least(-limit, 0, STEERS, STEERS, RING).value();
        Optional<Place> room = bike.toe().toeRoom();
        assertThat(Double.isInfinite(least)).isEqualTo(room.isEmpty());
        room.ifPresent(place -> assertThat(place.valueMm()).isCloseTo(least, LENGTH_MM));
    }

    @ParameterizedTest
    @MethodSource("bikes")
    void toeGapIsTheLeast(ToeCase bike) {
        Place least = bike.toe().toeGapLeast();
        if (least.valueMm() > 0) {
            assertLeast(bike, BruteForce.Length.GAP, Optional.of(least));
        } else {
            assertThat(bike.toe().toeContact()).isPresent();
        }
    }

    @ParameterizedTest
    @MethodSource("bikes")
    void toeGapStraightIsTheLeast(ToeCase bike) {
        double expected =
                bike.bruteForce(BruteForce.Length.GAP).least(0, 0, 1, 121, 240).value();
        assertThat(bike.toe().toeGapStraightMm()).isCloseTo(Math.max(0, expected), LENGTH_MM);
    }

    @ParameterizedTest
    @MethodSource("bikes")
    void nothingTouchesBeforeContact(ToeCase bike) {
        double end = bike.toe()
                .toeContact()
                .map(touch -> Math.toRadians(touch.steerDeg()) - ANGLE)
                .orElse(bike.wheel().steeringLimit());
        double before = end < 0 ? 1 : search(bike, BruteForce.Length.GAP, end).value();
        assertThat(before).isPositive();
    }

    @ParameterizedTest
    @MethodSource("bikes")
    void toeTouchesAtContact(ToeCase bike) {
        BruteForce gap = bike.bruteForce(BruteForce.Length.GAP);
        double there = bike.toe()
                .toeContact()
                .map(touch -> gap.at(Math.toRadians(touch.steerDeg()), Math.toRadians(touch.crankDeg())))
                .orElse(0.0);
        assertThat(there).isLessThan(1e-4);
    }

    private static void assertLeast(ToeCase bike, BruteForce.Length length, Optional<Place> claimed) {
        BruteForce.Found found = search(bike, length, bike.wheel().steeringLimit());
        if (claimed.isEmpty()) {
            assertThat(found.value()).isInfinite();
            return;
        }
        Place place = claimed.orElseThrow();
        double there = bike.bruteForce(length).at(Math.toRadians(place.steerDeg()), Math.toRadians(place.crankDeg()));
        assertThat(there).isCloseTo(place.valueMm(), LENGTH_MM);
        assertThat(place.valueMm()).isLessThan(found.value() + LENGTH_MM.value);
        assertThat(apart(place, found) < ANGLE_DEG || there < found.value() + FLAT_MM)
                .as("%s found at %s", place, found)
                .isTrue();
    }

    private static BruteForce.Found search(ToeCase bike, BruteForce.Length length, double end) {
        int cranks = length == BruteForce.Length.GAP ? 49 : 25;
        return bike.bruteForce(length).least(0, end, STEERS, cranks, RING);
    }

    private static double apart(Place place, BruteForce.Found found) {
        double steer = place.steerDeg() - Math.toDegrees(found.steer());
        double crank = place.crankDeg() - Math.toDegrees(found.crank());
        return Math.max(Math.abs(steer), Math.abs(crank));
    }
}
