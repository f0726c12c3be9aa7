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
                .containsExactly(
                        "bikes",
                        "contact",
                        "changed",
                        "inputs",
                        "measures",
                        "limits",
                        "notices",
                        "held",
                        "adjustments");
        JsonNode trail = json.get("measures").get("trailMm");
        assertThat(trail.get("differences").get(1).doubleValue())
                .isEqualTo(trail.get("values").get(1).doubleValue()
                        - trail.get("values").get(0).doubleValue());
        assertThat(trail.get("larger").get(1).booleanValue())
                .isEqualTo(Math.abs(trail.get("differences").get(1).doubleValue())
                        > 2 * trail.get("uncertainties").get(1).doubleValue());
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
    void differentCranksAndShoesAreToldOfFirst() {
        CommandLineRun run = CommandLineRun.of("compare", ROAD, demo("bikes/road-xs.bike.json"));
        assertThat(run.isDone().data())
                .startsWith(
                        "Crank length is not the same on all: Road S 170 mm, Road XS 165 mm. Toe ahead of the pedal");
    }

    @Test
    void atOneRidersPointsCranksAndShoeAreTheSameOnAll() {
        JsonNode json = CommandLineRun.of("compare", ROAD, demo("bikes/road-xs.bike.json"), "--same-contact", "--json")
                .isDone()
                .json();
        assertThat(json.get("notices")).isEmpty();
        assertThat(json.at("/measures/saddleToPedalMm/differences/1").doubleValue())
                .isZero();
        assertThat(json.get("inputs").has("crank.lengthMm")).isFalse();
    }

    /** |sit| + crank is kept, and x; what is left is Pythagoras. */
    @Test
    void onItsOwnCrankTheSaddleIsHeldFromThePedal() {
        JsonNode json = CommandLineRun.of(
                        "compare", ROAD, demo("bikes/road-xs.bike.json"), "--same-contact", "--own-cranks", "--json")
                .isDone()
                .json();
        double height = Math.hypot(206, 653.3) + 5;
        assertThat(json.at("/inputs/contact.sitYMm/values/1").doubleValue())
                .isCloseTo(Math.sqrt(height * height - 206 * 206), within(1e-9));
        assertThat(json.at("/measures/saddleSetbackMm/values/1").doubleValue()).isEqualTo(206);
        assertThat(json.get("notices")).hasSize(1);
        assertThat(json.get("held").asText()).contains("from the pedal", "setback behind BB");
    }

    @Test
    void aShorterCrankOfTheSameBikeLiftsTheSaddle() {
        JsonNode json = CommandLineRun.of("compare", ROAD, "--same-contact", "--with", "crank.lengthMm=165", "--json")
                .isDone()
                .json();
        assertThat(json.at("/measures/saddleHeightMm/differences/1").doubleValue())
                .isCloseTo(5, within(1e-9));
    }

    @Test
    void anotherReachOfTheBarBringsTheHoodsAlong() {
        JsonNode json = CommandLineRun.of(
                        "compare", ROAD, "--with", "cockpit.bar.reachMm=61", "--hands", "tops,hoods,drops", "--json")
                .isDone()
                .json()
                .get("measures");
        assertThat(json.at("/tops.handXMm/differences/1").doubleValue()).isZero();
        assertThat(json.at("/hoods.handXMm/differences/1").doubleValue()).isCloseTo(-15, within(1e-9));
        assertThat(json.at("/drops.handXMm/differences/1").doubleValue()).isCloseTo(-15, within(1e-9));
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
    void limitsSayAtWhosePoints() {
        assertThat(CommandLineRun.of("limits", ROAD, ENDURANCE).isDone().data())
                .contains("each at its own contact points");
        assertThat(CommandLineRun.of("limits", ROAD, "--to", ENDURANCE).isDone().data())
                .contains("at the contact points of Endurance S");
    }

    @Test
    void whatIsLeftIsToldEachWay() {
        JsonNode rows =
                CommandLineRun.of("limits", ROAD, "--json").isDone().json().get("adjustments");
        assertThat(rows).hasSize(10);
        assertThat(rows.get(1).get("part").asText() + " "
                        + rows.get(1).get("direction").asText())
                .isEqualTo("Spacers down");
        assertThat(rows.get(1).get("left").get(0).doubleValue()).isEqualTo(15);
        // 90 mm now; stock goes on with 100, 110, 120, 130 and 140 (CP)
        assertThat(rows.get(2).get("left").get(0).doubleValue()).isEqualTo(50);
        assertThat(rows.get(2).get("steps").get(0).doubleValue()).isEqualTo(5);
        double rails = rows.get(6).get("left").get(0).doubleValue()
                + rows.get(7).get("left").get(0).doubleValue();
        assertThat(rails).isCloseTo(40, within(1e-9));
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
