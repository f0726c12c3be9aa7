package rakeline.shell;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Point;
import java.awt.event.KeyEvent;
import java.awt.event.MouseEvent;
import java.nio.file.Path;
import java.util.List;
import org.assertj.swing.core.matcher.JButtonMatcher;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import rakeline.figure.Chart;
import rakeline.shell.figures.FigureView;
import rakeline.worksheet.Row;
import rakeline.worksheet.Worksheet;

/** What can be done at a figure. */
@Tag("window")
@ExtendWith(OnAScreen.class)
class FigureWindowTest {
    private static final String SWEEP = "sweep(it).over(HEAD_ANGLE, 69, 74).track(TRAIL).chart()";

    @TempDir
    Path home;

    private OpenWindow window;

    @BeforeEach
    void openAPageOfTwoCharts() {
        window = OpenWindow.sized(home, 1920, 1000)
                .with(Worksheet.empty("Two charts")
                        .withRows(List.of(
                                Row.Snippet.of("r1", "double head = dial(\"Head angle\", \"°\", 69, 74, 0.1, 71.3);"),
                                Row.Snippet.of("r2", SWEEP),
                                Row.Snippet.of("r3", SWEEP))));
        window.select("r2");
    }

    @AfterEach
    void closeIt() {
        window.close();
    }

    private List<FigureView> charts() {
        return window.shown().stream()
                .filter(FigureView.class::isInstance)
                .map(FigureView.class::cast)
                .filter(view -> view.figure().filter(Chart.class::isInstance).isPresent())
                .toList();
    }

    @Test
    void chartsOfTheSameQuantityPointTogether() {
        FigureView first = charts().get(0);
        window.robot().focusAndWaitForFocusGain(first);
        window.robot().pressAndReleaseKeys(KeyEvent.VK_RIGHT, KeyEvent.VK_RIGHT);
        int step = first.view().step();
        assertThat(step).isPositive();
        assertThat(charts().get(1).view().step()).isEqualTo(step);
    }

    @Test
    void aFigureOffersItsTable() {
        window.choose("Page", "Show the row's figure as a table");
        assertThat(window.frame().dialog().textBox("figure table").text()).contains("Head angle", "Trail");
    }

    @Test
    void whatIsHeldIsChangedAtTheFigureAsOneStep() {
        window.choose("Page", "Hold something else in the row's figure…");
        window.choose(window.frame().dialog().comboBox("held measure").target(), "Trail, mm");
        window.choose(window.frame().dialog().comboBox("held by").target(), "Fork offset, mm");
        window.write(window.frame().dialog().textBox("held value"), "58");
        window.press(
                window.frame().dialog().button(JButtonMatcher.withText("Hold")).target());
        window.await("the row is rewritten", () -> text().contains(".hold(\"trailMm\", 58).by(\"fork.offsetMm\")"));
        window.choose("Edit", "Undo");
        assertThat(text()).isEqualTo(SWEEP);
    }

    @Test
    void theLineThroughAChartMovesTheDialThatIsBoundToIt() {
        FigureView chart = charts().get(0);
        Point at = placeThatSays(chart, "Drag to move the dial “Head angle”");
        window.robot().moveMouse(chart, at);
        window.robot().pressMouse(org.assertj.swing.core.MouseButton.LEFT_BUTTON);
        window.robot().moveMouse(chart, new Point(at.x + 60, at.y));
        window.robot().releaseMouseButtons();
        window.await(
                "the dial has moved",
                () -> window.window().bench().model().page().dials().getOrDefault("head", 0.0) > 71.3);
        window.choose("Edit", "Undo");
        assertThat(window.model().page().dials()).isEmpty();
    }

    @Test
    void aHandleIsTakenAndMovedByKeysAsOneStep() {
        FigureView chart = charts().get(0);
        window.robot().focusAndWaitForFocusGain(chart);
        window.robot().pressAndReleaseKeys(KeyEvent.VK_H, KeyEvent.VK_RIGHT, KeyEvent.VK_RIGHT);
        window.await(
                "it says where it stands",
                () -> chart.getAccessibleContext()
                        .getAccessibleDescription()
                        .startsWith("Handle of the dial “Head angle”"));
        assertThat(window.model().page().dials().get("head")).isGreaterThan(71.3);
        window.robot().pressAndReleaseKeys(KeyEvent.VK_ESCAPE);
        window.choose("Edit", "Undo");
        assertThat(window.model().page().dials()).isEmpty();
    }

    /** The first place halfway down a figure whose words are these. */
    private static Point placeThatSays(FigureView figure, String words) {
        int y = figure.getHeight() / 2;
        return java.util.stream.IntStream.range(0, figure.getWidth())
                .mapToObj(x -> new Point(x, y))
                .filter(place -> words.equals(figure.getToolTipText(
                        new MouseEvent(figure, MouseEvent.MOUSE_MOVED, 0, 0, place.x, place.y, 0, false))))
                .findFirst()
                .orElseThrow();
    }

    private String text() {
        return window.window().bench().model().page().row("r2").orElseThrow().text();
    }
}
