package rakeline.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rakeline.geometry.Bike;
import rakeline.geometry.Bikes;
import rakeline.geometry.Inputs;
import rakeline.handling.Ride;
import rakeline.study.SizeRun.Holding;

/** What each size needs under a floor. */
class SizeRunTest {
    private static final Bike MIDDLE = Bikes.plain().with(Inputs.HEAD_ANGLE, 73).with(Inputs.REACH, 385);
    private static final Bike SMALL = MIDDLE.with(Inputs.REACH, 372).with(Inputs.STACK, 500);
    private static final Bike SMALLEST = MIDDLE.with(Inputs.REACH, 358).with(Inputs.STACK, 480);

    @Test
    void theSmallerTheSizeTheSlackerItsHeadAngle() {
        List<Bike> bikes = run(floor(585), trail(Double.NaN)).bikes();
        assertThat(bikes).hasSize(3);
        assertThat(bikes.get(0).get(Inputs.HEAD_ANGLE)).isLessThan(bikes.get(1).get(Inputs.HEAD_ANGLE));
        assertThat(bikes.get(1).get(Inputs.HEAD_ANGLE)).isLessThan(bikes.get(2).get(Inputs.HEAD_ANGLE));
    }

    @Test
    void floorAndHeldTrailAreMet() {
        Sized sized = run(floor(590), trail(58));
        assertThat(sized.bikes()).allSatisfy(bike -> {
            assertThat(Rides.value(bike, "trailMm")).isCloseTo(58, within(1e-8));
            assertThat(Rides.value(bike, "frontCentreMm")).isGreaterThan(590 - 1e-8);
        });
    }

    @Test
    void aSizeThatClearsTheFloorKeepsItsHeadAngle() {
        Sized sized = run(floor(Rides.value(MIDDLE, "frontCentreMm") - 1), trail(Double.NaN));
        assertThat(sized.sizes().get(2).kept()).isTrue();
        assertThat(sized.sizes().get(2).bike()).contains(MIDDLE);
        assertThat(sized.sizes().get(0).kept()).isFalse();
    }

    @Test
    void theOffsetItselfMayBeHeld() {
        List<Bike> bikes = run(floor(600), new Holding.Offset(50)).bikes();
        assertThat(bikes).hasSize(3).allSatisfy(bike -> {
            assertThat(bike.get(Inputs.FORK_OFFSET)).isEqualTo(50);
            assertThat(Rides.value(bike, "frontCentreMm")).isCloseTo(600, within(1e-8));
        });
    }

    @Test
    void aFloorOutOfReachSaysHowNearOneComes() {
        Sized sized = run(floor(1900), new Holding.Offset(Double.NaN));
        assertThat(sized.bikes()).isEmpty();
        assertThat(sized.sizes().get(0).reason()).startsWith("No solution; the nearest is ");
    }

    /** (head − 68)(head − 75) is 0 at both; below between them. */
    @ParameterizedTest
    @CsvSource({"70, 68", "71, 68", "72, 75", "74.9, 75"})
    void ofTwoHeadAnglesThatMeetTheFloorTheNearerIsTaken(double own, double needed) {
        Ride size = Ride.of(MIDDLE.with(Inputs.HEAD_ANGLE, own));
        Target target = new Target(
                Rides.fixture(bike -> (bike.get(Inputs.HEAD_ANGLE) - 68) * (bike.get(Inputs.HEAD_ANGLE) - 75)), 0);
        Sized sized = new SizeRun(List.of(size), target, new Holding.Offset(Double.NaN), Rides.tracks("trailMm")).run();
        assertThat(sized.bikes().get(0).get(Inputs.HEAD_ANGLE)).isCloseTo(needed, within(1e-9));
    }

    @Test
    void theCrewMakesNoDifference() {
        SizeRun run = new SizeRun(rides(), floor(585), trail(58), Rides.tracks("wheelFlopMm"));
        assertThat(run.run(Crew.of(3), Progress.UNWATCHED).bikes())
                .isEqualTo(run.run(Crew.of(1), Progress.UNWATCHED).bikes());
    }

    private static Sized run(Target floor, Holding holding) {
        return new SizeRun(rides(), floor, holding, Rides.tracks("wheelFlopMm")).run();
    }

    private static Target floor(double value) {
        return Rides.target("frontCentreMm", value);
    }

    private static Holding trail(double value) {
        return new Holding.ByOffset(Rides.measure("trailMm"), value);
    }

    private static List<Ride> rides() {
        return List.of(Ride.of(SMALLEST), Ride.of(SMALL), Ride.of(MIDDLE));
    }
}
