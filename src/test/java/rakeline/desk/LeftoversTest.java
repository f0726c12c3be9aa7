package rakeline.desk;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rakeline.worksheet.Worksheet;

/** What a program that is killed in a write leaves beside the file goes at the next save or opening, and nothing else. */
class LeftoversTest {
    private static final String OURS = ".rakeline-123e4567-e89b-12d3-a456-426614174000.tmp";

    @TempDir
    private Path folder;

    private Path page;

    @BeforeEach
    void aPage() {
        page = folder.resolve("page.rakeline");
        PageFile.create(SafeFile.onDisk(), page, Worksheet.empty("Page"));
    }

    private Path left(String name, Instant when) throws IOException {
        Path file = Files.writeString(folder.resolve(name), "half of a pa");
        return Files.setLastModifiedTime(file, FileTime.from(when));
    }

    private static Instant longAgo() {
        return Instant.now().minus(Leftovers.STALE).minusSeconds(1);
    }

    @Test
    void aSaveClearsIt() throws IOException {
        Path left = left(OURS, longAgo());
        SafeFile.onDisk().write(page, "new".getBytes(UTF_8));
        assertThat(left).doesNotExist();
    }

    @Test
    void openingClearsIt() throws IOException {
        Path left = left(OURS, longAgo());
        PageFile.open(SafeFile.onDisk(), page);
        assertThat(left).doesNotExist();
    }

    @Test
    void whatAnotherProgramMayBeWritingNowStays() throws IOException {
        Path left = left(OURS, Instant.now());
        PageFile.open(SafeFile.onDisk(), page);
        assertThat(left).exists();
    }

    @ParameterizedTest
    @ValueSource(strings = {"notes.tmp", ".rakeline-notes.tmp", ".rakeline-.tmp", OURS + ".txt", "x" + OURS})
    void whatIsNotOursStays(String name) throws IOException {
        Path left = left(name, longAgo());
        PageFile.open(SafeFile.onDisk(), page);
        assertThat(left).exists();
    }

    @Test
    void aFolderOfSuchANameStays() throws IOException {
        Path left = Files.createDirectory(folder.resolve(OURS));
        Files.setLastModifiedTime(left, FileTime.from(longAgo()));
        PageFile.open(SafeFile.onDisk(), page);
        assertThat(left).isDirectory();
    }
}
