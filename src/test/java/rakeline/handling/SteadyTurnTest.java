package rakeline.handling;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rakeline.geometry.Bike;
import rakeline.geometry.Bikes;
import rakeline.geometry.Inputs;
import rakeline.quantity.Refusal;

/** Steady turns: closed forms proved by brute force (D), and the linear torque. */
class SteadyTurnTest {
    private static final Ride PLAIN = Ride.of(Bikes.plain());

    /** Wheelbase 0.985 m, head 71°: 10 km/h at 10°, 8 at 10°, 5 at 5° (D). */
    @ParameterizedTest
    @CsvSource({"10, 10, 12.79", "8, 10, 19.40", "5, 5, 24.50"})
    void steerIsAsDerived(double kmh, double lean, double steer) {
        assertThat(SteadyTurn.leaning(Ride.of(worked()), kmh, lean).steerDeg()).isCloseTo(steer, within(0.005));
    }

    @Test
    void aRadiusGivesTheTurnThatItsLeanGives() {
        SteadyTurn leaning = SteadyTurn.leaning(PLAIN, 15, 10);
        SteadyTurn around = SteadyTurn.around(PLAIN, 15, leaning.radiusM());
        assertThat(around.steerDeg()).isCloseTo(leaning.steerDeg(), within(1e-9));
        assertThat(around.leanDeg()).isCloseTo(10, within(1e-9));
    }

    /** The kinematic ground steer of the geometry at that steer and lean is that of the turn. */
    @Test
    void groundSteerAgreesWithTheKinematicFormula() {
        SteadyTurn turn = SteadyTurn.leaning(PLAIN, 12, 20);
        assertThat(PLAIN.geometry().side().groundSteerRad(turn.steerRad(), turn.leanRad()))
                .isCloseTo(turn.groundSteerRad(), within(1e-12));
    }

    /** Lean and steer by the first line of the static solution ask for the torque that the leaning stiffness gives. */
    @Test
    void torqueIsTheSecondLineOfTheStaticSolution() {
        SteadyTurn turn = SteadyTurn.leaning(PLAIN, 20, 2);
        Square k = PLAIN.stability().bicycle().stiffness(turn.speedMps());
        double balanced = -k.a12() / k.a11() * turn.steerRad();
        double torque = turn.barTorqueNm() + k.a21() * (balanced - turn.leanRad());
        assertThat(torque)
                .isCloseTo(
                        new SteerStiffness(PLAIN.stability().bicycle()).leaningNmPerRad(turn.speedMps())
                                * turn.steerRad(),
                        within(1e-9));
    }

    @Test
    void forceOfOneHandIsTorqueOverLever() {
        SteadyTurn turn = SteadyTurn.leaning(PLAIN, 20, 5);
        assertThat(turn.forceOneHandN(250)).isCloseTo(turn.barTorqueNm() / 0.25, within(1e-12));
        assertThat(turn.forcePerHandN(250)).isCloseTo(turn.barTorqueNm() / 0.5, within(1e-12));
    }

    @Test
    void beyondTenDegreesOfSteerItIsFlagged() {
        assertThat(SteadyTurn.leaning(PLAIN, 8, 10).beyondLinear()).isTrue();
        assertThat(SteadyTurn.leaning(PLAIN, 20, 10).beyondLinear()).isFalse();
    }

    @Test
    void aTurnWithoutLeanIsRefused() {
        assertThatThrownBy(() -> SteadyTurn.leaning(PLAIN, 20, 0))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("lean");
    }

    /** Head 71° and as much reach as makes the wheelbase 985 mm. */
    private static Bike worked() {
        Bike bike = Bikes.plain().redraw(Map.of(Inputs.HEAD_ANGLE, 71.0));
        double missing = 985 - Ride.of(bike).geometry().side().wheelbaseMm();
        return bike.with(Inputs.REACH, bike.get(Inputs.REACH) + missing);
    }
}
