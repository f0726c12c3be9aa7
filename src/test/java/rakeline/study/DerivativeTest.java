package rakeline.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rakeline.geometry.Inputs;
import rakeline.geometry.MassInputs;

/** Slopes of functions whose slope is known by algebra, and what they are said to be good to. */
class DerivativeTest {
    @Test
    void aSmoothSlopeIsSharpAndSaysSo() {
        Derivative found = fine(x -> Math.exp(3 * x), 0.1);
        assertThat(found.slope()).isCloseTo(3, within(1e-9));
        assertThat(found.error()).isLessThan(1e-7);
    }

    @ParameterizedTest
    @ValueSource(doubles = {1, 0.1, 0.01, 1e-3})
    void aFunctionThatBendsWithinTheStepIsTakenOverAShorterOne(double scale) {
        // D: d/dx tanh(x/s) = 1/s at 0
        Derivative found = fine(x -> Math.tanh(x / scale), 0.5);
        assertThat(found.slope()).isCloseTo(1 / scale, within(1e-7 / scale));
        assertThat(found.error()).isGreaterThanOrEqualTo(Math.abs(found.slope() - 1 / scale));
    }

    @ParameterizedTest
    @ValueSource(ints = {1, -1})
    void atAnEndTheSlopeIsTakenInwardAndIsAsGood(int side) {
        // D: d/dx √(1 + x + x³) = ½ at 0
        Derivative found = fine(x -> side * x < 0 ? Double.NaN : Math.sqrt(1 + x + x * x * x), 0.1);
        assertThat(found.slope()).isCloseTo(0.5, within(1e-7));
        assertThat(found.error()).isLessThan(1e-6);
    }

    @Test
    void hardByAnEndBothSidesAreUsedOverAShorterStep() {
        assertThat(fine(x -> x < -0.003 ? Double.NaN : Math.exp(x), 0.1).slope())
                .isCloseTo(1, within(1e-9));
    }

    @Test
    void aKinkIsSaidByItsError() {
        Derivative found = fine(x -> x > 0 ? 3 * x : x, 0.1);
        assertThat(found.slope()).isCloseTo(2, within(1e-12));
        assertThat(found.error()).isCloseTo(1, within(1e-12));
    }

    @Test
    void aKinkBesideThePlaceIsNotMetByAShorterStep() {
        Derivative found = fine(x -> x > 0.03 ? 0.03 + 5 * (x - 0.03) : x, 1);
        assertThat(found.slope()).isCloseTo(1, within(1e-9));
        assertThat(found.error()).isLessThan(1e-6);
    }

    @Test
    void aConstantHasNoSlopeAndNoError() {
        Derivative found = fine(x -> 7.7, 1);
        assertThat(found.slope()).isZero();
        assertThat(found.error()).isZero();
    }

    @Test
    void roundingIsSaidByTheError() {
        Derivative found = fine(x -> Math.rint((1 + Math.sin(x)) * 1e6) / 1e6, 0.1);
        assertThat(Math.abs(found.slope() - 1)).isLessThan(1e-3).isLessThanOrEqualTo(10 * found.error());
    }

    @Test
    void withoutAValueThereIsNoSlope() {
        assertThat(fine(x -> Double.NaN, 1).slope()).isNaN();
        assertThat(fine(x -> x == 0 ? 1 : Double.NaN, 1).slope()).isNaN();
        assertThat(fine(x -> x == 0 ? Double.NaN : 1, 1).slope()).isNaN();
    }

    @Test
    void theStepBelongsToTheQuantity() {
        assertThat(Derivative.step(MassInputs.FORK_PRODUCT.quantity(), -0.0162)).isLessThan(0.0162 / 8);
        assertThat(Derivative.step(Inputs.STACK.quantity(), 515)).isBetween(0.1, 2.0);
        assertThat(Derivative.step(Inputs.BB_DROP.quantity(), 0)).isBetween(1e-3, 1e-1);
    }

    private static Derivative fine(DoubleUnaryOperator function, double step) {
        return Derivative.at0(function, step, Derivative.FINE);
    }
}
