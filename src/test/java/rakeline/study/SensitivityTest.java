package rakeline.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
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
        return new Sensitivity(ride, List.of(Varied.of(Setting.of(input))), Rides.tracks(measure))
                .run()
                .columns()
                .get(0)
                .at(0);
    }
}
