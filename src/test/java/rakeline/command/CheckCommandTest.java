package rakeline.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** {@code rakeline check}, of bike files. */
class CheckCommandTest {
    @TempDir
    Path folder;

    @Test
    void theDemoBikesAreClean() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("demo-data", "bikes"))) {
            List<String> arguments =
                    Stream.concat(Stream.of("check"), files.map(Path::toString)).toList();
            CommandLineRun run =
                    CommandLineRun.of(arguments.toArray(String[]::new)).isDone();
            assertThat(run.data() + run.messages()).isEmpty();
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "riders/rider-178.rider.json",
                "customer/customer.rider.json",
                "parts/road.parts.json",
                "customer/customer.parts.json",
                "customer/present.bike.json",
                "dynamics/benchmark.dynamics.json"
            })
    void riderPartsAndParametersAreRead(String file) {
        CommandLineRun run = CommandLineRun.of("check", "demo-data/" + file).isDone();
        assertThat(run.data() + run.messages()).isEmpty();
    }

    @Test
    void momentsOfInertiaOfNoBodyAreSaid() throws IOException {
        String text = Files.readString(Path.of("demo-data/bikes/road-xs.bike.json"), StandardCharsets.UTF_8)
                .replaceFirst("\"provenance\"", "\"masses\": {\"fork\": {\"productKgM2\": 5}},\n  \"provenance\"");
        String file = Files.writeString(folder.resolve("odd.bike.json"), text, StandardCharsets.UTF_8)
                .toString();
        CommandLineRun check = CommandLineRun.of("check", file);
        assertThat(check.code()).isEqualTo(1);
        assertThat(check.messages()).contains("odd.bike.json: no body has the moments of inertia of fork and bar");
        CommandLineRun measure = CommandLineRun.of("measure", file, "--json").isDone();
        assertThat(measure.messages()).contains("No body has the moments of inertia of fork and bar");
        assertThat(measure.json().at("/measures/weaveSpeedMps").isNull()).isTrue();
        assertThat(measure.json().at("/measures/trailMm").isNumber()).isTrue();
    }

    @ParameterizedTest
    @CsvSource({
        "bad.rider.json,rakeline/rider,statureMm",
        "bad.parts.json,rakeline/parts,stemz",
        "bad.dynamics.json,rakeline/dynamics,accepted",
        "plain.json,rakeline/rider,statureMm",
        "plain.json,rakeline/saddle,rakeline/saddle"
    })
    void whatCannotBeReadIsRefusedByItsKind(String name, String format, String word) throws IOException {
        String text = "{\"format\": \"" + format + "\", \"version\": 1, \"name\": \"Bad\", \"stemz\": []}";
        String file = Files.writeString(folder.resolve(name), text).toString();
        CommandLineRun run = CommandLineRun.of("check", file);
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.data()).isEmpty();
        assertThat(run.messages()).contains(name).hasLineCount(1);
        assertThat(run.messages()).containsAnyOf(word, "stemz");
    }

    @Test
    void aChartedNumberThatRoundingDoesNotExplainFails() throws IOException {
        CommandLineRun run = CommandLineRun.of("check", charted(80));
        assertThat(run.code()).isEqualTo(1);
        assertThat(run.data()).isEmpty();
        assertThat(run.messages())
                .contains("charted.bike.json", "charted.trailMm", "80", "70.2")
                .hasLineCount(1);
    }

    @Test
    void aChartedNumberWithinRoundingIsClean() throws IOException {
        CommandLineRun.of("check", charted(70)).isDone();
    }

    @Test
    void aRefusedFileOutweighsOneThatFails() throws IOException {
        CommandLineRun run = CommandLineRun.of(
                "check", charted(80), folder.resolve("missing.bike.json").toString());
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.messages()).hasLineCount(2);
    }

    private String charted(double trail) throws IOException {
        String text = BikeTexts.PLAIN.replace("\"fork\"", "\"charted\": {\"trailMm\": " + trail + "},\n  \"fork\"");
        return Files.writeString(folder.resolve("charted.bike.json"), text).toString();
    }
}
