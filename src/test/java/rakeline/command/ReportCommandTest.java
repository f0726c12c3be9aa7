package rakeline.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rakeline.handout.Conformance;

/** {@code rakeline report}. */
@Tag("slow")
class ReportCommandTest {
    private static final String FIRST = "demo-data/bikes/road-xs.bike.json";
    private static final String SECOND = "demo-data/bikes/endurance-xs.bike.json";
    private static final String RIDER = "demo-data/riders/rider-156.rider.json";
    private static final String STEMS = "demo-data/parts/road.parts.json";

    @TempDir
    Path folder;

    private static CommandLineRun report(String... more) {
        List<String> arguments =
                new ArrayList<>(List.of("report", FIRST, SECOND, "--rider", RIDER, "--to", FIRST, "--parts", STEMS));
        arguments.addAll(List.of(more));
        return CommandLineRun.of(arguments.toArray(String[]::new));
    }

    @ParameterizedTest
    @ValueSource(strings = {"A4", "Letter"})
    void allOfItStandsOnOnePage(String paper) throws IOException {
        Path file = folder.resolve("r.pdf");
        CommandLineRun run = report("--pdf", file.toString(), "--paper", paper);
        assertThat(run.code()).as(run.messages()).isZero();
        try (PDDocument pdf = Loader.loadPDF(file.toFile())) {
            assertThat(pdf.getNumberOfPages()).isEqualTo(1);
            assertThat(new PDFTextStripper().getText(pdf))
                    .contains("Road XS and Endurance XS for Rider of 156 cm", "Stem length", "Trail", "Toe room")
                    .contains("16 CFR 1512.17(d)", "Toe contact can throw a rider", "SHA-256");
        }
    }

    @Test
    void theHandsComeAsCloseOnBothAsMatchSays() {
        CommandLineRun match = CommandLineRun.of(
                "match", SECOND, "--to", FIRST, "--rider", RIDER, "--parts", STEMS, "--top", "1", "--json");
        double off = match.json().at("/options/0/distanceMm").doubleValue();
        assertThat(report().data()).contains(String.format(java.util.Locale.ROOT, ">%.1f mm<", off));
    }

    @Test
    void itsHtmlIsValid() {
        assertThat(Conformance.said(report().data().getBytes(StandardCharsets.UTF_8)))
                .isEmpty();
    }

    @Test
    void itsNumbersHaveTheMinusSign() {
        assertThat(report().data()).contains(">−").doesNotContainPattern(">-\\d");
    }

    @Test
    void withoutTheCustomersPointsThereIsNoSheet() {
        CommandLineRun.of("report", FIRST, SECOND, "--rider", RIDER, "--parts", STEMS)
                .isRefusedFor("Rider of 156 cm", "--to");
    }

    @Test
    void theKneesLimitAndWhatIsLeftEachWayAreOnIt() {
        assertThat(report().data())
                .contains("Knee flexion, crank down", " mm down", " mm up", " mm longer", " mm forward");
    }

    @Test
    void itIsAboutTwoBikes() {
        CommandLineRun.of("report", FIRST, "--rider", RIDER, "--parts", STEMS).isRefusedFor("two bikes", "1");
    }

    @Test
    void bikesMayStandBehindTheParts() {
        CommandLineRun run =
                CommandLineRun.of("report", "--rider", RIDER, "--to", FIRST, "--parts", STEMS, FIRST, SECOND);
        assertThat(run.code()).as(run.messages()).isZero();
    }

    @Test
    void anotherPaperIsRefused() {
        report("--paper", "A5").isRefusedFor("A5", "Letter");
    }
}
