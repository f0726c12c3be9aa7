package rakeline.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rakeline.worksheet.Worksheet;

class PageFileTest {
    private static final SafeFile DISK = SafeFile.onDisk();

    @TempDir
    private Path folder;

    @Test
    void whatWasCreatedIsOpened() {
        PageFile created = create("a");
        assertThat(PageFile.open(DISK, created.file())).isEqualTo(created);
    }

    @Test
    void whatWasSavedIsOpened() {
        PageFile saved = create("a").save(DISK, Worksheet.empty("b"));
        assertThat(PageFile.open(DISK, saved.file()).page().title()).isEqualTo("b");
    }

    @Test
    void aPageIsSavedAgainAndAgain() {
        PageFile saved = create("a").save(DISK, Worksheet.empty("b")).save(DISK, Worksheet.empty("c"));
        assertThat(saved.isChanged(DISK)).isFalse();
    }

    @Test
    void aChangeByAnotherProgramIsNoticed() throws IOException {
        PageFile mine = create("a");
        Files.writeString(mine.file(), "theirs");
        assertThat(mine.isChanged(DISK)).isTrue();
    }

    @Test
    void aChangeByAnotherProgramIsNotOverwritten() throws IOException {
        PageFile mine = create("a");
        Files.writeString(mine.file(), "theirs");
        assertThatThrownBy(() -> mine.save(DISK, Worksheet.empty("b")))
                .hasMessageContaining("another program has changed it");
    }

    @Test
    void aFileThatIsNoPageIsNamedWithItsPath() throws IOException {
        Path file = Files.writeString(folder.resolve("page.rakeline"), "[]");
        assertThatThrownBy(() -> PageFile.open(DISK, file))
                .hasMessage(file + ": the file is a list; accepted is a group in { }.");
    }

    private PageFile create(String title) {
        return PageFile.create(DISK, folder.resolve("page.rakeline"), Worksheet.empty(title));
    }
}
