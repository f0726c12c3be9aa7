package rakeline.shell;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.event.KeyEvent;
import java.nio.file.Path;
import javax.swing.JFrame;
import javax.swing.JLabel;
import org.assertj.swing.finder.WindowFinder;
import org.assertj.swing.fixture.FrameFixture;
import org.fife.ui.rsyntaxtextarea.RSyntaxTextArea;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import rakeline.figure.Chart;
import rakeline.shell.figures.FigureView;

/** One figure on the whole screen. */
@Tag("window")
@ExtendWith(OnAScreen.class)
class ShowTest {
    @TempDir
    Path home;

    private OpenWindow window;
    private FrameFixture show;

    @BeforeEach
    void show() {
        window = OpenWindow.sized(home, 1366, 768).with(Samples.slackHeadAngles());
        window.select("r5");
        window.choose("View", "Show");
        show = WindowFinder.findFrame("show").using(window.robot());
        window.await("it has the keys", () -> show.target().getFocusOwner() != null);
    }

    @AfterEach
    void closeIt() {
        window.close();
    }

    @Test
    void itFillsTheScreen() {
        assertThat(show.target().getBounds())
                .isEqualTo(show.target().getGraphicsConfiguration().getBounds());
    }

    @Test
    void lettersAreAThirtiethOfTheScreenOrMore() {
        assertThat(OpenWindow.all(show.target())
                        .filter(JLabel.class::isInstance)
                        .filter(each ->
                                each.isShowing() && !((JLabel) each).getText().isBlank())
                        .map(each -> each.getFont().getSize2D() * 30))
                .isNotEmpty()
                .allMatch(size -> size >= show.target().getHeight());
    }

    @Test
    void thereIsNoCode() {
        assertThat(OpenWindow.all(show.target())).noneMatch(RSyntaxTextArea.class::isInstance);
    }

    @Test
    void itBeginsWithTheSelectedRowsFigure() {
        assertThat(shown().figure().orElseThrow()).isInstanceOf(Chart.class);
    }

    @Test
    void aChartWithManyPanelsIsShownInParts() {
        assertThat(((Chart) shown().figure().orElseThrow()).panels()).hasSize(1);
    }

    @Test
    void theArrowKeysStepThroughFigures() {
        JLabel place = show.label("shown place").target();
        String first = show.label("shown place").text();
        press(KeyEvent.VK_RIGHT);
        window.await("another figure is shown", () -> !place.getText().equals(first));
        press(KeyEvent.VK_LEFT);
        window.await("the first is shown again", () -> place.getText().equals(first));
    }

    @Test
    void upMovesTheDialThatHasTheKeys() {
        Component before = show.target().getFocusOwner();
        press(KeyEvent.VK_TAB);
        window.await("the dial has the keys", () -> {
            Component now = show.target().getFocusOwner();
            return now != null && now != before;
        });
        press(KeyEvent.VK_UP);
        window.await(
                "a dial has moved",
                () -> !window.window().bench().model().page().dials().isEmpty());
        assertThat(window.model().page().dials()).hasSize(1);
    }

    @Test
    void aDrawingStandsBesideTheFigureUntilItIsPutAway() {
        assertThat(drawing().isVisible()).isTrue();
        press(KeyEvent.VK_D);
        press(KeyEvent.VK_D);
        window.await("it is put away", () -> !drawing().isVisible());
    }

    @Test
    void highContrastIsOneKeyAway() {
        press(KeyEvent.VK_H);
        window.await(
                "paper is white",
                () -> ((JFrame) show.target()).getContentPane().getBackground().equals(java.awt.Color.WHITE));
    }

    @Test
    void escapeGivesTheScreenBackAndKeepsTheRow() {
        press(KeyEvent.VK_ESCAPE);
        window.await("it is closed", () -> !show.target().isDisplayable());
        assertThat(window.model().selected()).contains("r5");
    }

    private FigureView shown() {
        return view("shown figure");
    }

    private FigureView drawing() {
        return view("shown drawing");
    }

    private FigureView view(String name) {
        return OpenWindow.all(show.target())
                .filter(FigureView.class::isInstance)
                .map(FigureView.class::cast)
                .filter(view -> name.equals(view.getName()))
                .findFirst()
                .orElseThrow();
    }

    private void press(int key) {
        show.robot().pressAndReleaseKey(key);
        window.robot().waitForIdle();
    }
}
