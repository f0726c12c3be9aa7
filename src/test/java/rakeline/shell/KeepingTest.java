package rakeline.shell;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import javax.swing.JTextArea;
import org.assertj.swing.fixture.JOptionPaneFixture;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import rakeline.desk.PageFile;
import rakeline.desk.SafeFile;
import rakeline.worksheet.Worksheet;

/** What the window asks and says when work could be lost. */
@Tag("window")
@ExtendWith(OnAScreen.class)
class KeepingTest {
    private static final Worksheet PAGE = Samples.slackHeadAngles();

    @TempDir
    Path home;

    private OpenWindow window;
    private Path file;

    @BeforeEach
    void openAWindow() {
        window = OpenWindow.sized(home, 1366, 768).with(PAGE);
        file = home.resolve("mine.rakeline");
    }

    @AfterEach
    void closeIt() {
        window.close();
    }

    private void save(Path to) {
        window.run(() -> window.window()
                .filing()
                .write(to, window.window().bench().model().page(), () -> {}));
        window.await(
                "it is saved",
                () -> window.window().bench().model().origin().path().isPresent());
    }

    private void type(String text) {
        window.run(() -> window.window().bench().act("typed", page -> page.withText("r3", text)));
    }

    private JOptionPaneFixture asked() {
        return window.frame().optionPane();
    }

    private void answer(String words) {
        window.press(asked().buttonWithText(words).target());
    }

    /** The texts that are compared, left and right by turns. */
    private List<String> compared() {
        return OpenWindow.all(asked().target())
                .filter(JTextArea.class::isInstance)
                .filter(area -> area.getAccessibleContext().getAccessibleName() != null)
                .map(area -> ((JTextArea) area).getText())
                .toList();
    }

    private void awaitPage(Worksheet page) {
        window.await(
                "the page stands", () -> window.window().bench().model().page().equals(page));
    }

    private void awaitNotice() {
        window.await(
                "it is said", () -> !window.window().bench().model().notice().isEmpty());
    }

    @Test
    void afterACrashTheSavedVersionStandsBesideWhatWasNotSaved() {
        PageFile.create(SafeFile.onDisk(), file, PAGE);
        Drafts.left(home, PAGE.withText("r3", "typed before the end"), file);
        window.run(() -> window.window().recover());
        assertThat(compared()).containsExactly("draw(it)", "typed before the end");
        answer("Ask at the next start");
    }

    @Test
    void whatIsLetGoStaysAmongTheEarlierVersions() {
        PageFile.create(SafeFile.onDisk(), file, PAGE);
        Drafts.left(home, PAGE.withText("r3", "typed before the end"), file);
        window.run(() -> window.window().recover());
        answer("Discard");
        window.run(() -> window.window().open(file));
        window.await(
                "it is open",
                () -> window.window().bench().model().origin().path().isPresent());
        window.choose("Page", "Earlier versions…");
        assertThat(compared()).contains("typed before the end");
        answer("Cancel");
    }

    @Test
    void anEarlierVersionComesBackAsAStepThatCanBeUndone() {
        save(file);
        type("later");
        Worksheet later = window.model().page();
        window.choose("Page", "Save");
        window.await(
                "it is saved", () -> window.window().bench().model().history().isSaved());
        window.choose("Page", "Earlier versions…");
        answer("Restore");
        awaitPage(PAGE.withPick("xs", "bikes/xs.bike.json"));
        window.choose("Edit", "Undo");
        assertThat(window.model().page()).isEqualTo(later);
    }

    @Test
    void aFileThatChangesWhileItIsOpenIsSaidWhenTheWindowIsTurnedToAgain() {
        save(file);
        PageFile.create(SafeFile.onDisk(), file, PAGE.withText("r3", "theirs"));
        window.run(() -> window.window().filing().lookAround());
        assertThat(compared()).containsExactly("draw(it)", "theirs");
        answer("Not now");
        assertThat(window.model().page()).isEqualTo(PAGE);
    }

    @Test
    void whatIsOverwrittenStaysAmongTheEarlierVersions() {
        save(file);
        PageFile.create(SafeFile.onDisk(), file, PAGE.withText("r3", "theirs"));
        type("mine");
        window.choose("Page", "Save");
        answer("Overwrite");
        window.await(
                "it is saved", () -> window.window().bench().model().history().isSaved());
        window.choose("Page", "Earlier versions…");
        assertThat(compared()).contains("theirs");
        answer("Cancel");
    }

    @Test
    void aFolderThatHasVanishedIsSaidAndTheJournalKeepsWhatIsTyped() throws IOException {
        Path folder = Files.createDirectory(home.resolve("gone"));
        save(folder.resolve("mine.rakeline"));
        Files.delete(folder.resolve("mine.rakeline"));
        Files.delete(folder);
        type("typed since");
        window.choose("Page", "Save");
        awaitNotice();
        assertThat(window.model().notice())
                .endsWith("is not written: the folder " + folder + " is not there (any more).");
        window.await("the journal has it", () -> isInAJournal("typed since"));
    }

    private boolean isInAJournal(String words) {
        try (Stream<Path> files = Files.walk(home)) {
            for (Path journal :
                    files.filter(each -> each.toString().endsWith(".journal")).toList()) {
                if (Files.readString(journal).contains(words)) {
                    return true;
                }
            }
            return false;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Test
    void aFolderThatMayOnlyBeReadIsSaid() {
        Path readOnly = Path.of("/proc");
        assumeTrue(Files.isDirectory(readOnly));
        window.run(() -> window.window().filing().write(readOnly.resolve("mine.rakeline"), PAGE, () -> {}));
        awaitNotice();
        assertThat(window.model().notice()).startsWith("/proc/mine.rakeline is not written: ");
    }
}
