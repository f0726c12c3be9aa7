package rakeline.catalogue;

import static org.assertj.core.api.Assertions.assertThat;

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
import rakeline.geometry.Inputs;
import rakeline.geometry.Provenance;
import rakeline.quantity.Entries;
import rakeline.quantity.Input;
import rakeline.quantity.Range;

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
            Bike bike = Bike.of("Any", any(random), Set.of(), Map.of());
            assertThat(again(bike)).isEqualTo(bike);
        }
    }

    @Test
    void numbersAreTheShortestDecimals() {
        assertThat(text(Bikes.plain().with("frame.stackMm", 515.0).with("fork.offsetMm", 47.25)))
                .contains("\"stackMm\": 515,", "\"offsetMm\": 47.25");
    }

    private static Entries any(Random random) {
        Entries entries = Bikes.whole().given();
        for (Input input : Inputs.all()) {
            Range range = input.quantity().accepted();
            if (!input.equals(Inputs.BB_DROP)) {
                entries = entries.with(input, range.from() + (range.to() - range.from()) * random.nextDouble());
            }
        }
        return entries;
    }

    private static Bike again(Bike bike) {
        return BikeFile.read(BikeWriter.write(bike), "again.bike.json");
    }

    private static String text(Bike bike) {
        return new String(BikeWriter.write(bike), StandardCharsets.UTF_8);
    }
}
