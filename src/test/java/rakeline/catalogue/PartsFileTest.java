package rakeline.catalogue;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import rakeline.geometry.Bike;
import rakeline.geometry.Inputs;
import rakeline.geometry.parts.Category;
import rakeline.geometry.parts.Part;
import rakeline.geometry.parts.Stock;
import rakeline.quantity.Limit;
import rakeline.quantity.Refusal;
import rakeline.study.fit.Match;

/** Files of stock parts. */
class PartsFileTest {
    static List<Path> demoFiles() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("demo-data", "parts"))) {
            return files.sorted().toList();
        }
    }

    @Test
    void aBarMayGiveItsReachAlone() {
        Stock stock = read("\"bars\": [{\"widthMm\": 400, \"reachMm\": [65, 75]}]");
        assertThat(stock.choices(Category.BARS)).hasSize(2);
    }

    @Test
    void aBarThatGivesHoodsAndLeversIsRefused() {
        String both = "\"bars\": [{\"widthMm\": 400, \"reachMm\": 75, \"hoodForwardMm\": 110, \"hoodRiseMm\": 10,"
                + " \"leverAheadMm\": 35, \"leverUpMm\": 10}]";
        assertThatThrownBy(() -> read(both)).isInstanceOf(Refusal.class).hasMessageContaining("leverAheadMm");
    }

    @Test
    void everyCombinationOfTheNumbersIsAPart() {
        Stock stock = read("\"bars\": [{\"widthMm\": [380, 400], \"hoodForwardMm\": 110, \"hoodRiseMm\": [10, 20]}]");
        assertThat(stock.choices(Category.BARS)).hasSize(4);
        assertThat(stock.combinations()).isEqualTo(4);
    }

    @Test
    void aStemCanBeTurnedOver() {
        assertThat(angles("\"angleDeg\": [6, 0, 17]")).containsExactly(-17.0, -6.0, 0.0, 6.0, 17.0);
    }

    @Test
    void aStemThatCannotBeTurnedOverSaysSo() {
        assertThat(angles("\"angleDeg\": [6, 17], \"flips\": false")).containsExactly(6.0, 17.0);
    }

    @Test
    void aTyreGoesOnBothWheels() {
        Part tyre =
                read("\"tyres\": [{\"widthMm\": 32}]").choices(Category.TYRES).get(0);
        assertThat(tyre.numbers()).isEqualTo(Map.of(Inputs.FRONT_TYRE, 32.0, Inputs.REAR_TYRE, 32.0));
    }

    @Test
    void spacersAreStacked() {
        Stock stock = read("\"spacers\": {\"heightsMm\": [5, 10], \"upToMm\": 20, \"limitMm\": 15}");
        assertThat(stock.choices(Category.SPACERS))
                .extracting(part -> part.get(Inputs.SPACERS, Double.NaN))
                .containsExactly(0.0, 5.0, 10.0, 15.0, 20.0);
        assertThat(stock.spacerLimitMm()).isEqualTo(15);
    }

    @Test
    void spacersWithoutALimitTakeTheCautiousUsualOne() {
        assertThat(read("\"spacers\": {\"heightsMm\": 5}").spacerLimitMm()).isEqualTo(30);
    }

    @Test
    void aCategoryThatIsAbsentStaysAsOnTheBike() {
        assertThat(read("\"cranks\": [{\"lengthMm\": 165}]").choices(Category.POSTS))
                .containsExactly(Part.AS_IT_IS);
    }

    @Test
    void aStockSaysWhatItHolds() {
        assertThat(read("\"cranks\": [{\"lengthMm\": [165, 170]}]").toString()).isEqualTo("Stock · 2 cranks");
    }

    @Test
    void aLimitCarriesItsSideAndSource() {
        Stock stock = read("\"limits\": [{\"key\": \"trailMm\", \"atMost\": 70, \"source\": \"house rule\"}]");
        assertThat(stock.bounds()).singleElement().satisfies(bound -> {
            assertThat(bound.key()).isEqualTo("trailMm");
            assertThat(bound.limit().side()).isEqualTo(Limit.Side.AT_MOST);
            assertThat(bound.limit().source()).isEqualTo("house rule");
        });
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '~', textBlock = """
            "stem": []                                              | stem      | stems
            "stems": []                                             | stems     | at least one
            "stems": {}                                             | stems     | list
            "stems": [{"lengthMm": 90}]                             | stems     | angleDeg
            "stems": [{"lengthMm": 90, "angleDeg": []}]             | angleDeg  | list of numbers
            "stems": [{"lengthMm": 900, "angleDeg": 6}]             | lengthMm  | 0..200
            "stems": [{"lengthMm": "90", "angleDeg": 6}]            | lengthMm  | number
            "stems": [{"lengthMm": 90, "angelDeg": 6}]              | angelDeg  | angleDeg
            "stems": [{"lengthMm": 90, "angleDeg": 6, "flips": 1}]  | flips     | true or false
            "bars": [{"widthMm": 400, "flips": true}]               | flips     | bars
            "spacers": [5]                                          | spacers   | group
            "spacers": {"heightsMm": [0, 5]}                        | heightsMm | from 1 mm
            "spacers": {"heightsMm": 5, "upToMm": 500}              | upToMm    | 0..150
            "limits": [{"key": "toeRoomMm", "source": "x"}]         | limits    | atLeast
            "limits": [{"key": "toeRoomMm", "atLeast": 1}]          | limits    | source
            """)
    void aPartsFileIsRefusedInASentence(String body, String place, String accepted) {
        assertThatThrownBy(() -> read(body))
                .isInstanceOf(Refusal.class)
                .hasMessageContainingAll("stock.parts.json", place, accepted);
    }

    @Test
    void anotherFormatIsRefused() {
        assertThatThrownBy(() -> PartsFile.read(bytes("{\"format\": \"rakeline/bike\"}"), "x.json"))
                .isInstanceOf(Refusal.class)
                .hasMessageContainingAll("x.json", "rakeline/parts");
    }

    @Test
    void theFormatOfAFileIsReadWithoutReadingTheRest() {
        assertThat(Format.of(bytes("{\"format\": \"rakeline/rider\", \"odd\": 1}"), "x"))
                .isEqualTo("rakeline/rider");
        assertThat(Format.of(bytes("{\"odd\": 1}"), "x")).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("demoFiles")
    void theBundledPartsFitABundledBike(Path file) throws IOException {
        Stock stock = PartsFile.read(Files.readAllBytes(file), file.toString());
        Path bikeFile = Path.of("demo-data", "bikes", "road-xs.bike.json");
        Bike bike = BikeFile.read(Files.readAllBytes(bikeFile), "road-xs");
        assertThat(Match.of(bike, bike, stock).best(1).first().distanceMm()).isLessThan(30);
    }

    private static List<Double> angles(String body) {
        return read("\"stems\": [{\"lengthMm\": 90, " + body + "}]").choices(Category.STEMS).stream()
                .map(part -> part.get(Inputs.STEM_ANGLE, Double.NaN))
                .toList();
    }

    private static Stock read(String body) {
        String head = "{\"format\": \"rakeline/parts\", \"version\": 1, \"name\": \"Stock\", ";
        return PartsFile.read(bytes(head + body + "}"), "stock.parts.json");
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
