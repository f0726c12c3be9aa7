package rakeline.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.junit.jupiter.api.Test;
import rakeline.quantity.Refusal;

/** Redrawing, defaults and refusals of a bike. */
class BikeTest {
    @Test
    void aRadiusNotGivenIsHalfTheBeadSeatPlusTheTyre() {
        // the plain rule of a nominal tyre, ISO 5775
        assertThat(Bikes.plain().get(Inputs.FRONT_RADIUS)).isEqualTo(622 / 2.0 + 28);
    }

    @Test
    void aRadiusThatIsGivenWins() {
        assertThat(Bikes.plain().with("wheels.front.radiusMm", 335).get(Inputs.FRONT_RADIUS))
                .isEqualTo(335);
    }

    @Test
    void anotherTyreMovesAGivenRadiusByAsMuch() {
        Bike bike = Bikes.plain().with("wheels.front.radiusMm", 335).with("wheels.front.tyreMm", 32);
        assertThat(bike.get(Inputs.FRONT_RADIUS)).isEqualTo(335 + 4);
    }

    @Test
    void anotherRimMovesAGivenRadiusByHalfTheBeadSeatsChange() {
        Bike bike = Bikes.plain().with("wheels.front.radiusMm", 335).with("wheels.front.beadSeatMm", 584);
        assertThat(bike.get(Inputs.FRONT_RADIUS)).isEqualTo(335 - 19);
    }

    @Test
    void aRadiusGivenTogetherWithTheTyreWins() {
        Bike bike = Bikes.redrawn(
                Bikes.plain().with("wheels.front.radiusMm", 335),
                Map.of("wheels.front.tyreMm", 32.0, "wheels.front.radiusMm", 341.0));
        assertThat(bike.get(Inputs.FRONT_RADIUS)).isEqualTo(341);
    }

    @Test
    void aTyreOfTheFrontWheelLeavesTheRearOneAlone() {
        Bike bike = Bikes.plain().with("wheels.both.radiusMm", 335).with("wheels.front.tyreMm", 32);
        assertThat(bike.get(Inputs.REAR_RADIUS)).isEqualTo(335);
    }

    @Test
    void bothWheelsAreSetByOneKey() {
        Bike bike = Bikes.plain().with("wheels.both.tyreMm", 40);
        assertThat(bike.get(Inputs.FRONT_TYRE)).isEqualTo(40);
        assertThat(bike.get(Inputs.REAR_TYRE)).isEqualTo(40);
    }

    @Test
    void theMudguardBelongsToTheFrontWheelAlone() {
        assertThatThrownBy(() -> Bikes.plain().with("wheels.both.mudguardGapMm", 10))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("wheels.front.mudguardGapMm");
    }

    @Test
    void theSeatAngleIsTakenAtTheStackUnlessAHeightIsGiven() {
        assertThat(Bikes.plain().with(Inputs.STACK, 540).get(Inputs.SEAT_ANGLE_AT))
                .isEqualTo(540);
    }

    @Test
    void theSeatTubeStandsAtTheSeatAngleUnlessItsOwnIsGiven() {
        assertThat(Bikes.plain().with(Inputs.SEAT_ANGLE, 75).get(Inputs.SEAT_TUBE_ANGLE))
                .isEqualTo(75);
    }

    @Test
    void aGroupThatIsThereTakesTheDefaultsOfItsKeys() {
        Bike bike = Bikes.redrawn(Bikes.plain(), Map.of("crank.lengthMm", 170.0, "crank.stanceWidthMm", 240.0));
        assertThat(bike.get(Inputs.PEDAL_HALF_THICKNESS)).isEqualTo(10);
        assertThat(bike.get(Inputs.PEDAL_HALF_WIDTH)).isEqualTo(45);
    }

    @Test
    void aGroupThatIsNotThereHasNoDefaults() {
        assertThat(Bikes.plain().has(Inputs.TOE_FORWARD)).isFalse();
    }

    @Test
    void aGroupThatBeginsByRedrawingMustBeWhole() {
        assertThatThrownBy(() -> Bikes.plain().with(Inputs.CRANK_LENGTH, 170))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("crank.stanceWidthMm");
    }

    @Test
    void aBarNeedsTheCockpitThatCarriesIt() {
        Map<String, Double> bar = Map.of(
                "cockpit.bar.widthMm", 400.0, "cockpit.bar.hoodForwardMm", 100.0, "cockpit.bar.hoodRiseMm", 10.0);
        assertThatThrownBy(() -> Bikes.redrawn(Bikes.plain(), bar))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("cockpit.headsetCoverMm");
    }

