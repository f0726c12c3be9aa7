package rakeline.shell;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Image;
import java.awt.Toolkit;
import java.awt.datatransfer.DataFlavor;
import java.awt.event.KeyEvent;
import java.nio.file.Path;
import java.util.List;
import org.assertj.swing.finder.WindowFinder;
import org.assertj.swing.fixture.FrameFixture;
import org.fife.ui.rsyntaxtextarea.RSyntaxTextArea;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import rakeline.engine.State;
import rakeline.engine.jshell.Sessions;
import rakeline.figure.Chart;
import rakeline.worksheet.Row;
import rakeline.worksheet.Worksheet;

/** From start to a result, with real rows in a real process. */
@Tag("window")
@Tag("process")
@ExtendWith(OnAScreen.class)
class StoryTest {
    private static final Worksheet PAGE = Worksheet.empty("Offset")
            .withRows(List.of(
                    new Row.Note("n1", "# What the head angle does"),
                    Row.Snippet.of("r1", "Bike xs = bike(\"demo-data/bikes/road-xs.bike.json\");"),
                    Row.Snippet.of("r2", "double head = dial(HEAD_ANGLE, xs, 69, 74);"),
                    Row.Snippet.of(
                            "r3", "sweep(xs.with(HEAD_ANGLE, head)).over(HEAD_ANGLE, 69, 74).track(TRAIL).chart()"),
                    Row.Snippet.of("r4", "measures(List.of(TRAIL, WHEELBASE), xs)")));

    @TempDir
    Path home;

    private OpenWindow window;

    @BeforeEach
    void open() {
        window = OpenWindow.running(home, 1366, 768, Sessions::open).with(PAGE);
    }

    @AfterEach
    void close() {
        window.close();
    }

    @Test
    void anEducatorReadsMovesADialShowsAFigureAndTakesItAlong() throws Exception {
        window.choose("View", "Read");
        assertThat(window.shown()).noneMatch(RSyntaxTextArea.class::isInstance);
        window.frame().textBox("field head").focus().pressAndReleaseKeys(KeyEvent.VK_UP);
        window.await("the chart follows the dial", () -> here("r3") > 71.35);
        window.select("r3");
        window.choose("View", "Show");
        FrameFixture show = WindowFinder.findFrame("show").using(window.robot());
        assertThat(OpenWindow.all(show.target())).noneMatch(RSyntaxTextArea.class::isInstance);
        window.robot().pressAndReleaseKey(KeyEvent.VK_RIGHT);
        window.await(
                "the next figure is shown",
                () -> show.label("shown place").text().equals("2 of 2"));
        window.robot().pressAndReleaseKey(KeyEvent.VK_LEFT);
        window.robot().pressAndReleaseKey(KeyEvent.VK_ESCAPE);
        window.await("the page is back", () -> !show.target().isDisplayable());
        window.choose("Page", "Copy the row's figure as a picture");
        Image picture = (Image) Toolkit.getDefaultToolkit().getSystemClipboard().getData(DataFlavor.imageFlavor);
        assertThat(picture.getWidth(null)).isGreaterThan(600);
    }

    @Test
    void aStudentTypesWithHelpErrsReadsMendsAndRuns() {
        window.select("r4");
        window.choose("Row", "Add a snippet below");
        window.robot().enterText("xs.wit");
        window.robot().pressKey(KeyEvent.VK_CONTROL);
        window.robot().pressAndReleaseKey(KeyEvent.VK_SPACE);
        window.robot().releaseKey(KeyEvent.VK_CONTROL);
        window.await(
                "a word is offered",
                () -> java.util.Arrays.stream(java.awt.Window.getWindows())
                        .anyMatch(each -> each.isShowing()
                                && OpenWindow.all(each)
                                        .anyMatch(part -> part instanceof javax.swing.JList<?> list
                                                && list.getModel().getSize() > 0
                                                && list.getModel()
                                                        .getElementAt(0)
                                                        .toString()
                                                        .startsWith("with("))));
        window.robot().pressAndReleaseKey(KeyEvent.VK_ENTER);
        window.await("it is typed", () -> text("r5").equals("xs.with("));
        window.robot().enterText("HEAD_ANGEL, 70)");
        window.await("the row says what is wrong", () -> message("r5").contains("nothing is called HEAD_ANGEL here"));
        assertThat(state("r5")).isEqualTo(State.FAILED);
        assertThat(message("r5")).contains("HEAD_ANGLE");
        RSyntaxTextArea editor =
                (RSyntaxTextArea) window.frame().textBox("editor r5").target();
        window.await("it is underlined", () -> !editor.getParserNotices().isEmpty());
        int place = text("r5").indexOf("ANGEL");
        window.run(() -> editor.select(place, place + 5));
        window.robot().enterText("ANGLE");
        window.await("the row is fresh", () -> state("r5") == State.FRESH);
        assertThat(text("r5")).isEqualTo("xs.with(HEAD_ANGLE, 70)");
    }

    private double here(String row) {
        return window.window().bench().model().standing(row).result().stream()
                .filter(rakeline.engine.Result.Shown.class::isInstance)
                .map(result -> ((rakeline.engine.Result.Shown) result).figure())
                .filter(Chart.class::isInstance)
                .mapToDouble(figure -> ((Chart) figure).here())
                .findFirst()
                .orElse(Double.NaN);
    }

    private State state(String row) {
        return window.window().bench().model().standing(row).state();
    }

    private String message(String row) {
        return window.model().standing(row).message();
    }

    private String text(String row) {
        return window.window().bench().model().page().row(row).map(Row::text).orElseThrow();
    }
}
