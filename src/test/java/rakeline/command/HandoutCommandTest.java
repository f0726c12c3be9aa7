package rakeline.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code rakeline handout}, with rows that really run. */
@Tag("process")
class HandoutCommandTest {
    private static final String PAGE = """
            {"format": "rakeline/worksheet", "version": 1, "title": "Offset", "rows": [
              {"id": "note", "note": ["Twice is {{sums.twice|1}}, all is {{sums|0}}, %s."]},
              {"id": "sums", "snippet": ["double offset = dial(\\"Offset\\", \\"mm\\", 40, 50, 1, 45);",
                "double twice = 2 * offset;", "double all = twice + offset;"]},
              {"id": "last", "snippet": ["%s"], "wait": true}]}
            """;

    @TempDir
    Path folder;

    private Path page;

    @BeforeEach
    void setUp() {
        page = folder.resolve("page.rakeline");
    }

    private void write(String words, String code) throws IOException {
        Files.writeString(page, PAGE.formatted(words, code), StandardCharsets.UTF_8);
    }

    private String html() throws IOException {
        return Files.readString(folder.resolve("a.html"), StandardCharsets.UTF_8);
    }

    private CommandLineRun handout(String... more) {
        String[] arguments = java.util.stream.Stream.concat(
                        java.util.stream.Stream.of("handout", page.toString()), java.util.stream.Stream.of(more))
                .toArray(String[]::new);
        return CommandLineRun.of(arguments);
    }

    @Test
    void pdfIsNotPrinted() {
        CommandLineRun.of("handout", "worksheets/welcome.rakeline", "--pdf", "-")
                .isRefusedFor("--pdf is -");
    }

    @Test
    void notesAreFilledWithTheVariablesOfRowsAtTheDialsThatAreSet() throws IOException {
        write("so", "int q = 4;");
        CommandLineRun run =
                handout("--set", "offset=47", "--html", folder.resolve("a.html").toString());
        assertThat(run.code()).as(run.messages()).isZero();
        assertThat(run.data()).isEmpty();
        assertThat(html()).contains("Twice is 94.0, all is 141, so.", "47 mm", "SHA-256");
    }

    @Test
    void aFailedRowIsHandedOutWithItsMessageAndEndsWithOne() throws IOException {
        write("so", "int q = 1 / 0;");
        CommandLineRun run = handout(
                "--html",
                folder.resolve("a.html").toString(),
                "--pdf",
                folder.resolve("a.pdf").toString());
        assertThat(run.code()).isEqualTo(1);
        assertThat(html()).contains("Row q, failed: Line 1: / by zero.");
        assertThat(folder.resolve("a.pdf")).isNotEmptyFile();
    }

    @Test
    void aPlaceThatNoRowFillsIsToldAndEndsWithOne() throws IOException {
        write("{{nothing|1}}", "int q = 4;");
        CommandLineRun run = handout();
        assertThat(run.code()).isEqualTo(1);
        assertThat(run.messages()).contains("page.rakeline, note note: {{nothing|1}} names no row of the page.");
        assertThat(run.data()).startsWith("<!DOCTYPE html>");
    }

    @Test
    void whatCannotBeWrittenIsRefusedAndLeavesNothing() throws IOException {
        write("so", "int q = 4;");
        Path nowhere = folder.resolve("none").resolve("a.pdf");
        handout("--pdf", nowhere.toString()).isRefusedFor("none");
        assertThat(folder.toFile().list()).containsExactly("page.rakeline");
    }

    @Test
    void aDialThatThePageLacksIsRefusedBeforeAnythingRuns() throws IOException {
        write("so", "int q = 4;");
        handout("--set", "ofset=47").isRefusedFor("ofset", "did you mean offset?");
    }
}
