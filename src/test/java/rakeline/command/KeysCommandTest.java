package rakeline.command;

import static org.assertj.core.api.Assertions.assertThat;

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
}
