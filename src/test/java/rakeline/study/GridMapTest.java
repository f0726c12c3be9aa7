package rakeline.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.Test;
import rakeline.geometry.Bike;
import rakeline.geometry.Bikes;
import rakeline.geometry.Inputs;
import rakeline.geometry.Refit;
import rakeline.geometry.Setting;
import rakeline.handling.Ride;
import rakeline.quantity.Refusal;

/** One measure over two numbers. */
class GridMapTest {
    @Test
    void everyPlaceIsReadOnItsOwnBike() {
        Mapped mapped = trail().run();
        for (int i = 0; i < 11; i++) {
            for (int j = 0; j < 16; j++) {
                Bike bike = Bikes.plain()
                        .with(Inputs.HEAD_ANGLE, mapped.map().x().steps().at(i))
                        .with(Inputs.FORK_OFFSET, mapped.map().y().steps().at(j));
                assertThat(mapped.at(i, j)).isEqualTo(Rides.value(bike, "trailMm"));
            }
        }
    }

    @Test
    void whileATrailIsHeldTheOffsetFollowsItsClosedForm() {
        Mapped mapped = holdingTrail("fork.offsetMm").run();
        for (int i = 0; i < 6; i++) {
            for (int j = 0; j < 3; j++) {
                double head = Math.toRadians(69 + i);
                double radius = 311 + 25 + 5 * j;
                // trail = (R cos α − f)/sin α (D)
                assertThat(mapped.at(i, j)).isCloseTo(radius * Math.cos(head) - 58 * Math.sin(head), within(1e-6));
            }
        }
    }

    @Test
    void aMapSaysWhatItHolds() {
        assertThat(holdingTrail("frontCentreMm").run().held())
                .startsWith("trail at 58.0 mm by solving for fork offset");
    }

    @Test
    void wherePlacesCannotHoldTheyAreGapsWithTheirReason() {
        GridMap map = new GridMap(
                Ride.of(Bikes.plain()),
                Rides.axis("frame.headAngleDeg", 69, 74, 1),
                Rides.axis("frame.bbDropMm", 70, 80, 5),
                Rides.measure("frontCentreMm"),
                Optional.of(new Hold(Rides.measure("trailMm"), 300, Setting.of("fork.offsetMm"))));
        Mapped mapped = map.run();
        assertThat(mapped.gaps()).hasSize(18);
        assertThat(mapped.reasons().keySet().iterator().next()).contains("no fork offset", "trail to 300 mm");
    }

    @Test
    void whatIsSolvedForCannotBeVariedAsWell() {
        GridMap map = new GridMap(
                Ride.of(Bikes.plain()),
                Rides.axis("frame.headAngleDeg", 69, 74, 1),
                Rides.axis("fork.offsetMm", 40, 50, 5),
                Rides.measure("frontCentreMm"),
                Optional.of(new Hold(Rides.measure("trailMm"), 58, Setting.of("fork.offsetMm"))));
        assertThatThrownBy(map::run).isInstanceOf(Refusal.class).hasMessageContaining("fork.offsetMm");
    }

    private static GridMap holdingTrail(String track) {
        return new GridMap(
                Ride.of(Bikes.plain()),
                Rides.axis("frame.headAngleDeg", 69, 74, 1),
                new GridMap.Axis(new Varied(Setting.of("wheels.both.tyreMm"), Mode.REDRAW), Steps.of(25, 35, 5)),
                Rides.measure(track),
                Optional.of(new Hold(Rides.measure("trailMm"), 58, Setting.of("fork.offsetMm"))));
    }

    @Test
    void theCrewMakesNoDifference() {
        GridMap map = new GridMap(
                Ride.of(Bikes.withFoot()),
                Rides.axis("frame.headAngleDeg", 69, 74, 0.5),
                Rides.axis("fork.offsetMm", 40, 55, 1),
                Rides.measure("toeRoomMm"));
        assertThat(run(map, 3)).isEqualTo(run(map, 1));
    }

