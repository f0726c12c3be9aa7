package rakeline.figure;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import rakeline.geometry.Bike;
import rakeline.geometry.Bikes;
import rakeline.geometry.Inputs;
import rakeline.geometry.Refit;
import rakeline.handling.Ride;

/** Bikes beside each other. */
class BikeNamesTest {
    private static final Bike BIKE = Bikes.whole();

    @Test
    void aVariantIsNamedByWhatDiffers() {
        Bike steeper = BIKE.with(Inputs.HEAD_ANGLE, 72.5);
        assertThat(BikeNames.of(List.of(Ride.of(BIKE), Ride.of(steeper))))
                .containsExactly("Fixture", "Fixture, head angle 72.5°");
    }

    @Test
    void aRefittedOneByWhatWasExchangedAndNotByWhatTurned() {
        Bike refitted = Refit.of(BIKE, Map.of(Inputs.FRONT_TYRE, 32.0)).bike();
        assertThat(BikeNames.line(List.of(Ride.of(BIKE), Ride.of(refitted))))
                .isEqualTo("Fixture, Fixture, front tyre 32 mm");
        assertThat(BikeNames.above(List.of(Ride.of(BIKE), Ride.of(refitted))).get(1))
                .isEqualTo("front tyre 32 mm");
    }

    @Test
    void othersKeepTheirNames() {
        assertThat(BikeNames.of(List.of(Ride.of(BIKE), Ride.of(BIKE.named("Other")))))
                .containsExactly("Fixture", "Other");
    }
}
