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
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rakeline.geometry.Bikes;
import rakeline.geometry.Measures;
import rakeline.handling.Ride;
import rakeline.study.Fixture;
import rakeline.study.Vocabulary;

/** {@code rakeline sweep}. */
class SweepCommandTest {
    private static final String DEMO =
            Path.of("demo-data", "bikes", "road-xs.bike.json").toString();

    @TempDir
    Path folder;

    private String bike;

    @BeforeEach
    void bike() throws IOException {
        bike = Files.writeString(folder.resolve("small.bike.json"), BikeTexts.PLAIN)
                .toString();
    }

    @Test
    void csvHasAHeaderOfKeysTheVariedOneFirst() {
        List<String> lines = csv("--vary", "frame.headAngleDeg=69:74:1", "--track", "trailMm,wheelbaseMm")
                .lines();
        assertThat(lines.get(0)).isEqualTo("frame.headAngleDeg,trailMm,wheelbaseMm");
        assertThat(lines).hasSize(7);
    }

    @Test
    void csvHoldsFullPrecisionWithADecimalPoint() {
        String line = csv("--vary", "frame.headAngleDeg=70:71:0.5", "--track", "trailMm")
                .lines()
                .get(2);
        double trail = Bikes.value(Bikes.plain(), Measures.TRAIL);
        assertThat(line).isEqualTo("70.5," + trail);
    }

    @Test
    void csvEndsEachRecordWithALineFeed() {
        assertThat(csv("--vary", "frame.headAngleDeg=70:71:1", "--track", "trailMm")
                        .data())
                .doesNotContain("\r")
                .endsWith("\n");
    }

    @Test
    void withoutAStepThereAre201Rows() {
        assertThat(csv("--vary", "frame.headAngleDeg=69:74", "--track", "trailMm")
                        .lines())
                .hasSize(202);
    }

    @Test
    void aSweepMayRunDownward() {
        List<String> lines = csv("--vary", "frame.headAngleDeg=72:70:1", "--track", "trailMm")
                .lines();
        assertThat(lines.get(1)).startsWith("72,");
        assertThat(lines.get(3)).startsWith("70,");
    }

    @Test
    void inputsMayBeTracked() {
        assertThat(csv("--vary", "wheels.both.tyreMm=28:30:2", "--as", "redraw", "--track", "wheels.front.radiusMm")
                        .lines())
                .containsExactly("wheels.both.tyreMm,wheels.front.radiusMm", "28,339", "30,341");
    }

    @Test
    void aRefitSaysSoInAColumnOfItsOwn() {
        List<String> lines = csv("--vary", "wheels.front.tyreMm=28:30:2", "--track", "trailMm")
                .lines();
        assertThat(lines.get(0)).isEqualTo("wheels.front.tyreMm,trailMm,as");
        assertThat(lines.get(1)).endsWith(",refit");
    }

    @Test
    void heldTrailMovesTheOffset() {
        List<String> lines = csv(
                        "--vary",
                        "frame.headAngleDeg=70:73:1",
                        "--hold",
                        "trailMm=58",
                        "--by",
                        "fork.offsetMm",
                        "--track",
                        "trailMm,fork.offsetMm")
                .lines();
        double alpha = Math.toRadians(73);
        assertThat(Double.parseDouble(lines.get(4).split(",", -1)[2]))
                .isCloseTo(339 * Math.cos(alpha) - 58 * Math.sin(alpha), within(1e-9));
    }

    @Test
    void aGapLeavesItsFieldsEmptyAndItsReasonOnStandardError() {
        CommandLineRun run = csv(
                "--vary",
                "frame.headAngleDeg=55:60:5",
                "--hold",
                "trailMm",
                "--by",
                "fork.offsetMm",
                "--track",
                "trailMm,fork.offsetMm");
        assertThat(run.lines().get(1)).isEqualTo("55,,");
        assertThat(run.messages()).contains("frame.headAngleDeg = 55", "-100..120", "brings trail to");
        assertThat(run.messages().lines()).hasSize(1);
    }

    @Test
    void csvMayGoToAFile() throws IOException {
        Path file = folder.resolve("sweep.csv");
        CommandLineRun run = sweep(
                        "--vary", "frame.headAngleDeg=70:71:1", "--track", "trailMm", "--csv", file.toString())
                .isDone();
        assertThat(run.data()).isEmpty();
        assertThat(Files.readString(file)).startsWith("frame.headAngleDeg,trailMm\n70,");
    }

    @Test
    void svgMayBePrinted() throws IOException {
        assertThat(sweep("--vary", "frame.headAngleDeg=70:71:1", "--track", "trailMm", "--svg", "-")
                        .isDone()
                        .data())
                .startsWith("<")
                .contains("<svg");
        assertOnlyTheBikeIsThere();
    }

    @Test
    void twoFormsAreNotPrintedTogether() {
        sweep("--vary", "frame.headAngleDeg=70:71:1", "--track", "trailMm", "--csv", "-", "--json")
                .isRefusedFor("--csv -", "one of them");
    }

