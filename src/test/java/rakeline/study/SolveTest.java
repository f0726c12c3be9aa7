package rakeline.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rakeline.geometry.Bike;
import rakeline.geometry.Bikes;
import rakeline.geometry.Inputs;
import rakeline.handling.Ride;
import rakeline.quantity.Refusal;

/** Several numbers for as many targets. */
class SolveTest {
    private static final List<Span> HEAD_AND_OFFSET =
            List.of(Rides.span("frame.headAngleDeg"), Rides.span("fork.offsetMm"));

    @Test
    void headAngleAndOffsetAreFoundAgainFromTheMeasuresTheyGive() {
        Bike wanted = Bikes.plain().with(Inputs.HEAD_ANGLE, 72.3).with(Inputs.FORK_OFFSET, 51.7);
        Solved solved = solve(
                Bikes.plain(),
                HEAD_AND_OFFSET,
                Rides.target("trailMm", Rides.value(wanted, "trailMm")),
                Rides.target("frontCentreMm", Rides.value(wanted, "frontCentreMm")));
        assertThat(solved.solutions()).hasSize(1);
        assertThat(solved.solutions().get(0).values().at(0)).isCloseTo(72.3, within(1e-7));
        assertThat(solved.solutions().get(0).values().at(1)).isCloseTo(51.7, within(1e-7));
    }

    @Test
    void toeRoomAndTrailAreHitTogether() {
        Solved solved =
                solve(Bikes.withFoot(), HEAD_AND_OFFSET, Rides.target("toeRoomMm", 0), Rides.target("trailMm", 60));
        Bike bike = solved.bike().orElseThrow();
        assertThat(Rides.value(bike, "toeRoomMm")).isCloseTo(0, within(1e-6));
        assertThat(Rides.value(bike, "trailMm")).isCloseTo(60, within(1e-6));
    }

    @ParameterizedTest
    @ValueSource(doubles = {30, -30})
    void ofSeveralSolutionsTheOneOfTheStartIsFirst(double offset) {
        // offset² = 1600 has the solutions ±40
        Target square = new Target(Rides.fixture(of -> Math.pow(of.get(Inputs.FORK_OFFSET), 2)), 1600);
        Bike bike = Bikes.plain().with(Inputs.FORK_OFFSET, offset);
        Solved solved = solve(bike, HEAD_AND_OFFSET, square, Rides.target("frame.headAngleDeg", 72));
        assertThat(solved.solutions()).hasSize(2);
        assertThat(solved.solutions().get(0).values().at(1)).isCloseTo(Math.copySign(40, offset), within(1e-7));
        assertThat(solved.sentence()).startsWith("2 solutions");
    }

    @Test
    void withoutASolutionTheNearestSaysWhatIsMissed() {
        // inside the ranges the offset that comes nearest to 60 is 50
        Solved solved = solve(
                Bikes.plain(),
                List.of(Rides.span("frame.headAngleDeg", 70, 74), Rides.span("fork.offsetMm", 40, 50)),
                Rides.target("frame.headAngleDeg", 72),
                Rides.target("fork.offsetMm", 60));
        assertThat(solved.solutions()).isEmpty();
        Solved.Place nearest = solved.nearest().orElseThrow();
        assertThat(nearest.values().at(0)).isCloseTo(72, within(1e-7));
        assertThat(nearest.missed().at(1)).isCloseTo(-10, within(1e-9));
    }

    @Test
    void threeNumbersAreSolvedForAsWell() {
        Solved solved = solve(
                Bikes.plain(),
                List.of(
                        Rides.span("frame.headAngleDeg", 65, 76),
                        Rides.span("fork.offsetMm", 20, 80),
                        Rides.span("frame.chainstayMm", 380, 480)),
                Rides.target("trailMm", 58),
                Rides.target("frontCentreMm", 590),
                Rides.target("wheelbaseMm", 1000));
        assertThat(solved.solutions()).hasSize(1);
        assertThat(Rides.value(solved.bike().orElseThrow(), "wheelbaseMm")).isCloseTo(1000, within(1e-6));
    }

    @Test
    void theCrewMakesNoDifference() {
        Solve solve = new Solve(
                Ride.of(Bikes.plain()),
                HEAD_AND_OFFSET,
                List.of(Rides.target("trailMm", 58), Rides.target("frontCentreMm", 590)));
        assertThat(solve.run(Crew.of(3), Progress.UNWATCHED)).isEqualTo(solve.run(Crew.of(1), Progress.UNWATCHED));
    }

    @Test
    void oneTargetForTwoInputsIsRefused() {
        assertThatThrownBy(() -> solve(Bikes.plain(), HEAD_AND_OFFSET, Rides.target("trailMm", 58)))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("2 inputs to vary for 1 targets");
    }

    @Test
    void aTargetGivenTwiceIsRefused() {
        Target trail = Rides.target("trailMm", 58);
        assertThatThrownBy(() -> solve(Bikes.plain(), HEAD_AND_OFFSET, trail, trail))
                .isInstanceOf(Refusal.class)
                .hasMessage("trail (trailMm) is a target twice; accepted are different measures.");
    }

    @Test
    void anInputVariedTwiceIsRefused() {
        List<Span> twice = List.of(Rides.span("fork.offsetMm"), Rides.span("fork.offsetMm", 40, 50));
        assertThatThrownBy(() ->
                        solve(Bikes.plain(), twice, Rides.target("trailMm", 58), Rides.target("frontCentreMm", 590)))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("fork offset (fork.offsetMm) is varied twice");
    }

    @Test
    void itCanBeStopped() {
        Solve solve = new Solve(
                Ride.of(Bikes.plain()),
                HEAD_AND_OFFSET,
                List.of(Rides.target("trailMm", 58), Rides.target("frontCentreMm", 590)));
        assertThatThrownBy(() -> solve.run(Crew.of(2), share -> false)).isInstanceOf(CancellationException.class);
    }

    private static Solved solve(Bike bike, List<Span> spans, Target... targets) {
        return new Solve(Ride.of(bike), spans, List.of(targets)).run();
    }
}