    @Test
    void theFirstPictureTakesLessThanATenthOfThePlaces() {
        List<Mapped> pictures = new ArrayList<>();
        GridMap map = new GridMap(
                Ride.of(Bikes.plain()),
                Rides.axis("frame.headAngleDeg", 69, 74, 0.1),
                Rides.axis("fork.offsetMm", 40, 55, 0.3),
                Rides.measure("trailMm"));
        Mapped whole = map.run(Crew.of(2), pictures::add, Progress.UNWATCHED);
        assertThat(pictures).hasSize(3);
        assertThat(pictures.get(0).values().size() * 10)
                .isLessThan(whole.values().size());
    }

    @Test
    void aPictureShowsTheSameValuesAsTheWhole() {
        List<Mapped> pictures = new ArrayList<>();
        Mapped whole = trail().run(Crew.of(2), pictures::add, Progress.UNWATCHED);
        Mapped coarse = pictures.get(0);
        assertThat(coarse.map().x().steps().toArray()).containsExactly(69, 73, 74);
        assertThat(coarse.at(1, 0)).isEqualTo(whole.at(8, 0));
        assertThat(coarse.at(2, 2)).isEqualTo(whole.at(10, 15));
    }

    @Test
    void aPlaceWithoutAValueIsAGapWithItsReason() {
        GridMap map = new GridMap(
                Ride.of(Bikes.plain()),
                Rides.axis("frame.headAngleDeg", 69, 74, 1),
                Rides.axis("fork.offsetMm", 40, 55, 5),
                Rides.fixture(of -> of.get(Inputs.FORK_OFFSET) > 50 ? Double.NaN : 1));
        Mapped mapped = map.run();
        assertThat(mapped.gaps()).hasSize(6);
        assertThat(mapped.reasons()).isEqualTo(Map.of("has no finite value here", 6));
    }

    @Test
    void eachNumberIsChangedInItsUsualWay() {
        GridMap map = new GridMap(
                Ride.of(Bikes.whole()),
                Rides.axis("frame.headAngleDeg", 70, 72, 1),
                Rides.axis("wheels.front.tyreMm", 28, 40, 6),
                Rides.measure("bbHeightMm"));
        Mapped mapped = map.run();
        Bike drawn = Bikes.whole().with(Inputs.HEAD_ANGLE, 71);
        assertThat(mapped.at(1, 2))
                .isEqualTo(Rides.value(
                        Refit.of(drawn, Map.of(Inputs.FRONT_TYRE, 40.0)).bike(), "bbHeightMm"));
        assertThat(mapped.title()).endsWith("front tyre refitted, the rest redrawn");
    }

    @Test
    void progressRunsToTheEnd() {
        List<Double> shares = new ArrayList<>();
        trail().run(Crew.of(2), picture -> {}, shares::add);
        assertThat(shares).isSorted().endsWith(1.0);
    }

    @Test
    void itCanBeStoppedAndLeavesNoThread() {
        assertThatThrownBy(() -> trail().run(Crew.of(3), picture -> {}, share -> false))
                .isInstanceOf(CancellationException.class);
        assertThat(Thread.getAllStackTraces().keySet())
                .noneMatch(thread -> thread.getName().equals("study") && thread.isAlive());
    }

    @Test
    void theSameInputTwiceIsRefused() {
        GridMap map = new GridMap(
                Ride.of(Bikes.plain()),
                Rides.axis("wheels.both.tyreMm", 25, 30, 1),
                Rides.axis("wheels.front.tyreMm", 25, 30, 1),
                Rides.measure("trailMm"));
        assertThatThrownBy(map::run).isInstanceOf(Refusal.class).hasMessageContaining("varied twice");
    }

    @Test
    void tooManyPlacesAreRefused() {
        assertThatThrownBy(() -> new GridMap(
                        Ride.of(Bikes.plain()),
                        Rides.axis("frame.headAngleDeg", 60, 80, 0.01),
                        Rides.axis("fork.offsetMm", 0, 100, 0.1),
                        Rides.measure("trailMm")))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("1,000,000");
    }

    private static GridMap trail() {
        return new GridMap(
                Ride.of(Bikes.plain()),
                Rides.axis("frame.headAngleDeg", 69, 74, 0.5),
                Rides.axis("fork.offsetMm", 40, 55, 1),
                Rides.measure("trailMm"));
    }

    private static Mapped run(GridMap map, int threads) {
        return map.run(Crew.of(threads), picture -> {}, Progress.UNWATCHED);
    }
}
