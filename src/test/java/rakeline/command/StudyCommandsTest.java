package rakeline.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import rakeline.geometry.Bikes;
import rakeline.geometry.Measures;

/** {@code rakeline map}, {@code seek}, {@code solve}, {@code sensitivity}, {@code spread} and {@code sizes}. */
class StudyCommandsTest {
    private static final String HEAD = "frame.headAngleDeg";

    @TempDir
    Path folder;

    private String bike;

    @BeforeEach
    void bike() throws IOException {
        bike = Files.writeString(folder.resolve("small.bike.json"), BikeTexts.PLAIN)
                .toString();
    }

    @Test
    void seekPrintsItsSolutionsAndNoNearest() {
        JsonNode json = run("seek", "--vary", HEAD + "=66:76", "--target", "trailMm=58", "--json")
                .json();
        double alpha = Math.acos(47 / Math.hypot(339, 58)) - Math.atan2(58, 339);
        assertThat(json.get("solutions")).hasSize(1);
        assertThat(json.get("solutions").get(0).asDouble()).isCloseTo(Math.toDegrees(alpha), within(1e-9));
        assertThat(json.get("nearest").isNull()).isTrue();
    }

    @Test
    void seekPrintsTheNearestWhereThereIsNoSolution() {
        JsonNode json = run("seek", "--vary", HEAD + "=76:66", "--target", "trailMm=20", "--json")
                .json();
        assertThat(json.get("solutions")).isEmpty();
        assertThat(json.get("nearest").get("at").asDouble()).isEqualTo(76);
        assertThat(json.get("nearest").get("value").asDouble()).isCloseTo(36.08, within(0.01));
    }

    @Test
    void seekHoldsAMeasureBesides() {
        JsonNode json = run(
                        "seek",
                        "--vary",
                        HEAD + "=66:76",
                        "--target",
                        "fork.offsetMm=50",
                        "--hold",
                        "trailMm=58",
                        "--by",
                        "fork.offsetMm",
                        "--json")
                .json();
        double alpha = Math.acos(50 / Math.hypot(339, 58)) - Math.atan2(58, 339);
        assertThat(json.get("solutions").get(0).asDouble()).isCloseTo(Math.toDegrees(alpha), within(1e-8));
        assertThat(json.get("held").get("by").asText()).isEqualTo("fork.offsetMm");
    }

    @Test
    void seekSaysInWordsWhatItFound() {
        assertThat(run("seek", "--vary", HEAD + "=66:76", "--target", "trailMm=20")
                        .data())
                .contains("No solution; the nearest is 36.1 mm at 76°.", "Held: every other input, as drawn.");
    }

    @Test
    void solvePrintsValuesAndMeasures() {
        JsonNode json = run(
                        "solve",
                        "--vary",
                        HEAD,
                        "--vary",
                        "fork.offsetMm=20:80",
                        "--target",
                        "trailMm=58",
                        "--target",
                        "frontCentreMm=590",
                        "--json")
                .json();
        JsonNode first = json.get("solutions").get(0);
        double head = first.get("values").get(HEAD).asDouble();
        double offset = first.get("values").get("fork.offsetMm").asDouble();
        assertThat(Bikes.value(Bikes.plain().with(HEAD, head).with("fork.offsetMm", offset), Measures.FRONT_CENTRE))
                .isCloseTo(590, within(1e-7));
        assertThat(first.get("measures").get("trailMm").asDouble()).isCloseTo(58, within(1e-7));
        assertThat(json.get("nearest").isNull()).isTrue();
    }

    @Test
    void solveSaysByHowMuchEachTargetIsMissed() {
        JsonNode json = run(
                        "solve",
                        "--vary",
                        HEAD + "=70:74",
                        "--vary",
                        "fork.offsetMm=40:50",
                        "--target",
                        HEAD + "=72",
                        "--target",
                        "fork.offsetMm=60",
                        "--json")
                .json();
        assertThat(json.get("solutions")).isEmpty();
        assertThat(json.get("nearest").get("missed").get("fork.offsetMm").asDouble())
                .isCloseTo(-10, within(1e-9));
    }

    @Test
    void theMapsCsvHasTheTwoKeysAndTheMeasure() {
        List<String> lines = map("--csv", "-").lines();
        assertThat(lines.get(0)).isEqualTo("frame.headAngleDeg,fork.offsetMm,trailMm");
        assertThat(lines).hasSize(1 + 3 * 4);
        assertThat(lines.get(2)).startsWith("70,45,");
    }

    @Test
    void theMapsJsonHasAListForEachX() {
        JsonNode json = map("--json").json();
        assertThat(json.get("values")).hasSize(3);
        assertThat(json.get("values").get(0)).hasSize(4);
        assertThat(json.get("values").get(2).get(3).asDouble())
                .isEqualTo(Bikes.value(Bikes.plain().with(HEAD, 72).with("fork.offsetMm", 52), Measures.TRAIL));
        assertThat(json.get("x").get("here").asDouble()).isEqualTo(70.5);
        assertThat(json.get("y").get("as").asText()).isEqualTo("redraw");
    }

    @Test
    void theMapIsDrawn() throws IOException {
        Path svg = folder.resolve("map.svg");
        map("--svg", svg.toString()).isDone();
        assertThat(Files.readString(svg)).contains("Head angle, °", "Fork offset, mm", "Trail, mm", "The ring is");
    }

    @Test
    void theMapIsReadAsItLies() {
        assertThat(map().lines()).anyMatch(line -> line.contains("Head angle 70°  Head angle 71°"));
    }