    @Test
    void aChainstayShorterThanTheDropIsRefused() {
        assertThatThrownBy(() -> Bikes.plain().withSolved(Map.of(Inputs.CHAINSTAY, 100.0, Inputs.BB_DROP, 120.0)))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("chainstay of 100 mm (frame.chainstayMm)")
                .hasMessageContaining("BB drop of 120 mm (frame.bbDropMm)");
    }

    @Test
    void aNumberOutOfRangeIsRefusedWithKeyValueAndRange() {
        assertThatThrownBy(() -> Bikes.plain().with(Inputs.HEAD_ANGLE, 49.9))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("frame.headAngleDeg")
                .hasMessageContaining("49.9")
                .hasMessageContaining("50..85");
    }

    @Test
    void notANumberIsRefused() {
        assertThatThrownBy(() -> Bikes.plain().with(Inputs.HEAD_ANGLE, Double.NaN))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("(frame.headAngleDeg) is NaN");
    }

    @Test
    void aTyreMayTakeTheRadiusBeyondWhatIsEntered() {
        Bike large = Bikes.plain().with("wheels.front.radiusMm", 449).with("wheels.front.tyreMm", 40);
        assertThat(large.get(Inputs.FRONT_RADIUS)).isEqualTo(461);
        assertThat(large.beyondEntry()).containsExactly(Inputs.FRONT_RADIUS);
        assertThat(large.with(Inputs.REACH, 370).get(Inputs.FRONT_RADIUS)).isEqualTo(461);
    }

    @Test
    void wheelsThatOverlapCannotBeBuilt() {
        assertThatThrownBy(() -> Bikes.redrawn(
                        Bikes.plain(),
                        Map.of("frame.reachMm", 120.0, "frame.chainstayMm", 200.0, "frame.headAngleDeg", 85.0)))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("Fixture cannot be built: its wheels overlap")
                .hasMessageContaining("678.0 mm");
    }

    @Test
    void wheelsThatJustDoNotTouchCan() {
        double touching = Bikes.value(Bikes.plain(), Measures.WHEELBASE) - 2 * 339;
        assertThat(Bikes.plain().withSolved(Map.of(Inputs.REACH, 366 - touching + 1e-6)))
                .isNotNull();
        assertThatThrownBy(() -> Bikes.plain().withSolved(Map.of(Inputs.REACH, 366 - touching)))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("overlap");
    }

    @Test
    void aCrownBelowTheAxleCannotBeBuilt() {
        Bike known = Bikes.redrawn(Bikes.plain(), Map.of("frame.headTubeMm", 350.0, "fork.lowerStackMm", 20.0));
        double axis = known.side().axisLengthMm();
        assertThat(known.with(Inputs.STACK, 515 - (axis - 370.01) * known.side().sinHead()))
                .isNotNull();
        assertThatThrownBy(() -> known.with(
                        Inputs.STACK, 515 - (axis - 369.99) * known.side().sinHead()))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("crown would not be above the front axle")
                .hasMessageContaining("370.0 mm");
    }

    /** No triangle stays open for it; its height, below 0, says it. */
    @Test
    void aBottomBracketBelowTheGroundIsMeasured() {
        Bike low = Bikes.redrawn(Bikes.plain(), Map.of("frame.bbDropMm", 120.0, "wheels.both.radiusMm", 115.0));
        assertThat(Measures.BB_HEIGHT.read(Geometry.of(low)).orNaN()).isEqualTo(-5, within(1e-9));
    }

    @Test
    void everythingThatIsMissingIsSaidAtOnceInWords() {
        assertThatThrownBy(() -> Bikes.plain().with(Inputs.STEM_LENGTH, 80))
                .isInstanceOf(Refusal.class)
                .hasMessage("Fixture is not whole; missing: headset cover (cockpit.headsetCoverMm, 0..60 mm), spacers"
                        + " (cockpit.spacersMm, 0..150 mm) and stem angle (cockpit.stemAngleDeg, −60..60°).");
    }

    @Test
    void aMisspeltKeyIsRefusedWithTheNearest() {
        assertThatThrownBy(() -> Bikes.plain().with("frame.headAngelDeg", 71))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("frame.headAngelDeg")
                .hasMessageContaining("frame.headAngleDeg");
    }

    @Test
    void redrawingLeavesTheBikeAsItWas() {
        Bike bike = Bikes.plain();
        bike.with(Inputs.HEAD_ANGLE, 73);
        assertThat(bike).isEqualTo(Bikes.plain());
    }

    @Test
    void oneLineNamesABikeAndTheNumbersItIsKnownBy() {
        assertThat(Bikes.plain().toString())
                .doesNotContain("\n")
                .contains("Fixture", "515", "366", "70.5", "47", "622×28");
    }
}
