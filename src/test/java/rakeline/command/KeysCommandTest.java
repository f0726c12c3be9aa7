package rakeline.command;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rakeline.handout.Conformance;

/** {@code rakeline keys}. */
@Tag("slow")
class KeysCommandTest {
    @TempDir
    Path folder;

    @Test
    void thePageOfAllKeysIsValidHtml() throws IOException {
        Path file = folder.resolve("keys.html");
        CommandLineRun run = CommandLineRun.of("keys", "--html", file.toString());
        assertThat(run.code()).as(run.messages()).isZero();
        assertThat(Conformance.said(Files.readAllBytes(file))).isEmpty();
    }

    @Test
    void everyKeySaysWhetherItsSourcesWereRead() throws IOException {
        JsonNode keys =
                new JsonMapper().readTree(CommandLineRun.of("keys", "--json").data());
        assertThat(keys)
                .hasSizeGreaterThan(150)
                .allSatisfy(key -> assertThat(key.path("sources"))
                        .as(key.path("key").asText())
                        .isNotEmpty()
                        .allMatch(source -> !source.path("standing").asText().isEmpty()));
    }

    @Test
    void aKeySaysInWordsWhatItRestsOn() {
        assertThat(CommandLineRun.of("keys", "trailMm").data())
                .contains("formula: Meijaard, Papadopoulos, Ruina and Schwab 2007, read in the source");
    }
}
