package rakeline.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rakeline.desk.Kept.Recalled;
import rakeline.desk.Preferences.Theme;

class MemoryTest {
    private static final SafeFile DISK = SafeFile.onDisk();
    private static final Preferences SET = new Preferences(Theme.CONTRAST, 150, 1024, 60, Optional.of("Räder"), true);

    @TempDir
    private Path folder;

    private Places places;
    private Path file;

    @BeforeEach
    void places() {
        places = Places.in(folder);
        file = places.preferences().resolve("preferences.json");
    }

    @Test
    void preferencesAreKept() {
        preferences().keep(SET);
        assertThat(preferences().recall()).isEqualTo(new Recalled<>(SET, ""));
    }

    @Test
    void preferencesThatWereNeverSetAreTheStandardOnes() {
        assertThat(preferences().recall()).isEqualTo(new Recalled<>(Preferences.standard(), ""));
    }

    @Test
    void askingForPreferencesCreatesNothing() {
        preferences().recall();
        assertThat(folder).isEmptyDirectory();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "{",
                "[]",
                "{\"version\": 1}",
                "{\"version\": \"one\"}",
                "{\"version\": 1, \"is\": {\"theme\": \"pink\"}}",
                "{\"version\": 1, \"is\": {\"theme\": \"dark\", \"typePercent\": 99, \"workerMegabytes\": 512,"
                        + " \"timeLimitSeconds\": 30}}"
            })
    void brokenPreferencesAreSetAside(String content) throws IOException {
        stands(content);
        preferences().recall();
        assertThat(file.resolveSibling("preferences.json.broken")).hasContent(content);
    }

    @Test
    void brokenPreferencesAreSaid() throws IOException {
        stands("{\"version\": 1, \"is\": {\"theme\": \"pink\"}}");
        assertThat(preferences().recall())
                .isEqualTo(new Recalled<>(
                        Preferences.standard(),
                        file + " was broken and is now called preferences.json.broken: is.theme (line 1) is \"pink\";"
                                + " accepted is light, dark, contrast."));
    }

    @Test
    void preferencesThatBreakAgainDoNotReplaceTheFirst() throws IOException {
        stands("first");
        preferences().recall();
        stands("second");
        preferences().recall();
        assertThat(file.resolveSibling("preferences.json.broken")).hasContent("first");
        assertThat(file.resolveSibling("preferences.json.broken-2")).hasContent("second");
    }

    @Test
    void preferencesOfANewerVersionAreSaid() throws IOException {
        stands("{\"version\": 2, \"is\": {\"theme\": \"striped\"}}");
        assertThat(preferences().recall().said())
                .isEqualTo(
                        file + " was made by a newer Rakeline; it stays as it is, and what is set here is not kept.");
    }

    @Test
    void preferencesOfANewerVersionAreNotOverwritten() throws IOException {
        stands("{\"version\": 2, \"is\": {\"theme\": \"striped\"}}");
        assertThatThrownBy(() -> preferences().keep(SET)).hasMessageContaining("a newer Rakeline");
        assertThat(file).content().contains("striped");
    }

    @Test
    void preferencesThatCannotBeReadAreLeftAlone() throws IOException {
        stands("{");
        SafeFile closed = new SafeFile(new FailingDisk("read", new IOException("broken")));
        assertThat(Memory.preferences(closed, places).recall().said()).isEqualTo(file + " cannot be read: broken.");
        assertThat(file).hasContent("{");
    }

    @Test
    void aSettingOutOfRangeIsRefused() {
        assertThatThrownBy(() -> SET.withTypePercent(201))
                .hasMessage("the size of type is 201 %; accepted is 100..200.");
    }

    @Test
    void recentFilesAreKept() {
        Recents recents = Recents.none().opened(folder.resolve("a.rakeline")).opened(folder.resolve("b c.rakeline"));
        Memory.recents(DISK, places).keep(recents);
        assertThat(Memory.recents(DISK, places).recall().value()).isEqualTo(recents);
    }

    @Test
    void theWindowsPlaceIsKept() {
        Bounds bounds = new Bounds(-1920, 10, 1024, 768, true);
        Memory.bounds(DISK, places).keep(bounds);
        assertThat(Memory.bounds(DISK, places).recall().value()).isEqualTo(bounds);
    }

    private Kept<Preferences> preferences() {
        return Memory.preferences(DISK, places);
    }

    private void stands(String content) throws IOException {
        Files.createDirectories(file.getParent());
        Files.writeString(file, content);
    }
}
