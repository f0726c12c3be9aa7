package rakeline.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class QuantityTest {
    private static final Quantity HEAD_ANGLE = Quantity.of("headAngleDeg", "Head angle", Unit.DEGREE, "For a test.")
            .within(50, 85)
            .declared();

    @ParameterizedTest
    @ValueSource(doubles = {50, 71.3, 85})
    void aValueInTheRangeIsReturned(double value) {
        assertThat(HEAD_ANGLE.check(value)).isEqualTo(value);
    }

    @ParameterizedTest
    @ValueSource(doubles = {49.999, 85.001, Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
    void aValueOutsideIsRefusedWithKeyAndRange(double value) {
        assertThatThrownBy(() -> HEAD_ANGLE.check(value))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("(headAngleDeg) is " + Decimals.shown(value))
                .hasMessageContaining("50..85");
    }

    @ParameterizedTest
    @CsvSource({
        "4.668, 0.004, 4.668 ± 0.004°",
        "4.668, 0.2, 4.7 ± 0.2°",
        "4.668, 0.05, 4.7 ± 0.1°",
        "-4.668, 0, −4.7 ± 0.0°"
    })
    void anUncertaintyHasADigit(double value, double uncertainty, String shown) {
        assertThat(HEAD_ANGLE.formatWithUncertainty(value, uncertainty)).isEqualTo(shown);
    }

    @Test
    void aKeyThatDoesNotEndInItsUnitIsRefused() {
        Quantity.Draft draft = Quantity.of("headAngle", "Head angle", Unit.DEGREE, "For a test.");
        assertThatThrownBy(draft::declared).isInstanceOf(Refusal.class).hasMessageContaining("headAngle");
    }

    @Test
    void degreesAreWrittenWithoutABlankAndMillimetresWithOne() {
        assertThat(HEAD_ANGLE.formatWithUnit(71.26)).isEqualTo("71.3°");
        assertThat(Unit.MILLIMETRE.attach("58")).isEqualTo("58 mm");
    }

    @Test
    void theNearestWordIsFoundWhateverTheCase() {
        assertThat(Nearest.of("TRIALMM", List.of("trailMm", "wheelbaseMm"))).contains("trailMm");
        assertThat(Nearest.of("WHEELBASEmm", List.of("trailMm", "wheelbaseMm"))).contains("wheelbaseMm");
    }

    @Test
    void aWordThatIsFarFromAllHasNoNearest() {
        assertThat(Nearest.of("colour", List.of("trailMm", "wheelbaseMm"))).isEmpty();
    }

    @Test
    void entriesNeverChange() {
        Input input = new Input(HEAD_ANGLE, Input.required(), 0);
        Entries none = Entries.none();
        none.with(Map.of(input, 71.0));
        assertThat(none.has(input)).isFalse();
    }

    @Test
    void entriesAreEqualWhateverWasTakenAway() {
        Input input = new Input(HEAD_ANGLE, Input.required(), 3);
        assertThat(Entries.none().with(input, 71).with(input, Double.NaN)).isEqualTo(Entries.none());
    }

    @Test
    void numbersAreCopiedOnTheWayInAndOut() {
        double[] mine = {1, 2};
        Numbers numbers = Numbers.of(mine);
        mine[0] = 9;
        numbers.toArray()[1] = 9;
        assertThat(numbers).isEqualTo(Numbers.of(1, 2));
    }

    @Test
    void anInfiniteReadingIsNoNumber() {
        assertThat(Reading.of(Double.POSITIVE_INFINITY)).isInstanceOf(Reading.Nowhere.class);
        assertThat(Reading.of(Double.NaN).reason()).isNotBlank();
    }
}
