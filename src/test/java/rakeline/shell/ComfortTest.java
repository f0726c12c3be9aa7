package rakeline.shell;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import javax.swing.TransferHandler;
import org.assertj.swing.fixture.JOptionPaneFixture;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import rakeline.desk.Memory;
import rakeline.desk.PageFile;
import rakeline.desk.Places;
import rakeline.desk.Preferences;
import rakeline.desk.Preferences.Theme;
import rakeline.desk.SafeFile;

/** Preferences, recent files, dropped files, errors. */
@Tag("window")
@ExtendWith(OnAScreen.class)
class ComfortTest {
    @TempDir
    Path home;

    private OpenWindow window;

    @BeforeEach
    void open() {
        window = OpenWindow.sized(home, 1366, 768).with(Samples.slackHeadAngles());
    }

    @AfterEach
    void close() {
        window.close();
    }

    @Test
    void preferencesAreTakenOverAndKept() {
        window.choose("Page", "Preferences…");
        JOptionPaneFixture dialog = window.frame().optionPane();
        window.choose(dialog.comboBox("preferred theme").target(), "Dark");
        window.choose(dialog.comboBox("preferred lengths").target(), "inches");
        window.press(dialog.buttonWithText("Apply").target());
        window.await("it is kept", () -> kept().theme() == Theme.DARK);
        assertThat(window.window().frame().getContentPane().getBackground()).isNotEqualTo(java.awt.Color.WHITE);
    }

    @Test
    void goingBackLeavesThePreferencesAsTheyWere() {
        window.choose("Page", "Preferences…");
        window.choose(window.frame().optionPane().comboBox("preferred theme").target(), "Dark");
        window.press(window.frame().optionPane().buttonWithText("Cancel").target());
        assertThat(kept()).isEqualTo(Preferences.standard());
    }

    @Test
    void aRecentFileThatHasMovedCanBeTakenOffTheList() throws Exception {
        Path file = home.resolve("mine.rakeline");
        PageFile.create(SafeFile.onDisk(), file, Samples.slackHeadAngles());
        window.run(() -> window.window().open(file));
        window.await("it is open", () -> !window.window().recents().files().isEmpty());
        Files.delete(file);
        window.run(() -> window.window().take(new Shelf.Item.Recent(file)));
        window.press(window.frame()
                .optionPane()
                .buttonWithText("Remove from the list")
                .target());
        window.await(
                "it is off the list", () -> window.window().recents().files().isEmpty());
    }

    @Test
    void aFileThatIsDroppedIsOpened() {
        Path file = home.resolve("dropped.rakeline");
        PageFile.create(SafeFile.onDisk(), file, Samples.slackHeadAngles().withTitle("Dropped"));
        window.run(() -> {
            TransferHandler handler = window.window().frame().getRootPane().getTransferHandler();
            handler.importData(new TransferHandler.TransferSupport(
                    window.window().frame().getRootPane(), new DroppedFiles(List.of(file.toFile()))));
        });
        window.await(
                "it is open",
                () -> window.window().bench().model().page().title().equals("Dropped"));
    }

    @Test
    void anUnexpectedErrorIsToldWithDetails() {
        new Mishap(() -> window.window().frame())
                .uncaughtException(Thread.currentThread(), new IllegalStateException());
        String details = window.frame().optionPane().textBox("details").text();
        window.press(window.frame().optionPane().buttonWithText("Go on").target());
        assertThat(details).startsWith("Rakeline ").contains("java.lang.IllegalStateException");
    }

    @Test
    void theTourOpensFromTheHelpMenu() {
        window.choose("Help", "First steps");
        window.await(
                "it is open",
                () -> window.window().bench().model().page().title().equals("First steps"));
    }

    @Test
    void theHelpFindsAWordOfTheRows() {
        window.choose("Help", "Help on the selected part");
        window.write(window.frame().dialog("guide").textBox("search help"), "sweep(");
        assertThat(Stream.of(window.frame().dialog("guide").list("topics").contents()))
                .contains("sweep(…)");
        window.frame().dialog("guide").close();
    }

    private Preferences kept() {
        return Memory.preferences(SafeFile.onDisk(), Places.in(home)).recall().value();
    }
}
