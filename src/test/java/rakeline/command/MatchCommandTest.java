package rakeline.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code rakeline match}. */
class MatchCommandTest {
    private static final String BIKE = demo("bikes/endurance-s.bike.json");
    private static final String TO = demo("bikes/road-s.bike.json");
    private static final String PARTS = demo("parts/road.parts.json");

    @TempDir
    Path folder;

    @Test
    void jsonNamesWhatIsWantedAndTheOptions() {
        JsonNode json = json(PARTS);
        assertThat(json.fieldNames())
                .toIterable()
                .containsExactly("bike", "to", "wanted", "against", "combinations", "options", "toleranceMm");
        assertThat(json.get("combinations").isIntegralNumber()).isTrue();
        assertThat(json.get("wanted").get("handXMm").doubleValue()).isEqualTo(564.2);
        assertThat(json.get("wanted").get("from").asText()).contains("Road S");
        assertThat(json.get("options")).hasSize(10);
        assertThat(json.get("options").get(0).fieldNames())
                .toIterable()
                .startsWith("stemLengthMm", "stemAngleDeg", "spacersMm")
                .contains("handDxMm", "handDyMm", "distanceMm", "toeRoomMm", "railLeftMm", "limits");
    }

    @Test
    void aRidersContactPointsMayBeWanted() {
        JsonNode json = CommandLineRun.of(
                        "match", BIKE, "--to", demo("riders/rider-178.rider.json"), "--parts", PARTS, "--json")
                .isDone()
                .json();
        assertThat(json.get("wanted").get("handXMm").doubleValue()).isEqualTo(582);
        assertThat(json.get("wanted").get("from").asText()).contains("Rider of 178 cm");
    }

    @Test
    void aNumberOfOptionsAndAllOfThemContradictEachOther() {
        CommandLineRun.of("match", BIKE, "--to", TO, "--parts", PARTS, "--top", "3", "--all")
                .isRefusedFor("--top and --all");
    }

    @Test
    void optionsComeBestFirst() {
        JsonNode options = json(PARTS, "--all").get("options");
        assertThat(options).hasSize(612);
        List<List<Double>> ranks = new ArrayList<>();
        options.forEach(option -> ranks.add(List.of(
                option.get("withinLimits").booleanValue() ? 0.0 : 1.0,
                Math.max(0, option.get("distanceMm").doubleValue() - 3))));
        for (int i = 1; i < ranks.size(); i++) {
            assertThat(compare(ranks.get(i - 1), ranks.get(i))).isNotPositive();
        }
    }

    @Test
    void aWiderToleranceLetsTheTightestLimitDecideSooner() {
        JsonNode wide = json(PARTS, "--tolerance", "30").get("options").get(0);
        assertThat(wide.get("distanceMm").doubleValue())
                .isGreaterThan(
                        json(PARTS).get("options").get(0).get("distanceMm").doubleValue());
        CommandLineRun.of("match", BIKE, "--to", TO, "--parts", PARTS, "--tolerance", "-1")
                .isRefusedFor("tolerance", "0");
    }

    @Test
    void theTightestLimitSaysWhatIsLeftAndHowSurely() {
        JsonNode tightest = json(PARTS).get("options").get(0).get("tightest");
        assertThat(tightest.fieldNames()).toIterable().containsExactly("limit", "left", "standardUncertainty");
    }

    @Test
    void postsThatPutTheSaddleOnTheSamePointAreOneOption() {
        JsonNode options = json(demo("parts/posts.parts.json"), "--all").get("options");
        assertThat(options.size()).isLessThan(20);
        assertThat(options.get(0).get("equivalentPosts").get(0).fieldNames())
                .toIterable()
                .contains("postSetbackMm", "postLengthMm", "railLeftMm");
    }

    @Test
    void whatIsBeyondALimitStandsBesideTheRank() {
        CommandLineRun run = CommandLineRun.of("match", BIKE, "--to", TO, "--parts", PARTS);
        assertThat(run.isDone().data()).containsPattern("Rank +Beyond a limit").contains("Tightest limit", "lower");
    }

