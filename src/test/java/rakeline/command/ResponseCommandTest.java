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
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ResponseCommandTest {
    private static final String BENCHMARK = "demo-data/dynamics/benchmark.dynamics.json";
    private static final String ROAD = "demo-data/bikes/road-xs.bike.json";

    @TempDir
    private Path folder;

    private static CommandLineRun run(String... args) {
        return CommandLineRun.of(
                Stream.concat(Stream.of("response"), Stream.of(args)).toArray(String[]::new));
    }

    @Test
    void jsonGivesOneColumnForTimeAndOneForEachAnswer() {
        JsonNode json = run("--parameters", BENCHMARK, "--speed", "5", "--seconds", "60", "--json")
                .isDone()
                .json();
        assertThat(json.get("columns").findValuesAsText("key")).containsExactly("timeS", "leanDeg", "steerDeg");
        assertThat(json.get("torque").textValue()).isEqualTo("steer");
    }

    /** In the self-stable range the last value is the static solution of (g K0 + v² K2) q = f, table 1 (S). */
    @Test
    void aLongStepEndsOnTheStaticSolution() {
        JsonNode json = run("--parameters", BENCHMARK, "--speed", "5", "--seconds", "120", "--json")
                .isDone()
                .json();
        double a11 = 9.81 * -80.95;
        double a12 = 9.81 * -2.59951685249872 + 25 * 76.59734589573222;
        double a21 = 9.81 * -2.59951685249872;
        double a22 = 9.81 * -0.80329488458618 + 25 * 2.65431523794604;
        JsonNode steer = json.get("columns").get(2).get("values");
        assertThat(steer.get(steer.size() - 1).doubleValue())
                .isCloseTo(Math.toDegrees(a11 / (a11 * a22 - a12 * a21)), within(1e-6));
    }

    @Test
    void aBikeAnswersToASwingToo() {
        CommandLineRun run = run(ROAD, "--torque", "lean", "--speed", "6", "--frequency", "20")
                .isDone();
        assertThat(run.data()).contains("Angular frequency", "Lean, phase", "lean torque at 6.00 m/s");
    }

    /** Weave speed 4.29 m/s, capsize speed 6.02 m/s (S): stable between them alone. */
    @ParameterizedTest
    @CsvSource({"3, false", "5, true", "7, false"})
    void aSteadySwingThatIsNeverReachedIsSaid(String speed, boolean stable) {
        CommandLineRun text = run("--parameters", BENCHMARK, "--speed", speed, "--frequency", "20")
                .isDone();
        JsonNode json = run("--parameters", BENCHMARK, "--speed", speed, "--frequency", "20", "--json")
                .isDone()
                .json();
        assertThat(text.data().contains("are never reached")).isEqualTo(!stable);
        assertThat(json.get("selfStable").booleanValue()).isEqualTo(stable);
        assertThat(json.get("cautions").toString().contains("are never reached"))
                .isEqualTo(!stable);
    }

    @Test
    void anAnswerBeyondSmallAnglesIsSaid() {
        String[] far = {"--parameters", BENCHMARK, "--speed", "3", "--seconds", "2"};
        String[] near = {"--parameters", BENCHMARK, "--speed", "5", "--seconds", "0.2"};
        assertThat(run(far).isDone().data()).contains("Lean reaches ", "stands for small angles, up to about 10°");
        assertThat(run(near).isDone().data()).doesNotContain("small angles, up to");
        assertThat(run(with(far, "--json")).isDone().json().get("beyondLinear").booleanValue())
                .isTrue();
        assertThat(run(with(near, "--json")).isDone().json().get("beyondLinear").booleanValue())
                .isFalse();
    }

    private static String[] with(String[] some, String more) {
        return Stream.concat(Stream.of(some), Stream.of(more)).toArray(String[]::new);
    }

    @Test
    void theFigureIsWritten() throws IOException {
        Path svg = folder.resolve("response.svg");
        run("--parameters", BENCHMARK, "--speed", "5", "--svg", svg.toString()).isDone();
        assertThat(Files.readString(svg)).contains("<svg");
    }

    @ParameterizedTest
    @CsvSource({
        "'--speed -1', 'the speed is -1 m/s'",
        "'--speed 5 --torque bar', 'the torque is bar; accepted is lean or steer.'",
        "'--speed 5 --seconds 0', '--seconds is 0; accepted is a number above 0.'"
    })
    void whatIsNotAcceptedIsRefused(String options, String sentence) {
        String[] args = Stream.concat(Stream.of("--parameters", BENCHMARK), Stream.of(options.split(" ")))
                .toArray(String[]::new);
        run(args).isRefusedFor(sentence);
    }
}
