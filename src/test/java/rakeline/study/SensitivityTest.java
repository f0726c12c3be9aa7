package rakeline.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rakeline.catalogue.BikeFile;
import rakeline.catalogue.Roots;
import rakeline.geometry.Bike;
import rakeline.geometry.Bikes;
import rakeline.geometry.Inputs;
import rakeline.geometry.Setting;
import rakeline.handling.Ride;
import rakeline.quantity.Refusal;

/** Output per unit of input. */
class SensitivityTest {
    @Test
    void trailChangesWithTheHeadAngleAsItsClosedFormDoes() {
        // D: d/dα (R cos α − f)/sin α = (f cos α − R)/sin² α
        double alpha = Math.toRadians(70.5);
        double closed = (47 * Math.cos(alpha) - 339) / Math.pow(Math.sin(alpha), 2) * Math.toRadians(1);
        assertThat(slope("frame.headAngleDeg", "trailMm")).isCloseTo(closed, within(1e-8));
    }

    @Test
    void aMillimetreOfReachIsAMillimetreOfToeRoom() {
        // by the definition of toe room
        assertThat(slope("frame.reachMm", "toeRoomMm")).isCloseTo(1, within(1e-5));
    }

    @Test
    void atTheEndOfItsRangeAnInputIsMovedInward() {
        // D: front drop = ½ flop δ² near 0 has no slope at 0, and no value below
        assertThat(slope("ride.steerDeg", "frontDropMm")).isCloseTo(0, within(1e-6));
    }

    @ParameterizedTest
    @ValueSource(doubles = {50, 70.5, 84.9, 84.99999, 85})
    void upToTheEndsOfItsRangeTrailChangesAsItsClosedFormDoes(double head) {
        Bike bike = Bikes.plain().with(Inputs.HEAD_ANGLE, head);
        double alpha = Math.toRadians(head);
        double closed = (47 * Math.cos(alpha) - 339) / Math.pow(Math.sin(alpha), 2) * Math.toRadians(1);
        Sensitivities found = sensitivities(Ride.of(bike), "frame.headAngleDeg", "trailMm");
        assertThat(found.columns().get(0).at(0)).isCloseTo(closed, within(1e-6));
        assertThat(found.errors().get(0).at(0)).isLessThan(1e-6);
    }

    @ParameterizedTest
    @ValueSource(doubles = {50, 84.9, 85})
    void uncertaintiesAreCarriedAlikeUpToTheEnds(double head) {
        Bike bike = Bikes.plain().with(Inputs.HEAD_ANGLE, head);
        List<Doubt> doubts = Doubt.about(bike, true).stream()
                .filter(doubt -> doubt.key().equals("frame.headAngleDeg"))
                .toList();
        double alpha = Math.toRadians(head);
        double closed = (339 - 47 * Math.cos(alpha)) / Math.pow(Math.sin(alpha), 2) * Math.toRadians(0.2);
        FirstOrder carried = new FirstOrder(Ride.of(bike), doubts);
        assertThat(carried.linear(Rides.measure("trailMm"))).isCloseTo(closed, within(1e-4 * closed));
        assertThat(carried.of(Rides.measure("trailMm"))).isCloseTo(closed, within(1e-4 * closed));
    }

    @Test
    void theStepSuitsASmallQuantity() {
        // D: a difference over 2e-6 kg m², by hand
        Bike bike = Bikes.redrawn(road("demo-data/bikes/road-m.bike.json"), Map.of("masses.fork.productKgM2", -0.0162));
        double by = 1e-6;
        double byHand = (weave(bike, -0.0162 + by) - weave(bike, -0.0162 - by)) / (2 * by);
        Sensitivities found = sensitivities(Ride.of(bike), "masses.fork.productKgM2", "weaveSpeedMps");
        assertThat(found.columns().get(0).at(0)).isCloseTo(byHand, within(1e-4)).isCloseTo(36.09, within(0.005));
        assertThat(found.errors().get(0).at(0)).isLessThan(1e-5);
    }

    private static Bike road(String file) {
        return BikeFile.read(Roots.bundled().read(file, BikeFile.SIZE_LIMIT), file);
    }

    private static double weave(Bike bike, double product) {
        return Rides.value(Bikes.redrawn(bike, Map.of("masses.fork.productKgM2", product)), "weaveSpeedMps");
    }

    private static Sensitivities sensitivities(Ride ride, String input, String measure) {
        return new Sensitivity(ride, List.of(Varied.of(Setting.of(input))), Rides.tracks(measure)).run();
    }

    @Test
    void anInputThatIsNotGivenIsRefused() {
        assertThatThrownBy(() -> new Sensitivity(
                        Ride.of(Bikes.plain()),
                        List.of(Varied.of(Setting.of("fork.axleToCrownMm"))),
                        Rides.tracks("trailMm")))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("Axle to crown (fork.axleToCrownMm) is not given");
    }

    private static double slope(String input, String measure) {
        Ride ride = Ride.of(Bikes.withFoot().with(Inputs.RIDE_STEER, 0));
        return sensitivities(ride, input, measure).columns().get(0).at(0);
    }
}