    @Test
    void whatHasNoNameIsRefusedAsSuch() {
        sweep("--vary", "frame.headAngleDeg=70:71:1", "--track", "").isRefusedFor("\"\" is neither");
        sweep("--vary", "frame.headAngleDeg=70:71:1", "--track", "trailMm", "--svg", "")
                .isRefusedFor("\"\" names no file");
    }

    @Test
    void svgIsADrawing() throws IOException {
        Path file = folder.resolve("sweep.svg");
        sweep("--vary", "frame.headAngleDeg=70:71:1", "--track", "trailMm", "--svg", file.toString())
                .isDone();
        assertThat(Files.readString(file)).contains("<svg", "Trail");
    }

    @Test
    void jsonHasItsShape() {
        JsonNode json = sweep(
                        "--vary",
                        "frame.headAngleDeg=70:72:1",
                        "--hold",
                        "trailMm",
                        "--by",
                        "fork.offsetMm",
                        "--track",
                        "wheelbaseMm",
                        "--json")
                .isDone()
                .json();
        assertThat(json.get("bike").asText()).isEqualTo("Small");
        assertThat(json.get("vary").asText()).isEqualTo("frame.headAngleDeg");
        assertThat(json.get("as").asText()).isEqualTo("redraw");
        assertThat(json.get("held").fieldNames()).toIterable().containsExactly("key", "value", "by");
        assertThat(json.get("held").get("key").asText()).isEqualTo("trailMm");
        assertThat(json.get("held").get("by").asText()).isEqualTo("fork.offsetMm");
        assertThat(json.get("held").get("value").doubleValue()).isEqualTo(Bikes.value(Bikes.plain(), Measures.TRAIL));
        assertThat(json.get("columns").get(1).fieldNames())
                .toIterable()
                .containsExactly("key", "label", "unit", "values");
        assertThat(json.get("columns").get(1).get("values")).hasSize(3);
        assertThat(json.get("gaps")).isEmpty();
    }

    @Test
    void jsonGivesNullAndAReasonForAGap() {
        JsonNode json = sweep(
                        "--vary",
                        "frame.headAngleDeg=55:60:5",
                        "--hold",
                        "trailMm",
                        "--by",
                        "fork.offsetMm",
                        "--track",
                        "trailMm",
                        "--json")
                .isDone()
                .json();
        assertThat(json.get("columns").get(1).get("values").get(0).isNull()).isTrue();
        assertThat(json.get("gaps").get(0).get("step").doubleValue()).isEqualTo(55);
        assertThat(json.get("gaps").get(0).get("reason").asText()).contains("brings trail to");
    }

    @Test
    void withoutAFormATableIsPrinted() {
        assertThat(sweep("--vary", "frame.headAngleDeg=70:71:1", "--track", "trailMm")
                        .isDone()
                        .data())
                .contains("Head angle", "Trail", "redrawn");
    }

