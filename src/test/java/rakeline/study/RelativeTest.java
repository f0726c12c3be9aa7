package rakeline.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import rakeline.geometry.Bike;
import rakeline.geometry.Bikes;
import rakeline.handling.Ride;
import rakeline.quantity.Measure;
import rakeline.quantity.Reading;
import rakeline.quantity.Refusal;

class RelativeTest {
    private static final Bike BIKE = Bikes.whole();
    private static final Ride PRESENT = Ride.of(BIKE);
    private static final Measure<Ride> TRAIL = Vocabulary.standard().measure("trailMm");

    private static Ride offset(double mm) {
        return PRESENT.on(BIKE.with("fork.offsetMm", mm));
    }

    @Test
    void thePresentBikeHasNotChanged() {
        assertThat(Relative.to(PRESENT, TRAIL).read(PRESENT).orNaN()).isZero();
    }

    @Test
    void theChangeIsInPerCentOfThePresentValue() {
        double now = TRAIL.read(PRESENT).orNaN();
        double then = TRAIL.read(offset(60)).orNaN();
        assertThat(Relative.to(PRESENT, TRAIL).read(offset(60)).orNaN())
                .isCloseTo(100 * (then / now - 1), within(1e-9));
    }

    /** A number below 0 that gets smaller changes downwards. */
    @Test
    void theSignIsThatOfTheDifferenceWhereThePresentValueIsBelow0() {
        Measure<Ride> below = new Measure<>(
                TRAIL.quantity(), ride -> Reading.of(TRAIL.read(ride).orNaN() - 1000));
        assertThat(Relative.to(PRESENT, below).read(offset(60)).orNaN()).isNegative();
    }

    @Test
    void theKeySaysThatItIsAChange() {
        assertThat(Relative.to(PRESENT, TRAIL).quantity().heading()).isEqualTo("Trail, change, %");
        assertThat(Relative.to(PRESENT, TRAIL).key()).isEqualTo("trailMmChangePercent");
    }

    @Test
    void nothingIsGivenInPerCentOf0() {
        Measure<Ride> none = new Measure<>(TRAIL.quantity(), ride -> Reading.of(0));
        assertThatThrownBy(() -> Relative.to(PRESENT, none))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("is 0; nothing can be given in per cent of it.");
    }
}
