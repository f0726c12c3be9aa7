package rakeline.catalogue;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import rakeline.geometry.Bike;
import rakeline.geometry.Bikes;
import rakeline.geometry.ExtremeBikes;
import rakeline.geometry.Inputs;
import rakeline.geometry.Provenance;
import rakeline.geometry.Refit;
import rakeline.quantity.Refusal;

/** What is written reads back as an equal bike. */
class BikeWriterTest {
    static List<String> demoBikes() throws IOException {
        return DemoBikesTest.files();
    }

    @ParameterizedTest
    @MethodSource("demoBikes")
    void theNumbersOfADemoBikeAreWrittenAsTheyStand(String file) throws IOException {
        byte[] bytes = Files.readAllBytes(Path.of("demo-data", "bikes", file));
        Bike bike = BikeFile.read(bytes, file);
        assertThat(numbers(text(bike))).isEqualTo(numbers(new String(bytes, StandardCharsets.UTF_8)));
        assertThat(again(bike)).isEqualTo(bike);
    }

    /** The provenance may be in another order. */
    private static String numbers(String text) {
        return text.substring(0, text.indexOf("\"provenance\""));
    }

    @Test
    void everyKeyComesBack() {
        Bike whole = BikeText.whole().read();
        assertThat(again(whole)).isEqualTo(whole);
    }

    @Test
    void onlyWhatWasGivenIsWritten() {
        assertThat(text(Bikes.plain())).doesNotContain("seatAngleAtMm", "sagMm", "radiusMm", "provenance", "crank");
    }

    @Test
    void aGroupOfDefaultsAloneComesBack() {
        Bike bike = Bike.of("Still", Bikes.plain().given(), Set.of("ride", "shoe"), Map.of());
        assertThat(again(bike)).isEqualTo(bike);
    }

    @Test
    void provenanceComesBack() {
        Map<String, Provenance> provenance = Map.of(
                "frame.stackMm", Provenance.of(Provenance.Origin.SOLVED),
                "fork.offsetMm", new Provenance(Optional.of(Provenance.Origin.MEASURED), 0.1),
                "frame.reachMm", new Provenance(Optional.empty(), 1e-7));
        Bike bike = Bike.of("Known", Bikes.plain().given(), Set.of(), provenance);
        assertThat(again(bike)).isEqualTo(bike);
    }

    @ParameterizedTest
    @ValueSource(strings = {"Größe İıß 小", "a\"b\\c", " padded ", "tab\there", "{\"format\": 1}"})
    void aNameComesBack(String name) {
        assertThat(again(Bikes.plain().named(name)).name()).isEqualTo(name);
    }

    /** Doubles of any length inside the accepted ranges. */
    @Test
    void anyNumberComesBack() {
        Random random = new Random(5);
        for (int i = 0; i < 200; i++) {
            Bike bike = ExtremeBikes.anywhere(random);
            assertThat(again(bike)).isEqualTo(bike);
        }
    }

    @Test
    void aBikeWhoseNumbersNoFileIsAcceptedWithIsNotWritten() {
        Bike turned = Refit.of(Bikes.whole().with(Inputs.BAR_DROP, 0).named("Turned"), Map.of(Inputs.FRONT_TYRE, 32.0))
                .bike();
        assertThatThrownBy(() -> BikeWriter.write(turned))
                .isInstanceOf(Refusal.class)
                .hasMessageStartingWith("Turned cannot be written to a file that could be read again: bar drop is −0.")
                .hasMessageEndingWith(" mm, accepted is 0..250 mm.");
    }

    @Test
    void numbersAreTheShortestDecimals() {
        assertThat(text(Bikes.plain().with("frame.stackMm", 515.0).with("fork.offsetMm", 47.25)))
                .contains("\"stackMm\": 515,", "\"offsetMm\": 47.25");
    }

    private static Bike again(Bike bike) {
        return BikeFile.read(BikeWriter.write(bike), "again.bike.json");
    }

    private static String text(Bike bike) {
        return new String(BikeWriter.write(bike), StandardCharsets.UTF_8);
    }
}