    @Test
    void aDeclaredMeasureIsTrackedAndItsMisspellingRefused() {
        assertThat(withFixture(Fixture.KEY).lines().get(0)).isEqualTo("frame.stackMm," + Fixture.KEY);
        withFixture("stackOverReechPercent").isRefusedFor("stackOverReechPercent", Fixture.KEY);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "frame.headAngleDeg=40:74:1",
                "frame.headAngleDeg=70:86:1",
                "frame.headAngleDeg=70:74:0",
                "frame.headAngleDeg=70:74:-1",
                "frame.headAngleDeg=70:70:1",
                "frame.headAngleDeg=70",
                "frame.headAngleDeg=70:74:1:2",
                "frame.headAngleDeg=70:",
                "frame.headAngleDeg=70:74:NaN",
                "frame.headAngleDeg=70,5:74:1",
                "frame.headAngleDeg=a:b:c",
                "frame.headAngleDeg",
                "frame.headAngelDeg=70:74:1",
                "trailMm=50:60:1",
                "=70:74:1",
                ""
            })
    void aRangeThatCannotBeSweptIsRefusedAndNothingWritten(String vary) throws IOException {
        Path file = folder.resolve("sweep.csv");
        sweep("--vary", vary, "--track", "trailMm", "--json", "--csv", file.toString())
                .isRefusedFor();
        assertOnlyTheBikeIsThere();
    }

    @Test
    void holdAndByBelongTogether() throws IOException {
        Path file = folder.resolve("sweep.csv");
        sweep("--vary", "frame.headAngleDeg=70:74:1", "--hold", "trailMm", "--track", "trailMm", "--csv", file + "")
                .isRefusedFor("--hold", "--by");
        sweep("--vary", "frame.headAngleDeg=70:74:1", "--by", "fork.offsetMm", "--track", "trailMm", "--csv", file + "")
                .isRefusedFor("--hold", "--by");
        assertOnlyTheBikeIsThere();
    }

    @Test
    void whatIsMisspeltInAHoldIsRefused() {
        held("trialMm", "fork.offsetMm").isRefusedFor("trialMm", "trailMm");
        held("trailMm", "fork.ofsetMm").isRefusedFor("fork.ofsetMm", "fork.offsetMm");
        held("trailMm=5x", "fork.offsetMm").isRefusedFor("5x");
        held("trailMm", "frame.headAngleDeg").isRefusedFor("frame.headAngleDeg");
        held("trailMm", "wheels.front.mudguardGapMm").isRefusedFor("wheels.front.mudguardGapMm");
    }

    @Test
    void aStepOfNothingNamesItsOption() {
        sweep("--vary", "frame.headAngleDeg=70:74:0", "--track", "trailMm")
                .isRefusedFor("--vary frame.headAngleDeg=70:74:0", "the step is 0");
    }

    @Test
    void whatCannotBeTrackedIsRefused() {
        String[] range = {"--vary", "frame.headAngleDeg=70:74:1", "--track"};
        sweep(range[0], range[1], range[2], "trialMm").isRefusedFor("trialMm", "trailMm");
        sweep(range[0], range[1], range[2], "toeRoomMm").isRefusedFor("toeRoomMm", "crank");
        sweep(range[0], range[1], range[2], "trailMm,,bbHeightMm").isRefusedFor();
        sweep(range[0], range[1]).isRefusedFor("--track");
        sweep(range[2], "trailMm").isRefusedFor("--vary");
    }

    @Test
    void anotherWayIsRefused() {
        sweep("--vary", "frame.stackMm=500:510:1", "--track", "trailMm", "--as", "fit")
                .isRefusedFor("fit", "refit", "redraw");
        sweep("--vary", "frame.stackMm=500:510:1", "--track", "trailMm", "--as", "refit")
                .isRefusedFor("frame.stackMm", "rigid");
    }

    @Test
    void aFolderThatIsNotThereIsRefusedAndNothingWritten() throws IOException {
        for (String form : List.of("--csv", "--svg")) {
            Path file = folder.resolve("gone").resolve("sweep.out");
            sweep("--vary", "frame.stackMm=500:510:1", "--track", "trailMm", form, file.toString())
                    .isRefusedFor("gone");
        }
        assertOnlyTheBikeIsThere();
    }

    @Test
    void aFolderAsTargetIsRefusedAndNothingWritten() throws IOException {
        sweep("--vary", "frame.stackMm=500:510:1", "--track", "trailMm", "--csv", folder.toString())
                .isRefusedFor(folder.toString());
        assertOnlyTheBikeIsThere();
    }

    @Test
    void whereAFileCannotBeWrittenNothingIsPrinted() throws IOException {
        Path file = folder.resolve("gone").resolve("sweep.csv");
        sweep("--vary", "frame.stackMm=500:510:1", "--track", "trailMm", "--json", "--csv", file.toString())
                .isRefusedFor("gone");
        assertOnlyTheBikeIsThere();
    }

    @Test
    void theBikeFileStaysAsItWas() throws IOException {
        sweep("--vary", "frame.stackMm=500:510:1", "--track", "trailMm").isDone();
        assertThat(Files.readString(Path.of(bike))).isEqualTo(BikeTexts.PLAIN);
    }

    @Test
    void aWholeBikeIsSweptWithItsToes() {
        CommandLineRun run = CommandLineRun.of(
                "sweep", DEMO, "--vary", "shoe.toeForwardMm=90:110:10", "--track", "toeRoomMm", "--csv", "-");
        List<String> lines = run.isDone().lines();
        double room = Double.parseDouble(lines.get(1).split(",", -1)[1]);
        assertThat(Double.parseDouble(lines.get(3).split(",", -1)[1])).isLessThan(room - 15);
    }

    private void assertOnlyTheBikeIsThere() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            assertThat(files).containsExactly(Path.of(bike));
        }
    }

    private CommandLineRun held(String hold, String by) {
        return sweep("--vary", "frame.headAngleDeg=70:74:1", "--hold", hold, "--by", by, "--track", "trailMm");
    }

    private CommandLineRun withFixture(String track) {
        return CommandLineRun.with(
                Vocabulary.standard().and(Fixture.class, Ride::geometry),
                CommandLineRun.NO_WINDOW,
                "sweep",
                bike,
                "--vary",
                "frame.stackMm=500:510:5",
                "--track",
                track,
                "--csv",
                "-");
    }

    private CommandLineRun csv(String... options) {
        List<String> all = new ArrayList<>(List.of(options));
        all.addAll(List.of("--csv", "-"));
        return sweep(all.toArray(String[]::new)).isDone();
    }

    private CommandLineRun sweep(String... options) {
        List<String> all = new ArrayList<>(List.of("sweep", bike));
        all.addAll(List.of(options));
        return CommandLineRun.of(all.toArray(String[]::new));
    }
}