    @Test
    void whatToSetGivesTheOptionsHands() {
        JsonNode best = json(PARTS).get("options").get(0);
        List<String> arguments = new ArrayList<>(List.of("measure", BIKE, "--json"));
        best.get("set").properties().forEach(one -> {
            arguments.add("--set");
            arguments.add(one.getKey() + "=" + one.getValue().asText());
        });
        JsonNode measures = CommandLineRun.of(arguments.toArray(String[]::new))
                .isDone()
                .json()
                .get("measures");
        assertThat(measures.get("handXMm").doubleValue() - 564.2)
                .isCloseTo(best.get("handDxMm").doubleValue(), within(1e-9));
        assertThat(measures.get("railLeftMm")).isEqualTo(best.get("railLeftMm"));
        assertThat(measures.get("toeRoomMm")).isEqualTo(best.get("toeRoomMm"));
    }

    @Test
    void anExceededLimitCarriesWhatIsLeftAndItsSource() {
        JsonNode limit = json(PARTS).get("options").get(0).get("limits").get(0);
        assertThat(limit.get("key").asText()).isEqualTo("toeRoomMm");
        assertThat(limit.get("left").doubleValue()).isNegative();
        assertThat(limit.get("source").asText()).isNotBlank();
    }

    @Test
    void theTableSaysWhoseHandsAndWhatVaries() {
        CommandLineRun run = CommandLineRun.of("match", BIKE, "--to", TO, "--parts", PARTS, "--top", "3");
        assertThat(run.isDone().data())
                .contains(
                        "Endurance S to the contact points of Road S", "best 3 of 612", "spacers, stems", "Caution: ");
    }

    /** The three best all have a stem of one length; it was chosen all the same. */
    @Test
    void whatWasChosenIsShownThoughItIsTheSameInAllRows() {
        CommandLineRun run =
                CommandLineRun.of("match", demo("bikes/road-m.bike.json"), "--to", TO, "--parts", PARTS, "--top", "3");
        assertThat(run.isDone().data()).contains("Stem length, mm", "Stem angle, °", "Spacers, mm");
    }

    @Test
    void csvHasOneRecordAnOption() {
        CommandLineRun run = CommandLineRun.of("match", BIKE, "--to", TO, "--parts", PARTS, "--csv", "-");
        assertThat(run.isDone().lines()).hasSize(11);
        assertThat(run.lines().get(0)).startsWith("rank,limits,stemLengthMm,stemAngleDeg,spacersMm");
    }

    @Test
    void svgLaysTheBestOptionOverTheOtherBike() throws IOException {
        Path svg = folder.resolve("match.svg");
        CommandLineRun.of("match", BIKE, "--to", TO, "--parts", PARTS, "--svg", svg.toString())
                .isDone();
        assertThat(Files.readString(svg)).contains("<svg", "Endurance S");
    }

    @Test
    void leversMayBeComparedWithAThirdBike() {
        JsonNode json = json(PARTS, "--against", demo("bikes/gravel-s.bike.json"));
        assertThat(json.get("against").asText()).isEqualTo("Gravel S");
    }

    @Test
    void handsOnTheDropsMoveTheLeverAndNotWhatIsWanted() {
        JsonNode hoods = json(PARTS).get("options").get(0);
        JsonNode drops = json(PARTS, "--hands", "drops").get("options").get(0);
        assertThat(drops.get("handDxMm")).isEqualTo(hoods.get("handDxMm"));
        assertThat(drops.get("handLeverMm").doubleValue())
                .isLessThan(hoods.get("handLeverMm").doubleValue());
    }

    @Test
    void noOptionsAtAllAreRefused() {
        CommandLineRun.of("match", BIKE, "--to", TO, "--parts", PARTS, "--top", "0")
                .isRefusedFor("--top", "1");
    }

    @Test
    void anotherFileInPlaceOfPartsIsRefused() {
        CommandLineRun.of("match", BIKE, "--to", TO, "--parts", TO).isRefusedFor("road-s.bike.json", "rakeline/parts");
    }

    @Test
    void tooLongAListIsRefused() {
        CommandLineRun.of("match", BIKE, "--to", TO, "--parts", demo("parts/workshop.parts.json"), "--all")
                .isRefusedFor("Whole workshop", "combinations");
    }

    private static JsonNode json(String parts, String... more) {
        String[] arguments = Stream.concat(
                        Stream.of("match", BIKE, "--to", TO, "--parts", parts, "--json"), Stream.of(more))
                .toArray(String[]::new);
        return CommandLineRun.of(arguments).isDone().json();
    }

    private static int compare(List<Double> one, List<Double> other) {
        for (int i = 0; i < one.size(); i++) {
            int order = Double.compare(one.get(i), other.get(i));
            if (order != 0) {
                return order;
            }
        }
        return 0;
    }

    private static String demo(String file) {
        return Path.of("demo-data").resolve(file).toString();
    }
}
