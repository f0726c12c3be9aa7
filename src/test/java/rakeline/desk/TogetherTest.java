package rakeline.desk;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rakeline.quantity.Refusal;

/** Several files, all of them or none. */
class TogetherTest {
    private static final byte[] NEW = "what is new".getBytes(UTF_8);

    @TempDir
    private Path folder;

    @Test
    void allAreWritten() {
        Together.write(SafeFile.onDisk(), contents("one", "two"));
        assertThat(folder.resolve("one")).hasBinaryContent(NEW);
        assertThat(folder.resolve("two")).hasBinaryContent(NEW);
    }

    @Test
    void whereOneCannotBeWrittenNoneIs() {
        assertThatThrownBy(() -> Together.write(SafeFile.onDisk(), contents("one", "missing/two")))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("missing");
        assertThat(folder).isEmptyDirectory();
    }

    @Test
    void whatWasReplacedIsPutBack() throws IOException {
        Files.writeString(folder.resolve("one"), "old");
        assertThatThrownBy(() -> Together.write(SafeFile.onDisk(), contents("one", "missing/two")))
                .isInstanceOf(Refusal.class);
        assertThat(folder.resolve("one")).hasContent("old");
    }

    private Map<Path, byte[]> contents(String... names) {
        Map<Path, byte[]> contents = new LinkedHashMap<>();
        List.of(names).forEach(name -> contents.put(folder.resolve(name), NEW));
        return contents;
    }
}
