package rakeline.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rakeline.worksheet.Row;
import rakeline.worksheet.Worksheet;

class JournalTest {
    private static final SafeFile DISK = SafeFile.onDisk();
    private static final Worksheet PAGE = Worksheet.empty("Räder").insert(0, Row.Snippet.of("r1", "1 + 1"));
    private static final Worksheet SAVED = PAGE.withText("r1", "1");

    @TempDir
    private Path home;

    private Path file;

    @BeforeEach
    void aSavedPage() {
        file = home.resolve("page.rakeline");
        PageFile.create(DISK, file, SAVED);
    }

    @Test
    void whatIsInTheJournalOfAProgramThatEndedIsFound() throws IOException {
        leave(draft(PAGE), "left");
        assertThat(found()).extracting(Recovery.Found::draft).containsExactly(draft(PAGE));
    }

    @Test
    void whatDiffersFromTheSavedVersionIsSaid() throws IOException {
        leave(draft(PAGE), "left");
        assertThat(found().get(0).differences()).containsExactly(new Difference("Row 1 was changed", "1", "1 + 1"));
    }

    @Test
    void whatEqualsTheSavedVersionIsNotFound() throws IOException {
        leave(draft(SAVED), "left");
        assertThat(found()).isEmpty();
    }

    @Test
    void theJournalOfAProgramThatRunsIsNotFound() {
        try (Journal journal = journal(DISK, new CopyOnWriteArrayList<>())) {
            journal.keep(draft(PAGE));
            journal.flush();
            assertThat(found()).isEmpty();
            journal.forget();
        }
    }

    @Test
    void aJournalThatIsForgottenLeavesNothing() {
        try (Journal journal = journal(DISK, new CopyOnWriteArrayList<>())) {
            journal.keep(draft(PAGE));
            journal.flush();
            journal.forget();
        }
        assertThat(Journal.folder(Places.in(home))).isEmptyDirectory();
    }

    @Test
    void whatIsDiscardedIsNotFoundAgain() throws IOException {
        leave(draft(PAGE), "left");
        found().forEach(Recovery.Found::discard);
        assertThat(found()).isEmpty();
    }

    @Test
    void whatIsLeftIsFoundAgain() throws IOException {
        leave(draft(PAGE), "left");
        found().forEach(Recovery.Found::leave);
        assertThat(found()).hasSize(1);
    }

    @Test
    void aBrokenJournalIsSetAside() throws IOException {
        leave(draft(PAGE), "left");
        Path journal = Journal.folder(Places.in(home)).resolve("left.journal");
        Files.writeString(journal, "{");
        assertThat(found()).isEmpty();
        assertThat(journal.resolveSibling("left.journal.broken")).hasContent("{");
    }

    @ParameterizedTest
    @ValueSource(strings = {"createFolders", "create", "write", "force", "replace", "no room", "read-only"})
    void aJournalThatCannotBeWrittenSaysWhy(String step) {
        List<String> said = new CopyOnWriteArrayList<>();
        try (Journal journal = journal(new SafeFile(new FailingDisk(step, new IOException("broken"))), said)) {
            journal.keep(draft(PAGE));
            journal.flush();
            assertThat(said).isNotEmpty().allMatch(sentence -> sentence.contains(" is not written: "));
        }
    }

    @Test
    void fiveVersionsThatWereReplacedAreKept() {
        Backups backups = new Backups(DISK, Places.in(home));
        Saving saving = new Saving(DISK, backups, new Ticking()::next);
        PageFile stored = PageFile.open(DISK, file);
        for (int i = 1; i <= 7; i++) {
            stored = ((Saving.Saved) saving.save(stored, PAGE.withText("r1", String.valueOf(i)))).stored();
        }
        assertThat(backups.versions(Optional.of(file)))
                .extracting(version -> backups.read(version).rows().get(0).text())
                .containsExactly("6", "5", "4", "3", "2");
    }

    @Test
    void aFileThatAnotherProgramChangedIsNotSaved() {
        PageFile stored = PageFile.open(DISK, file);
        Worksheet theirs = SAVED.withText("r1", "theirs");
        PageFile.create(DISK, file, theirs);
        Saving saving = new Saving(DISK, new Backups(DISK, Places.in(home)), new Ticking()::next);
        assertThat(saving.save(stored, PAGE)).isInstanceOf(Saving.Changed.class);
        assertThat(PageFile.open(DISK, file).page()).isEqualTo(theirs);
    }

    @Test
    void codeIsTrustedByWhatItSays() {
        Trust trust = Trust.none().with(PAGE);
        assertThat(trust.isIn(PAGE.withTitle("Other").withDial("head", 72))).isTrue();
        assertThat(trust.isIn(SAVED)).isFalse();
    }

    @Test
    void codeSplitOtherwiseIsOtherCode() {
        Worksheet two = Worksheet.empty("").insert(0, Row.Snippet.of("r1", "a")).insert(1, Row.Snippet.of("r2", "b"));
        assertThat(Trust.none().with(two).isIn(PAGE.withText("r1", "ab"))).isFalse();
    }

    @Test
    void trustIsKept() {
        Trust trust = Trust.none().with(PAGE);
        Memory.trust(DISK, Places.in(home)).keep(trust);
        assertThat(Memory.trust(DISK, Places.in(home)).recall().value()).isEqualTo(trust);
    }

    /** Each second once. */
    private static final class Ticking {
        private Instant now = Instant.EPOCH;

        Instant next() {
            now = now.plusSeconds(1);
            return now;
        }
    }

    private Draft draft(Worksheet page) {
        return new Draft(page, Optional.of(file), true, Instant.EPOCH);
    }

    private Journal journal(SafeFile disk, List<String> said) {
        return new Journal(disk, Places.in(home), said::add);
    }

    private void leave(Draft draft, String name) throws IOException {
        Path folder = Files.createDirectories(Journal.folder(Places.in(home)));
        Files.write(folder.resolve(name + Journal.ENDING), draft.bytes());
    }

    private List<Recovery.Found> found() {
        return Recovery.find(DISK, Places.in(home));
    }
}