    @Test
    void spreadPrintsEachMeasureAtTheTop() {
        JsonNode json = run("spread", "--json", "--draws", "200").json();
        JsonNode trail = json.get("trailMm");
        assertThat(trail.get("value").asDouble()).isEqualTo(Bikes.value(Bikes.plain(), Measures.TRAIL));
        assertThat(trail.get("standardUncertainty").asDouble()).isCloseTo(1.8, within(0.1));
        assertThat(trail.get("nullShare").asDouble()).isZero();
        assertThat(json.get("stepMm")).isNull();
    }

    @Test
    void spreadGivesTheSameForTheSameSeed() {
        String[] words = {"--track", "trailMm", "--draws", "200", "--seed", "5", "--json"};
        assertThat(run("spread", words).data()).isEqualTo(run("spread", words).data());
    }

    @Test
    void spreadShowsWhatEachInputContributes() {
        assertThat(run("spread", "--track", "trailMm", "--draws", "200", "--parts")
                        .data())
                .contains("Head angle", "Both wheels, wheel radius");
    }

    @Test
    void sensitivityPrintsMeasuresByInputs() {
        JsonNode json = run("sensitivity", "--vary", HEAD + ",fork.offsetMm", "--track", "trailMm", "--json")
                .json();
        assertThat(json.get("trailMm").get("fork.offsetMm").asDouble())
                .isCloseTo(-1 / Math.sin(Math.toRadians(70.5)), within(1e-8));
    }

    @Test
    void sizesPrintsWhatEachNeeds() {
        JsonNode json = CommandLineRun.of(
                        "sizes", bike, bike, "--floor", "frontCentreMm=600", "--hold", "trailMm=60", "--json")
                .isDone()
                .json();
        JsonNode size = json.get("sizes").get(1);
        assertThat(size.get("keeps").asBoolean()).isFalse();
        assertThat(size.get("measures").get("frontCentreMm").asDouble()).isCloseTo(600, within(1e-7));
        assertThat(size.get("measures").get("trailMm").asDouble()).isCloseTo(60, within(1e-7));
        assertThat(size.get("headAngleDeg").asDouble()).isLessThan(70.5);
    }

    @ParameterizedTest
    @CsvSource({
        "'--vary frame.headAngleDeg=66 --target trailMm=58', KEY=FROM:TO",
        "'--vary frame.headAngleDeg=66:76:1 --target trailMm=58', KEY=FROM:TO",
        "'--vary frame.headAngleDeg=66:66 --target trailMm=58', two different numbers",
        "'--vary frame.headAngleDeg=40:66 --target trailMm=58', 50..85",
        "'--vary frame.headangleDeg=66:76 --target trailMm=58', did you mean frame.headAngleDeg?",
        "'--vary frame.headAngleDeg=66:76 --target trailMn=58', did you mean trailMm?",
        "'--vary frame.headAngleDeg=66:76 --target trailMm', MEASURE=VALUE",
        "'--vary frame.headAngleDeg=66:76 --target trailMm=58,5', decimal point",
        "'--vary frame.headAngleDeg=66:76 --target toeRoomMm=0', does not give what toe room (toeRoomMm) needs",
        "'--vary frame.headAngleDeg=66:76 --target trailMm=58 --hold wheelbaseMm', --by",
        "'--vary frame.headAngleDeg=66:76 --target trailMm=58 --as refit', belongs to the frame",
    })
    void seekRefuses(String words, String reason) {
        run("seek", words.split(" ")).isRefusedFor(reason);
    }

    @ParameterizedTest
    @CsvSource({
        "'map --vary fork.offsetMm=40:50:1 --track trailMm', accepted is twice",
        "'map --vary fork.offsetMm=40:50:0 --vary frame.headAngleDeg=70:72:1 --track trailMm', above 0",
        "'map --vary fork.offsetMm=40:50:1 --vary fork.offsetMm=40:50:1 --track trailMm', varied twice",
        "'solve --vary fork.offsetMm --target trailMm=58 --target wheelbaseMm=990', 1 inputs to vary for 2 targets",
        "'spread --draws 7', 100..1000000",
        "'spread --draws 1e3', is not a whole number",
        "'spread --seed a', is not a whole number",
        "'spread --draws 100 --json --csv -', accepted is one of them",
        "'spread --track trailMn', did you mean trailMm?",
        "'sizes --floor trailMm', MEASURE=VALUE",
    })
    void theOthersRefuse(String words, String reason) {
        String[] parts = words.split(" ", 2);
        run(parts[0], parts[1].split(" ")).isRefusedFor(reason);
    }

    @ParameterizedTest
    @ValueSource(strings = {"map", "seek", "solve", "sensitivity", "spread", "sizes"})
    void eachHasHelpThatGivesTheShapeOfItsJson(String command) {
        assertThat(CommandLineRun.of(command, "--help").isDone().data()).contains("--json", "--csv", "--svg", "{");
    }

    private CommandLineRun map(String... more) {
        List<String> words = new ArrayList<>(
                List.of("--vary", HEAD + "=70:72:1", "--vary", "fork.offsetMm=40:52:5", "--track", "trailMm"));
        words.addAll(List.of(more));
        return run("map", words.toArray(String[]::new));
    }

    private CommandLineRun run(String command, String... options) {
        List<String> words = new ArrayList<>(List.of(command, bike));
        words.addAll(List.of(options));
        return CommandLineRun.of(words.toArray(String[]::new));
    }
}
