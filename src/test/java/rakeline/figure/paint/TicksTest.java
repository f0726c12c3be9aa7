package rakeline.figure.paint;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rakeline.quantity.Range;
import rakeline.quantity.Unit;

class TicksTest {
    @Test
    void aRangeOfDegreesIsTickedInWholeOnes() {
        assertThat(Ticks.in(new Range(69, 74), 6, 0.1).texts(Unit.DEGREE))
                .containsExactly("69°", "70°", "71°", "72°", "73°", "74°");
    }

    @Test
    void allTicksShowTheDecimalsOfTheirStep() {
        assertThat(Ticks.in(new Range(0, 1), 5, 0.1).texts(Unit.MILLIMETRE))
                .containsExactly("0.0", "0.2", "0.4", "0.6", "0.8", "1.0");
    }

    @Test
    void ticksAreNoCloserThanTheLastShownDecimal() {
        assertThat(Ticks.in(new Range(58, 58.3), 10, 0.1).values()).containsExactly(58.0, 58.1, 58.2, 58.3);
    }

    @ParameterizedTest
    @CsvSource({"-31.5,20.25,5", "0.001,0.0017,4", "1e6,5e6,3", "-7e-5,3e-5,6", "968,1013,5"})
    void ticksLieInTheRangeAndAreNoMoreThanThereIsRoomFor(double from, double to, int most) {
        assertThat(Ticks.in(new Range(from, to), most, 1e-12).values())
                .hasSizeBetween(1, most + 1)
                .allMatch(value -> value >= from - 1e-9 * (to - from) && value <= to + 1e-9 * (to - from));
    }

    @Test
    void aSingleTickIsJoinedByAnother() {
        assertThat(Ticks.atLeastTwo(new Range(1.5, 3.9), 1, 0.1).values()).hasSizeGreaterThanOrEqualTo(2);
    }

    @Test
    void negativeNumbersHaveATrueMinus() {
        assertThat(Ticks.in(new Range(-20, 0), 1, 1).texts(Unit.MILLIMETRE)).containsExactly("−20", "0");
    }
}
