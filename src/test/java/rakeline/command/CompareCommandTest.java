package rakeline.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code rakeline compare} and {@code rakeline limits}. */
class CompareCommandTest {
    private static final String ROAD = demo("bikes/road-s.bike.json");
    private static final String ENDURANCE = demo("bikes/endurance-s.bike.json");
    private static final String PARTS = demo("parts/road.parts.json");

    @TempDir
    Path folder;

    @Test
    void contactPointsAreOneBikesAlone() {
        CommandLineRun.of("compare", ROAD, ENDURANCE, "--same-contact", "--to", ROAD)
                .isRefusedFor("--same-contact and --to");
    }

    @Test
    void whatIsChangedSaysInWhichWayAndBringsItsCaution() {
        CommandLineRun run = CommandLineRun.of(
                "compare", ROAD, "--with", "wheels.front.mudguardGapMm=10,cockpit.spacersMm=5", "--only", "toeRoomMm");
        assertThat(run.isDone().data())
                .contains("Mudguard gap is refitted", "Spacers is redrawn", "A mudguard can jam");
    }

    @Test
    void jsonGivesValuesAndDifferencesOfEveryMeasure() {
        JsonNode json =
                CommandLineRun.of("compare", ROAD, ENDURANCE, "--json").isDone().json();
        assertThat(json.fieldNames())
                .toIterable()
                .containsExactly("bikes", "contact", "changed", "inputs", "measures", "limits");
        JsonNode trail = json.get("measures").get("trailMm");
        assertThat(trail.get("differences").get(1).doubleValue())
                .isEqualTo(trail.get("values").get(1).doubleValue()
                        - trail.get("values").get(0).doubleValue());
        assertThat(trail.get("larger").get(1).booleanValue()).isTrue();
        assertThat(json.get("contact").isNull()).isTrue();
    }

    @Test
    void theSameContactPutsTheFirstBikesPointsOnAll() {
        JsonNode height = measures("--same-contact").get("saddleHeightMm");
        assertThat(height.get("differences").get(1).doubleValue()).isZero();
    }

    @Test
    void withoutPartsTheHoodsMissByWhatTheyAreBuilt() {
        JsonNode measures = measures("--same-contact");
        double missed = measures.get("handMissXMm").get("values").get(1).doubleValue();
        assertThat(measures.get("handXMm").get("values").get(1).doubleValue() - 564.2)
                .isCloseTo(missed, within(1e-9));
    }

    @Test
    void withPartsTheHoodsComeAsNearAsTheyCan() {
        double built = Math.abs(measures("--same-contact")
                .get("handMissMm")
                .get("values")
                .get(1)
                .doubleValue());
        double matched = measures("--same-contact", "--parts", PARTS)
                .get("handMissMm")
                .get("values")
                .get(1)
                .doubleValue();
        assertThat(matched).isLessThan(built).isLessThan(3);
    }

    @Test
    void anotherBikesContactPointsGoOnAll() {
        JsonNode setback = measures("--to", demo("bikes/road-xs.bike.json"))
                .get("saddleSetbackMm")
                .get("values");
        assertThat(setback.get(0).doubleValue()).isEqualTo(193.7);
        assertThat(setback.get(1).doubleValue()).isEqualTo(193.7);
    }

    /** Ten millimetres of spacer: about −3 mm in x, +9.5 in y. Source: common practice (CP). */
    @Test
    void aChangeOfTheFirstBikeIsOneMore() {
        JsonNode json = CommandLineRun.of("compare", ROAD, "--with", "cockpit.spacersMm=25", "--json")
                .isDone()
                .json();
        assertThat(json.get("bikes").get(1).asText()).isEqualTo("Road S, Spacers 25 mm");
        JsonNode measures = json.get("measures");
        assertThat(measures.get("handXMm").get("differences").get(1).doubleValue())
                .isCloseTo(-3, within(0.3));
        assertThat(measures.get("handYMm").get("differences").get(1).doubleValue())
                .isCloseTo(9.5, within(0.3));
    }

    @Test
    void handsInSeveralPlacesAreComparedApart() {
        CommandLineRun run = CommandLineRun.of(
                "compare", ROAD, ENDURANCE, "--hands", "tops,drops", "--only", "handXMm,trailMm", "--csv", "-");
        assertThat(run.isDone().data()).contains("tops.handXMm", "drops.handXMm", "trailMm");
        assertThat(run.lines()).hasSize(4);
    }

    @Test
    void differentShoesAreToldOf() {
        CommandLineRun run = CommandLineRun.of("compare", ROAD, demo("bikes/road-xs.bike.json"));
        assertThat(run.isDone().messages()).contains("shoe.toeForwardMm", "toe numbers");
    }

    @Test
    void svgLaysTheSideViewsOverEachOther() throws IOException {
        Path svg = folder.resolve("compare.svg");
        CommandLineRun.of("compare", ROAD, ENDURANCE, "--svg", svg.toString()).isDone();
        assertThat(Files.readString(svg)).contains("<svg", "Road S", "Endurance S");
    }

    @Test
    void oneBikeAloneIsRefused() {
        CommandLineRun.of("compare", ROAD).isRefusedFor("two or more");
    }

    @Test
    void partsWithoutPointsToMatchAreRefused() {
        CommandLineRun.of("compare", ROAD, ENDURANCE, "--parts", PARTS).isRefusedFor("--parts", "--same-contact");
    }

    @Test
    void aMisspeltKeyIsRefusedWithTheNearest() {
        CommandLineRun.of("compare", ROAD, ENDURANCE, "--only", "trialMm").isRefusedFor("trialMm", "trailMm");
    }

    @Test
    void limitsSayWhatIsLeftOfSteererPostAndRails() {
        JsonNode limits =
                CommandLineRun.of("limits", ROAD, "--json").isDone().json().get("limits");
        JsonNode measures =
                CommandLineRun.of("measure", ROAD, "--json").isDone().json().get("measures");
        assertThat(limits.get(1).get("key").asText()).isEqualTo("steererLeftMm");
        assertThat(limits.get(1).get("left").get(0)).isEqualTo(measures.get("steererLeftMm"));
    }

    @Test
    void limitsArePrintedWithTheirSource() {
        assertThat(CommandLineRun.of("limits", ROAD, ENDURANCE).isDone().data())
                .contains("Rail left", "saddle.railTravelMm", "16 CFR 1512.17(c)", "≥ 25")
                .doesNotContain("race rules", "recommended");
    }

    @Test
    void raceRulesAreAGroupOfTheirOwnForThoseWhoAsk() {
        assertThat(CommandLineRun.of("limits", ROAD, "--race-rules").isDone().data())
                .contains("Race rules and recommendations", "race rules from", "≤ 75");
        JsonNode asked = CommandLineRun.of("limits", ROAD, "--race-rules", "--json")
                .isDone()
                .json();
        assertThat(asked.get("raceRules"))
                .hasSize(14)
                .allMatch(rule -> !rule.get("source").asText().isEmpty());
        assertThat(asked.get("limits").findValuesAsText("label")).noneMatch(label -> label.startsWith("race rules"));
        assertThat(CommandLineRun.of("limits", ROAD, "--json").isDone().json().has("raceRules"))
                .isFalse();
    }

    private static JsonNode measures(String... more) {
        String[] arguments = Stream.concat(Stream.of("compare", ROAD, ENDURANCE, "--json"), Stream.of(more))
                .toArray(String[]::new);
        return CommandLineRun.of(arguments).isDone().json().get("measures");
    }

    private static String demo(String file) {
        return Path.of("demo-data").resolve(file).toString();
    }
}
