package rakeline.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rakeline.geometry.Bike;
import rakeline.geometry.Bikes;
import rakeline.geometry.Inputs;
import rakeline.geometry.Refit;
import rakeline.geometry.Setting;
import rakeline.handling.Ride;
import rakeline.quantity.Refusal;

/** Every value of one number at which a measure hits a target. */
class SeekTest {
    private static final Span HEAD = Rides.span("frame.headAngleDeg", 66, 76);

    @Test
    void whereNoBikeHasAnyOfTheNumbersTheReasonIsSaid() {
        Seek seek = new Seek(
                Ride.of(Bikes.plain()),
                Rides.span("crank.lengthMm", 150, 180),
                Rides.target("trailMm", 58),
                Optional.empty());
        assertThatThrownBy(seek::run).isInstanceOf(Refusal.class).hasMessageContaining("crank.stanceWidthMm");
    }

    @Test
    void trailIsHitAtTheHeadAngleOfItsClosedForm() {
        // D: trail · sin α = R cos α − f, so R cos α − trail · sin α = f
        double alpha = Math.acos(47 / Math.hypot(339, 58)) - Math.atan2(58, 339);
        assertThat(found(Bikes.plain(), HEAD, Rides.target("trailMm", 58)))
                .singleElement()
                .satisfies(at -> assertThat(at).isCloseTo(Math.toDegrees(alpha), within(1e-9)));
    }

    @Test
    void frontDropIsHitOnBothSidesOfItsGreatest() {
        // the front end drops until the flop's turning point and comes up again (check-values 5: 2.98 at 40°, 1.70 at
        // 90°)
        Bike bike = Bikes.redrawn(Bikes.front(73, 340, 45), Map.of("ride.steerDeg", 0.0, "ride.leanDeg", 0.0));
        Sought sought = seek(bike, Rides.span("ride.steerDeg", 0, 90), Rides.target("frontDropMm", 2.980076));
        assertThat(sought.values().size()).isEqualTo(2);
        assertThat(sought.values().at(0)).isCloseTo(40, within(1e-4));
    }

    @Test
    void aTargetThatIsOnlyTouchedHasOneSolution() {
        Bike bike = Bikes.redrawn(Bikes.front(73, 340, 45), Map.of("ride.steerDeg", 0.0));
        Span steer = Rides.span("ride.steerDeg", 0, 90);
        double most = seek(bike, steer, Rides.target("frontDropMm", 99))
                .nearest()
                .orElseThrow()
                .value();
        assertThat(found(bike, steer, Rides.target("frontDropMm", most))).hasSize(1);
        assertThat(found(bike, steer, Rides.target("frontDropMm", most - 1e-6))).hasSize(2);
    }

    @Test
    void withoutASolutionTheNearestIsSaid() {
        Sought sought = seek(Bikes.plain(), HEAD, Rides.target("trailMm", 20));
        assertThat(sought.solutions()).isEmpty();
        Sought.Nearest nearest = sought.nearest().orElseThrow();
        assertThat(nearest.at()).isEqualTo(76);
        assertThat(nearest.value()).isEqualTo(Rides.value(Bikes.plain().with(Inputs.HEAD_ANGLE, 76), "trailMm"));
    }

    @Test
    void solutionsHardByTheEndsAreFound() {
        // D: rear-centre √(CS² − d²) at a BB drop of ±149.99, hard by the ends of what is accepted
        Sought sought = seek(
                Bikes.plain(),
                Rides.span("frame.bbDropMm", -150, 150),
                target(
                        bike -> Math.sqrt(410 * 410 - Math.pow(bike.get(Inputs.BB_DROP), 2)),
                        Math.sqrt(410 * 410 - 149.99 * 149.99)));
        assertThat(sought.values().toArray()).hasSize(2);
    }

    @Test
    void toeRoomIsHit() {
        Sought sought = seek(Bikes.withFoot(), HEAD, Rides.target("toeRoomMm", 0));
        assertThat(sought.solutions())
                .singleElement()
                .satisfies(solution ->
                        assertThat(Rides.value(solution.bike(), "toeRoomMm")).isCloseTo(0, within(1e-7)));
    }

    @Test
    void aStretchOfSolutionsIsSaid() {
        // toes overlap from some reach down: the gap is 0 there
        Sought sought = seek(Bikes.withFoot(), Rides.span("frame.reachMm", 300, 450), Rides.target("toeGapLeastMm", 0));
        assertThat(sought.stretches()).hasSize(1);
        assertThat(sought.sentence()).startsWith("Every value from 300 mm to 38");
    }

    @Test
    void aTyreIsRefittedAsUsual() {
        Bike bike = Bikes.whole();
        Span tyre = Rides.span("wheels.front.tyreMm", 20, 50);
        double wanted =
                Rides.value(Refit.of(bike, Map.of(Inputs.FRONT_TYRE, 40.0)).bike(), "frame.headAngleDeg");
        assertThat(found(bike, tyre, Rides.target("frame.headAngleDeg", wanted)))
                .singleElement()
                .satisfies(at -> assertThat(at).isCloseTo(40, within(1e-7)));
    }

    @Test
    void aMeasureMayBeHeldMeanwhile() {
        Hold hold = new Hold(Rides.measure("trailMm"), 58, Setting.of("fork.offsetMm"));
        Sought sought =
                new Seek(Ride.of(Bikes.plain()), HEAD, Rides.target("frontCentreMm", 600), Optional.of(hold)).run();
        assertThat(sought.solutions()).singleElement().satisfies(solution -> {
            assertThat(Rides.value(solution.bike(), "trailMm")).isCloseTo(58, within(1e-8));
            assertThat(Rides.value(solution.bike(), "frontCentreMm")).isCloseTo(600, within(1e-8));
        });
    }

    @ParameterizedTest
    @ValueSource(doubles = {60, -60})
    void ofTwoBranchesOfAHoldThatOfTheStartIsKept(double offset) {
        // offset² + chainstay is held; the offset asked for lies on one branch only
        Hold hold = new Hold(
                Rides.fixture(of -> Math.pow(of.get(Inputs.FORK_OFFSET), 2) + of.get(Inputs.CHAINSTAY)),
                Double.NaN,
                Setting.of("fork.offsetMm"));
        Bike bike = Bikes.plain().with(Inputs.FORK_OFFSET, offset);
        Span chainstay = Rides.span("frame.chainstayMm", 400, 900);
        Sought sought = new Seek(Ride.of(bike), chainstay, Rides.target("fork.offsetMm", 58), Optional.of(hold)).run();
        assertThat(sought.solutions()).hasSize(offset > 0 ? 1 : 0);
    }

    @Test
    void aMeasureThatLacksANumberIsRefused() {
        Seek seek = new Seek(Ride.of(Bikes.plain()), HEAD, Rides.target("toeRoomMm", 0), Optional.empty());
        assertThatThrownBy(seek::run)
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("does not give what toe room (toeRoomMm) needs: cranks and a shoe");
    }

    @Test
    void anEndOutOfRangeIsRefused() {
        assertThatThrownBy(() -> Rides.span("frame.headAngleDeg", 40, 76))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("50..85");
    }

    private static Target target(ToDoubleFunction<Bike> formula, double value) {
        return new Target(Rides.fixture(formula), value);
    }

    private static List<Double> found(Bike bike, Span over, Target target) {
        return seek(bike, over, target).values().stream().boxed().toList();
    }

    private static Sought seek(Bike bike, Span over, Target target) {
        return new Seek(Ride.of(bike), over, target, Optional.empty()).run();
    }
}
