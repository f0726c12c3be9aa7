package rakeline.shell;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.assertj.swing.core.matcher.JButtonMatcher;
import org.assertj.swing.finder.JFileChooserFinder;
import org.assertj.swing.finder.WindowFinder;
import org.assertj.swing.fixture.DialogFixture;
import org.assertj.swing.fixture.JFileChooserFixture;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import rakeline.shell.page.Origin;

/** Handouts and prints from the window. */
@Tag("window")
@ExtendWith(OnAScreen.class)
class HandoutWindowTest {
    @TempDir
    Path home;

    private OpenWindow window;

    @BeforeEach
    void openAWindow() {
        window = OpenWindow.sized(home, 1280, 800);
    }

    @AfterEach
    void closeIt() {
        window.close();
    }

    private String notice() {
        return window.model().notice();
    }

    private void awaitNotice(String words) {
        window.await(
                "it is said", () -> window.window().bench().model().notice().contains(words));
    }

    @Test
    void theMenuHandsThePageOutAsItStands() throws IOException {
        window.with(Samples.slackHeadAngles());
        Path file = home.resolve("handed.html");
        window.choose("Page", "Handout…");
        JFileChooserFixture chooser = JFileChooserFinder.findFileChooser().using(window.robot());
        chooser.fileNameTextBox().setText(file.toString());
        window.press(chooser.approveButton().target());
        makeItAllTheSame();
        awaitNotice("The handout is in " + file);
        assertThat(window.label("said")).isEmpty();
        assertThat(Files.readString(file, StandardCharsets.UTF_8))
                .startsWith("<!DOCTYPE html>")
                .contains(
                        "Why small frames get slack head angles",
                        "<svg",
                        "1 has no up-to-date result. Row value, failed");
    }

    @Test
    void aPageThatMayNotRunIsNotHandedOutAndRunsNothing() {
        window.run(() -> window.window().bench().open(Samples.slackHeadAngles(), new Origin.New(), false));
        window.choose("Page", "Handout…");
        awaitNotice("may not run yet");
        assertThat(window.sessions()).isZero();
    }

    @Test
    void aPrintIsShownPageByPageBeforeItIsPrinted() {
        window.with(Samples.slackHeadAngles());
        window.choose("Page", "Print…");
        makeItAllTheSame();
        DialogFixture preview =
                WindowFinder.findDialog("print preview").withTimeout(20_000).using(window.robot());
        window.await("it is drawn", () -> isDrawn(preview, "Page 1 of "));
        window.press(preview.button(JButtonMatcher.withText("Next page")).target());
        window.await("the next page is drawn", () -> isDrawn(preview, "Page 2 of "));
        preview.close();
    }

    /** The page has a row that fails, which is asked about. */
    private void makeItAllTheSame() {
        window.press(
                window.frame().optionPane().buttonWithText("Make it anyway").target());
    }

    private static boolean isDrawn(DialogFixture preview, String place) {
        return preview.label("page").text().startsWith(place)
                && preview.label("printed page").target().getIcon() != null;
    }

    @Test
    void thePageOfInputsAndMeasuresComesWithTheProgram() {
        assertThat(new String(KeysPage.content(), StandardCharsets.UTF_8))
                .contains("toeRoomMm", "Accepted: ", "16 CFR 1512.17(d)");
        assertThat(notice()).isEmpty();
    }
}
