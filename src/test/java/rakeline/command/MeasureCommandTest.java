package rakeline.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rakeline.geometry.Bikes;
import rakeline.geometry.Measures;
import rakeline.handling.Ride;
import rakeline.study.Fixture;
import rakeline.study.Vocabulary;

/** {@code rakeline measure}. */
class MeasureCommandTest {
    @TempDir
    Path folder;

    @Test
    void jsonHoldsTheNameAndEveryMeasureInFullPrecision() throws IOException {
        JsonNode json = CommandLineRun.of("measure", plain(), "--json").isDone().json();
        assertThat(json.fieldNames()).toIterable().containsExactly("bike", "measures");
        assertThat(json.get("bike").asText()).isEqualTo("Small");
        assertThat(json.get("measures").get("trailMm").doubleValue())
                .isEqualTo(Bikes.value(Bikes.plain(), Measures.TRAIL));
    }

    @Test
    void jsonLeavesOutWhatTheBikeHasNoInputsFor() throws IOException {
        JsonNode measures =
                CommandLineRun.of("measure", plain(), "--json").isDone().json().get("measures");
        assertThat(measures.has("toeRoomMm")).isFalse();
        assertThat(measures.has("barXMm")).isFalse();
        assertThat(measures.has("turnRadiusM")).isFalse();
    }

    @Test
    void jsonGivesNullWhereAMeasureHasNoValue() {
        JsonNode measures = CommandLineRun.of("measure", demo(), "--set", "ride.steerDeg=0", "--json")
                .isDone()
                .json()
                .get("measures");
        assertThat(measures.get("turnRadiusM").isNull()).isTrue();
        assertThat(measures.get("groundSteerDeg").doubleValue()).isZero();
    }

    @Test
    void jsonHoldsEveryMeasureOfAWholeBike() {
        JsonNode measures = CommandLineRun.of(
                        "measure",
                        demo(),
                        "--rider",
                        "demo-data/riders/rider-178.rider.json",
                        "--set",
                        "ride.steerDeg=10",
                        "--set",
                        "saddle.tipToSitMm=145",
                        "--json")
                .isDone()
                .json()
                .get("measures");
        assertThat(measures.fieldNames())
                .toIterable()
                .containsExactlyElementsOf(Vocabulary.standard().measures().keySet());
    }

    @Test
    void theTableNamesBikeLabelsAndUnitsWithADecimalPoint() throws IOException {
        CommandLineRun run = CommandLineRun.of("measure", plain()).isDone();
        assertThat(run.data()).contains("Small", "Trail", "70.2", "mm");
        assertThat(run.messages()).isEmpty();
    }

    @Test
    void aDeclaredMeasureIsMeasured() throws IOException {
        CommandLineRun run = CommandLineRun.with(
                Vocabulary.standard().and(Fixture.class, Ride::geometry),
                CommandLineRun.NO_WINDOW,
                "measure",
                plain(),
                "--json");
        assertThat(run.json().get("measures").get(Fixture.KEY).doubleValue())
                .isCloseTo(100 * 515 / 366.0, within(1e-9));
    }

    @Test
    void setRedraws() throws IOException {
        JsonNode json = CommandLineRun.of("measure", plain(), "--set", "frame.headAngleDeg=73", "--json")
                .isDone()
                .json();
        assertThat(json.get("measures").get("trailMm").doubleValue())
                .isEqualTo(Bikes.value(Bikes.plain().with("frame.headAngleDeg", 73), Measures.TRAIL));
    }

    @Test
    void setMayBeginAGroup() throws IOException {
        CommandLineRun run = CommandLineRun.of(
                "measure", plain(), "--set", "crank.lengthMm=170", "--set", "crank.stanceWidthMm=240", "--json");
        assertThat(run.isDone().json().get("measures").has("pedalToTyreMm")).isTrue();
    }

    @Test
    void handsMayBeOnTheTops() {
        JsonNode tops = CommandLineRun.of("measure", demo(), "--hands", "tops", "--json")
                .isDone()
                .json()
                .get("measures");
        assertThat(tops.get("handXMm")).isEqualTo(tops.get("barXMm"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "frame.headAngleDeg=71,3",
                "frame.headAngleDeg=49",
                "frame.headAngleDeg=NaN",
                "frame.headAngleDeg=71°",
                "frame.headAngleDeg=71 ",
                "frame.headAngleDeg=0x40",
                "frame.headAngleDeg=71d",
                "frame.headAngleDeg=",
                "frame.headAngleDeg"
            })
    void aValueThatCannotBeSetIsRefused(String change) throws IOException {
        CommandLineRun.of("measure", plain(), "--set", change).isRefusedFor("frame.headAngleDeg");
    }

    @Test
    void aMisspeltKeyIsRefusedWithTheNearest() throws IOException {
        CommandLineRun.of("measure", plain(), "--set", "frame.headAngelDeg=71")
                .isRefusedFor("frame.headAngelDeg", "frame.headAngleDeg");
    }

    @Test
    void aKeySetTwiceIsRefused() throws IOException {
        CommandLineRun.of("measure", plain(), "--set", "frame.stackMm=500", "--set", "frame.stackMm=510")
                .isRefusedFor("frame.stackMm", "twice");
    }

    @Test
    void aGroupBegunByHalfIsRefused() throws IOException {
        CommandLineRun.of("measure", plain(), "--set", "crank.lengthMm=170").isRefusedFor("crank.stanceWidthMm");
    }

    @Test
    void otherHandsAreRefused() throws IOException {
        CommandLineRun.of("measure", plain(), "--hands", "feet").isRefusedFor("feet", "tops", "hoods", "drops");
    }

    @Test
    void aMissingFileIsRefused() {
        CommandLineRun.of("measure", folder.resolve("missing.bike.json").toString())
                .isRefusedFor("missing.bike.json", "does not exist");
    }

    @Test
    void aPathThatTheSystemCannotNameIsRefused() {
        CommandLineRun.of("measure", "a\0b.bike.json").isRefusedFor("path", "encoding");
    }

    @Test
    void aFolderIsRefused() {
        CommandLineRun.of("measure", folder.toString()).isRefusedFor(folder.toString(), "folder");
    }

    @Test
    void anEmptyFileIsRefused() throws IOException {
        CommandLineRun.of("measure", file("")).isRefusedFor("small.bike.json", "empty");
    }

    @Test
    void aLargeFileIsRefused() throws IOException {
        Path large = folder.resolve("large.bike.json");
        try (RandomAccessFile file = new RandomAccessFile(large.toFile(), "rw")) {
            file.setLength(50_000_000);
        }
        CommandLineRun.of("measure", large.toString()).isRefusedFor("large.bike.json", "MB");
    }

    @ParameterizedTest
    @ValueSource(strings = {"{", "[]", "hello", "{\"format\": \"rakeline/worksheet\", \"version\": 1}", "\0\1\2"})
    void anotherFileIsRefused(String text) throws IOException {
        CommandLineRun.of("measure", file(text)).isRefusedFor("small.bike.json");
    }

    @Test
    void aFileWithAnAtSignIsNoListOfArguments() throws IOException {
        Files.writeString(folder.resolve("arguments"), "--json");
        CommandLineRun.of("measure", plain(), "@" + folder.resolve("arguments")).isRefusedFor("@");
    }

    private String plain() throws IOException {
        return file(BikeTexts.PLAIN);
    }

    private String file(String text) throws IOException {
        return Files.writeString(folder.resolve("small.bike.json"), text).toString();
    }

    private static String demo() {
        return Path.of("demo-data", "bikes", "road-xs.bike.json").toString();
    }
}
