package rakeline.study.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rakeline.catalogue.BikeFile;
import rakeline.catalogue.Bytes;
import rakeline.catalogue.PartsFile;
import rakeline.catalogue.RiderFile;
import rakeline.geometry.Bike;
import rakeline.geometry.ContactMeasures;
import rakeline.geometry.Geometry;
import rakeline.geometry.Hands;
import rakeline.geometry.Inputs;
import rakeline.geometry.parts.Stock;
import rakeline.handling.Ride;
import rakeline.rider.Rider;
import rakeline.rider.RiderMeasures;

/** The invented customer: a rider, the present bike measured by X and Y, parts, and two sizes to choose from. */
class CustomerTest {
    private static final Path FOLDER = Path.of("demo-data");

    private static Bike bike(String file) {
        return BikeFile.read(Bytes.read(FOLDER.resolve(file), BikeFile.SIZE_LIMIT), file);
    }

    private static Bike present() {
        return bike("customer/present.bike.json");
    }

    private static Rider rider() {
        String file = "customer/customer.rider.json";
        return RiderFile.read(Bytes.read(FOLDER.resolve(file), RiderFile.SIZE_LIMIT), file);
    }

    private static Stock parts() {
        String file = "customer/customer.parts.json";
        return PartsFile.read(Bytes.read(FOLDER.resolve(file), PartsFile.SIZE_LIMIT), file);
    }

    @Test
    void thePresentBikeHasItsHoodsWhereTheyWereMeasured() {
        double miss = ContactMeasures.HAND_MISS.read(Geometry.of(present())).orNaN();
        assertThat(miss).isLessThan(3);
    }

    @Test
    void whatWasMeasuredCarriesItsUncertainty() {
        assertThat(Wanted.of(present()).standard())
                .containsEntry("handXMm", 3.0)
                .containsEntry("sitYMm", 4.0);
    }

    @Test
    void theSaddleStandsNear0883OfTheInseam() {
        // in Peveler et al. 2005 (S)
        Ride ride = Ride.of(present(), Optional.of(rider()), Hands.HOODS);
        assertThat(RiderMeasures.SADDLE_HEIGHT_OF_INSEAM.read(ride.ridden()).orNaN())
                .isCloseTo(88.3, within(1.0));
    }

    @ParameterizedTest
    @ValueSource(strings = {"bikes/endurance-xs.bike.json", "bikes/endurance-s.bike.json"})
    void eitherSizePutsTheHandsWithinThreeMillimetres(String file) {
        Option best = Match.of(bike(file), present(), parts()).best(1).first();
        assertThat(best.distanceMm()).isLessThan(3);
        assertThat(best.bike().get(Inputs.CONTACT_SIT_Y)).isEqualTo(661);
    }

    @ParameterizedTest
    @ValueSource(strings = {"bikes/endurance-xs.bike.json", "bikes/endurance-s.bike.json"})
    void thePostureClosesOnEitherSize(String file) {
        Bike fitted = Wanted.of(present()).on(bike(file));
        assertThat(Ride.of(fitted, Optional.of(rider()), Hands.HOODS).ridden().misses())
                .isEmpty();
    }
}
