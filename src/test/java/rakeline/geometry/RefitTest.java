package rakeline.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static rakeline.geometry.Bikes.value;

import java.util.Map;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import rakeline.quantity.Input;
import rakeline.quantity.Refusal;

/** Another fork, wheel or tyre on a frame that stays rigid. */
class RefitTest {
    private static final double CLOSE = 1e-9;

    static LongStream seeds() {
        return RandomBikes.seeds(60);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void theSameForkAndWheelsAreTheIdentity(long seed) {
        Bike bike = RandomBikes.seeded(seed);
        Refit same = refit(
                bike,
                Map.of(
                        "fork.axleToCrownMm", bike.get(Inputs.AXLE_TO_CROWN),
                        "fork.offsetMm", bike.get(Inputs.FORK_OFFSET),
                        "fork.sagMm", bike.get(Inputs.FORK_SAG),
                        "wheels.front.tyreMm", bike.get(Inputs.FRONT_TYRE),
                        "wheels.rear.radiusMm", bike.get(Inputs.REAR_RADIUS)));
        assertThat(value(bike, Measures.AXLE_TO_CROWN_IMPLIED)).isNotEqualTo(bike.get(Inputs.AXLE_TO_CROWN));
        assertThat(same.bike()).isEqualTo(bike);
        assertThat(same.pitchDeg()).isZero();
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void theFrameStaysRigid(long seed) {
        Bike before = RandomBikes.seeded(seed);
        Bike after = refit(before, another()).bike();
        assertThat(new Rigid(after).distances())
                .usingElementComparator((a, b) -> Math.abs(a - b) < 1e-7 ? 0 : Double.compare(a, b))
                .containsExactlyElementsOf(new Rigid(before).distances());
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void theAnglesOfTheFrameTurnTogether(long seed) {
        Bike before = RandomBikes.seeded(seed);
        Refit refit = refit(before, another());
        assertThat(turned(before, refit.bike(), Inputs.HEAD_ANGLE)).isCloseTo(-refit.pitchDeg(), within(CLOSE));
        assertThat(turned(before, refit.bike(), Inputs.SEAT_TUBE_ANGLE)).isCloseTo(-refit.pitchDeg(), within(CLOSE));
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void thereAndBackAgainReturnsEveryNumber(long seed) {
        Bike before = RandomBikes.seeded(seed);
        Bike there = refit(before, another()).bike();
        Bike back = refit(
                        there,
                        Map.of(
                                "fork.axleToCrownMm", before.get(Inputs.AXLE_TO_CROWN),
                                "fork.offsetMm", before.get(Inputs.FORK_OFFSET),
                                "wheels.front.radiusMm", before.get(Inputs.FRONT_RADIUS)))
                .bike();
        for (Input input : Inputs.all()) {
            if (before.has(input)) {
                assertThat(back.get(input)).as(input.key()).isCloseTo(before.get(input), within(1e-7));
            }
        }
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void aForkThatIsLongerByAsMuchHasTheNewImpliedLength(long seed) {
        Bike drawn = RandomBikes.seeded(seed);
        Bike before = drawn.with(Inputs.AXLE_TO_CROWN, value(drawn, Measures.AXLE_TO_CROWN_IMPLIED));
        double longer = before.get(Inputs.AXLE_TO_CROWN) + 17;
        Bike after = refit(before, Map.of("fork.axleToCrownMm", longer, "fork.offsetMm", 51.0))
                .bike();
        assertThat(value(after, Measures.AXLE_TO_CROWN_IMPLIED)).isCloseTo(longer, within(1e-7));
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void anotherWheelLeavesTheForkAsLongAsItIs(long seed) {
        Bike before = RandomBikes.seeded(seed);
        Bike after = refit(before, Map.of("wheels.front.radiusMm", 300.0, "wheels.rear.radiusMm", 350.0))
                .bike();
        assertThat(value(after, Measures.AXLE_TO_CROWN_IMPLIED))
                .isCloseTo(value(before, Measures.AXLE_TO_CROWN_IMPLIED), within(1e-7));
    }

    @Test
    void sagBringsTheFrontEndDown() {
        Bike before = Bikes.whole();
        Refit refit = refit(before, Map.of("fork.sagMm", 25.0));
        assertThat(refit.pitchDeg()).isNegative();
        assertThat(refit.bike().get(Inputs.HEAD_ANGLE)).isGreaterThan(before.get(Inputs.HEAD_ANGLE));
    }

    @Test
    void sagLeavesTheUnsaggedForkAsLongAsItIs() {
        Bike after = refit(Bikes.whole(), Map.of("fork.sagMm", 25.0)).bike();
        assertThat(value(after, Measures.AXLE_TO_CROWN_IMPLIED))
                .isCloseTo(value(Bikes.whole(), Measures.AXLE_TO_CROWN_IMPLIED), within(1e-7));
    }

    @Test
    void aLongerForkThatSagsByAsMuchAlongTheAxisLeavesTheFrameWhereItWas() {
        double offset = Bikes.whole().get(Inputs.FORK_OFFSET);
        double along = Math.sqrt(377 * 377 - offset * offset);
        double longer = Math.hypot(along + 20, offset);
        Refit refit = refit(Bikes.whole(), Map.of("fork.axleToCrownMm", longer, "fork.sagMm", 20.0));
        assertThat(refit.pitchDeg()).isCloseTo(0, within(CLOSE));
    }

    @Test
    void sagNeedsNoForkLength() {
        assertThat(refit(Bikes.plain(), Map.of("fork.sagMm", 10.0)).bike().get(Inputs.FORK_SAG))
                .isEqualTo(10);
    }

    @Test
    void tyresOfBothWheelsRaiseTheBikeWithoutTurningIt() {
        Refit refit = refit(Bikes.whole(), Map.of("wheels.both.tyreMm", 38.0));
        assertThat(refit.pitchDeg()).isCloseTo(0, within(CLOSE));
        assertThat(value(refit.bike(), Measures.BB_HEIGHT))
                .isCloseTo(value(Bikes.whole(), Measures.BB_HEIGHT) + 10, within(CLOSE));
    }

    @Test
    void theSeatAngleIsReadAgainAtTheSameHeight() {
        Bike after = refit(Bikes.plain(), Map.of("wheels.front.tyreMm", 50.0)).bike();
        assertThat(after.get(Inputs.SEAT_ANGLE_AT)).isEqualTo(Bikes.plain().get(Inputs.STACK));
    }

    @Test
    void theSeatAngleOfATubeThroughBottomBracketTurnsWithTheFrame() {
        Refit refit = refit(Bikes.plain(), Map.of("wheels.front.tyreMm", 50.0));
        assertThat(refit.bike().get(Inputs.SEAT_ANGLE)).isCloseTo(74 - refit.pitchDeg(), within(CLOSE));
    }

    @Test
    void theHandTurnsRigidlyWithTheBar() {
        Bike before = Bikes.whole();
        Refit refit = refit(before, Map.of("wheels.front.tyreMm", 50.0));
        double pitch = Math.toRadians(refit.pitchDeg());
        double x = value(before, Measures.HAND_X);
        double y = value(before, Measures.HAND_Y);
        assertThat(value(refit.bike(), Measures.HAND_X))
                .isCloseTo(x * Math.cos(pitch) - y * Math.sin(pitch), within(CLOSE));
        assertThat(value(refit.bike(), Measures.HAND_Y))
                .isCloseTo(x * Math.sin(pitch) + y * Math.cos(pitch), within(CLOSE));
    }

    @Test
    void theDropsTurnRigidlyWithTheBar() {
        Bike before = Bikes.whole();
        Refit refit = refit(before, Map.of("wheels.front.tyreMm", 50.0));
        assertThat(drops(refit.bike())).isCloseTo(drops(before), within(CLOSE));
    }

    @Test
    void theContactPointsStayAndTheirMissIsReported() {
        Refit refit = refit(Bikes.whole(), Map.of("wheels.front.tyreMm", 50.0));
        double pitch = Math.toRadians(refit.pitchDeg());
        assertThat(refit.bike().get(Inputs.CONTACT_SIT_X)).isEqualTo(-200);
        assertThat(refit.sitMiss().x()).isCloseTo(-200 * Math.cos(pitch) - 660 * Math.sin(pitch) + 200, within(CLOSE));
        assertThat(refit.sitMiss().y()).isCloseTo(-200 * Math.sin(pitch) + 660 * Math.cos(pitch) - 660, within(CLOSE));
        assertThat(refit.handMiss().length()).isGreaterThan(1);
    }

    @Test
    void noseUpMovesTheSitPointBack() {
        Refit refit = refit(Bikes.whole(), Map.of("wheels.front.tyreMm", 50.0));
        assertThat(refit.pitchDeg()).isPositive();
        assertThat(refit.sitMiss().x()).isNegative();
    }

    @Test
    void whatIsMountedMayBeExchangedInTheSameGo() {
        Refit refit = refit(Bikes.whole(), Map.of("fork.sagMm", 10.0, "cockpit.stemLengthMm", 70.0));
        assertThat(refit.bike().get(Inputs.STEM_LENGTH)).isEqualTo(70);
    }

    @ParameterizedTest
    @ValueSource(strings = {"frame.headAngleDeg", "frame.stackMm", "frame.headTubeMm", "fork.lowerStackMm"})
    void aNumberOfTheFrameIsRefused(String key) {
        double same = Bikes.whole().get(key);
        assertThatThrownBy(() -> refit(Bikes.whole(), Map.of(key, same)))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining(key)
                .hasMessageContaining("rigid");
    }

    @Test
    void anotherForkIsRefusedWhereTheLengthOfThePresentOneIsUnknown() {
        assertThatThrownBy(() -> refit(Bikes.plain(), Map.of("fork.offsetMm", 50.0)))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("fork.axleToCrownMm");
        assertThatThrownBy(() -> refit(Bikes.plain(), Map.of("fork.axleToCrownMm", 380.0)))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("fork.axleToCrownMm");
    }

    @Test
    void whatATurnSolvesForMayLeaveTheRangeOfWhatIsEntered() {
        Bike steep = Bikes.redrawn(
                Bikes.whole(), Map.of("frame.headAngleDeg", 84.9, "frame.headTubeMm", 60.0, "cockpit.bar.dropMm", 0.0));
        Bike turned = refit(steep, Map.of("fork.sagMm", 120.0)).bike();
        assertThat(turned.get(Inputs.HEAD_ANGLE)).isGreaterThan(85);
        assertThat(turned.beyondEntry()).contains(Inputs.HEAD_ANGLE);
        assertThat(refit(turned, Map.of("fork.sagMm", 0.0)).bike().get(Inputs.HEAD_ANGLE))
                .isCloseTo(84.9, within(1e-9));
    }

    @Test
    void aNumberThatIsFittedIsStillWithinItsRange() {
        assertThatThrownBy(() -> refit(Bikes.whole(), Map.of("wheels.front.tyreMm", 131.0)))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("wheels.front.tyreMm");
    }

    @Test
    void aBarTurnedByATyreMayRiseAboveItsClamp() {
        Bike flat = Bikes.whole().with(Inputs.BAR_DROP, 0);
        Bike turned = refit(flat, Map.of("wheels.front.tyreMm", 32.0)).bike();
        assertThat(turned.get(Inputs.BAR_DROP)).isBetween(-1.0, -0.1);
    }

    @Test
    void wheelsThatCannotStandApartAreRefusedInWords() {
        Bike shortest = Bikes.redrawn(
                Bikes.plain(),
                Map.of("frame.reachMm", 150.0, "frame.chainstayMm", 200.0, "wheels.both.radiusMm", 200.0));
        assertThatThrownBy(() -> refit(shortest, Map.of("wheels.front.radiusMm", 450.0)))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("wheels overlap");
    }

    private static Map<String, Double> another() {
        return Map.of("fork.axleToCrownMm", 400.0, "fork.offsetMm", 44.0, "wheels.front.radiusMm", 320.0);
    }

    private static Refit refit(Bike bike, Map<String, Double> changes) {
        return Refit.of(bike, Setting.changes(changes));
    }

    private static double turned(Bike before, Bike after, Input angle) {
        return after.get(angle) - before.get(angle);
    }

    private static double drops(Bike bike) {
        return Measures.HAND_AHEAD.read(Geometry.of(bike, Hands.DROPS)).orNaN();
    }

    /** What no turn of a rigid frame changes: distances of its points and lines to each other. */
    private static final class Rigid {
        private final Bike bike;

        Rigid(Bike bike) {
            this.bike = bike;
        }

        java.util.List<Double> distances() {
            Space bottom = Space.of(0, 0, 0);
            Space top = Space.of(number("frame.reachMm"), number("frame.stackMm"), 0);
            double drop = number("frame.bbDropMm");
            Space rear = Space.of(-Math.sqrt(Math.pow(number("frame.chainstayMm"), 2) - drop * drop), drop, 0);
            Space up = direction(number("frame.headAngleDeg"));
            double at = number("frame.seatAngleAtMm");
            Space seat = Space.of(-at / Math.tan(Math.toRadians(number("frame.seatAngleDeg"))), at, 0);
            Space seatUp = direction(number("frame.seatTubeAngleDeg"));
            return java.util.List.of(
                    top.length(),
                    top.minus(rear).length(),
                    toLine(bottom, top, up),
                    toLine(rear, top, up),
                    toLine(bottom, seat, seatUp),
                    toLine(rear, seat, seatUp),
                    toLine(top, seat, seatUp));
        }

        private double number(String key) {
            return bike.get(key);
        }

        private static Space direction(double angleDeg) {
            double rad = Math.toRadians(angleDeg);
            return Space.of(-Math.cos(rad), Math.sin(rad), 0);
        }

        private static double toLine(Space point, Space on, Space along) {
            return point.minus(on).cross(along).z();
        }
    }
}
