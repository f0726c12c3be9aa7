package rakeline.geometry.toe;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rakeline.quantity.Refusal;

/**
 * Pedals to front tyre and to the ground. Source of the definitions: 16 CFR 1512.17(c) and (d); of the clearances: a
 * steer grid of 0.05°, of the leans: the closed form worked by hand.
 */
class PedalRegulationTest {
    @ParameterizedTest
    @CsvSource({"170, 103.4100", "175, 98.4100"})
    void levelPedalClearsTheTyre(double crankMm, double clearanceMm) {
        assertThat(level(crankMm).valueMm()).isCloseTo(clearanceMm, within(0.01));
    }

    @ParameterizedTest
    @CsvSource({"170", "175"})
    void levelPedalIsNearestAtOneSteeringAngle(double crankMm) {
        assertThat(level(crankMm).steerDeg()).isCloseTo(24.05, within(0.03));
    }

    private static Place level(double crankMm) {
        FrontWheel wheel = new FrontWheel(73, 580, 340 - 270, 45, 340, 25, 0, 90);
        return new PedalClearance(wheel, new Pedals(crankMm, 240))
                .pedalToTyreLevel()
                .orElseThrow();
    }

    @Test
    void pedalBesideATyreThatHardlyTurnsMeetsItNowhere() {
        FrontWheel wheel = new FrontWheel(73, 580, 70, 45, 340, 25, 0, 10);
        assertThat(new PedalClearance(wheel, new Pedals(170, 240)).pedalToTyre())
                .isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"0, 28.610460", "12.5, 29.091182"})
    void pedalStrikesTheGroundAtALean(double sectionRadiusMm, double leanDeg) {
        double heightMm = 270 - 170 - 10;
        assertThat(new PedalStrike(heightMm, 165, sectionRadiusMm).leanDeg().orElseThrow())
                .isCloseTo(leanDeg, within(5e-7));
    }

    @Test
    void pedalBelowTheGroundStrikesAtANegativeLean() {
        assertThat(new PedalStrike(-10, 165, 0).leanDeg().orElseThrow()).isCloseTo(-3.468, within(0.001));
    }

    @Test
    void pedalTuckedInBehindAFatTyreNeverStrikes() {
        assertThat(new PedalStrike(65, 60, 65).leanDeg()).isEmpty();
    }

    @Test
    void sectionRadiusLiesBetweenTheTyresAsTheBottomBracketDoes() {
        assertThat(PedalStrike.sectionRadiusMm(20, 12, 400, 1000)).isCloseTo(16.8, within(1e-12));
    }

    @Test
    void tyreTooFatForItsWheelIsRefused() {
        assertThatThrownBy(() -> new FrontWheel(73, 580, 70, 45, 60, 120, 0, 90))
                .isInstanceOf(Refusal.class)
                .hasMessage("A wheel radius of 60 mm does not fit a tyre of 120 mm; accepted is more than half the"
                        + " tyre's width.");
    }
}
