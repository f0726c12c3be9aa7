package rakeline.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a hands-off bicycle does, from its 25 numbers or from a bike. */
class StabilityCommandTest {
    private static final String BENCHMARK = "demo-data/dynamics/benchmark.dynamics.json";
    private static final String ROAD = "demo-data/bikes/road-xs.bike.json";

    @TempDir
    private Path folder;

    @Test
    void jsonGivesMatricesAndCriticalSpeeds() {
        JsonNode json = run("--parameters", BENCHMARK, "--json").isDone().json();
        assertThat(json.at("/M/0/0").doubleValue()).isCloseTo(80.81722, within(1e-12));
        assertThat(json.at("/K2/0/1").doubleValue()).isCloseTo(76.59734589573222, within(1e-12));
        assertThat(json.get("weaveSpeedMps").doubleValue()).isCloseTo(4.29238253634111, within(1e-11));
        assertThat(json.get("capsizeSpeedMps").doubleValue()).isCloseTo(6.02426201538837, within(1e-11));
        assertThat(json.has("eigenvalues")).isFalse();
    }

    @Test
    void ridingHandsOffHasItsCaution() {
        assertThat(run("--parameters", BENCHMARK, "--json")
                        .isDone()
                        .json()
                        .get("cautions")
                        .toString())
                .contains("Riding hands off can throw a rider");
        assertThat(run("--parameters", BENCHMARK).isDone().data())
                .contains("Caution: Riding hands off can throw a rider");
    }

    @Test
    void jsonGivesFourPairsAtEachSpeed() {
        JsonNode values = run("--parameters", BENCHMARK, "--json", "--speeds", "0:10:1")
                .isDone()
                .json()
                .get("eigenvalues");
        assertThat(values).hasSize(11).allSatisfy(at -> assertThat(at).hasSize(4));
        assertThat(values.at("/5/1/1").doubleValue()).isCloseTo(-4.46486771378823, within(1e-11));
    }

    @Test
    void aMeasuredSetBeyondTheTriangleIsTakenWithACaution() {
        CommandLineRun run = run("--parameters", "demo-data/dynamics/measured-a.dynamics.json")
                .isDone();
        assertThat(run.messages()).contains("IB", "largest principal moment");
    }

    @ParameterizedTest
    @CsvSource({
        "'\"mB\": 85', '\"mB\": -85', mB",
        "'\"w\": 1.02', '\"w\": 0', w is 0",
        "'\"rF\": 0.35', '\"rF\": 0', rF",
        "'\"IBxz\": 2.4', '\"IBxz\": 6', IBxz is 6",
        "'\"IRyy\": 0.12', '\"IRyy\": -0.12', IR",
        "'\"mH\": 4,', '', mH",
        "'\"mH\": 4', '\"mHH\": 4', mHH"
    })
    void impossibleNumbersAreRefusedByName(String from, String to, String named) throws IOException {
        String text = Files.readString(Path.of(BENCHMARK), StandardCharsets.UTF_8);
        Path file = folder.resolve("broken.dynamics.json");
        Files.writeString(file, text.replace(from, to), StandardCharsets.UTF_8);
        run("--parameters", file.toString()).isRefusedFor("broken.dynamics.json", named);
    }

    @Test
    void aCriticalSpeedThatDoesNotExistIsNull() throws IOException {
        String text = Files.readString(Path.of(BENCHMARK), StandardCharsets.UTF_8);
        Path file = folder.resolve("back.dynamics.json");
        Files.writeString(file, text.replace("\"c\": 0.08", "\"c\": -0.2"), StandardCharsets.UTF_8);
        JsonNode json = run("--parameters", file.toString(), "--json").isDone().json();
        assertThat(json.get("weaveSpeedMps").isNull()).isTrue();
    }

    @Test
    void aBikeNamesEveryMassWithItsSource() {
        JsonNode masses = run(ROAD, "--json", "--set", "masses.frame.massKg=6")
                .isDone()
                .json()
                .get("masses");
        assertThat(masses)
                .hasSize(21)
                .allSatisfy(mass -> assertThat(mass.get("from").textValue()).isNotBlank());
        assertThat(masses).filteredOn(mass -> mass.get("given").booleanValue()).hasSize(1);
    }

    @Test
    void theChartIsWritten() throws IOException {
        Path file = folder.resolve("chart.svg");
        run("--parameters", BENCHMARK, "--svg", file.toString()).isDone();
        assertThat(Files.readString(file, StandardCharsets.UTF_8)).contains("self-stable from here");
    }

    @Test
    void neitherBikeNorParametersIsRefused() {
        assertThat(run().code()).isEqualTo(2);
        assertThat(run("--set", "masses.frame.massKg=6").code()).isEqualTo(2);
    }

    private static CommandLineRun run(String... arguments) {
        String[] all = new String[arguments.length + 1];
        all[0] = "stability";
        System.arraycopy(arguments, 0, all, 1, arguments.length);
        return CommandLineRun.of(all);
    }
}
