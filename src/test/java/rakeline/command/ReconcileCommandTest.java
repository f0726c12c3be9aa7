package rakeline.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code rakeline reconcile}. */
class ReconcileCommandTest {
    private static final String XS = "demo-data/bikes/road-xs.bike.json";
    private static final String WRONG = "charted.wheelbaseMm=980";

    @TempDir
    Path folder;

    @Test
    void aChartThatAgreesSaysSo() {
        CommandLineRun run = CommandLineRun.of("reconcile", XS).isDone();
        assertThat(run.lines()).last().isEqualTo("Rounding explains every difference.");
    }

    @Test
    void theJsonHasResidualsAndSuspects() {
        JsonNode json = CommandLineRun.of("reconcile", XS, "--set", WRONG, "--json")
                .isDone()
                .json();
        JsonNode wheelbase = json.at("/residuals/charted.wheelbaseMm");
        assertThat(wheelbase.at("/charted").doubleValue()).isEqualTo(980);
        assertThat(wheelbase.at("/residual").doubleValue()).isCloseTo(980 - 970.826, within(0.001));
        assertThat(wheelbase.at("/within").booleanValue()).isFalse();
        assertThat(json.at("/suspects/0").fieldNames())
                .toIterable()
                .containsExactly("key", "charted", "wouldBe", "sameAs");
    }

    @Test
    void aGroupIsToldInOneSentence() {
        CommandLineRun run = CommandLineRun.of("reconcile", XS, "--set", WRONG).isDone();
        assertThat(run.lines())
                .last()
                .asString()
                .contains("charted.wheelbaseMm", "971 instead of 980 mm", "frame.chainstayMm", "419 instead of 410 mm");
    }

    @Test
    void theResidualsAreWrittenAsCsv() throws IOException {
        Path file = folder.resolve("residuals.csv");
        CommandLineRun.of("reconcile", XS, "--csv", file.toString()).isDone();
        assertThat(Files.readString(file))
                .startsWith("quantity,charted,derived,residual,tolerance,")
                .hasLineCount(5);
    }

    @Test
    void twoWrongNumbersAreSaidToBe() {
        CommandLineRun run = CommandLineRun.of("reconcile", XS, "--set", WRONG, "--set", "charted.trailMm=90")
                .isDone();
        assertThat(run.lines()).last().asString().contains("No single number");
    }

    @Test
    void aBikeWithoutChartedNumbersSaysSo() throws IOException {
        String plain = Files.writeString(folder.resolve("plain.bike.json"), BikeTexts.PLAIN)
                .toString();
        assertThat(CommandLineRun.of("reconcile", plain).isDone().lines())
                .containsExactly("Nothing charted follows from the other numbers, so nothing can be checked.");
    }
}
