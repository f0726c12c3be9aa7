package rakeline.shell;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.event.KeyEvent;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javax.swing.JTextArea;
import javax.swing.JViewport;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import rakeline.shell.figures.FigureView;
import rakeline.shell.page.Origin;
import rakeline.worksheet.Row;
import rakeline.worksheet.Worksheet;

/** What a person looks at stays where it is, and what was begun is not lost. */
@Tag("window")
@ExtendWith(OnAScreen.class)
class StayingTest {
    @TempDir
    Path home;

    private OpenWindow window;

    @BeforeEach
    void openAWindow() {
        window = OpenWindow.sized(home, 1366, 768).with(Samples.slackHeadAngles());
    }

    @AfterEach
    void closeIt() {
        window.close();
    }

    private String text(String row) {
        return window.window().bench().model().page().row(row).map(Row::text).orElse("");
    }

    private void type(String words) {
        words.chars().forEach(letter -> window.robot().type((char) letter));
    }

    @Test
    void aNewPageTakesTypingAtOnce() {
        window.choose("Page", "New page");
        window.await("the cursor stands in it", () -> focused("editor r1"));
        type("1+1");
        window.await("it is typed", () -> text("r1").equals("1+1"));
        assertThat(window.shown()).noneMatch(part -> "beginning".equals(part.getName()));
    }

    @Test
    void aNewPageAsksNothingWhenItIsLeft() {
        window.choose("Page", "New page");
        assertThat(window.model().isSaved()).isTrue();
    }

    @Test
    void anEmptyPageListsItsKeys() {
        window.choose("Page", "New page");
        assertThat(window.shown()).anyMatch(part -> "beginning".equals(part.getName()));
    }

    @Test
    void aClickOnAPageWithoutRowsBeginsOne() {
        window.with(Worksheet.empty("Untitled"));
        window.robot().click(window.ledger(), new java.awt.Point(300, 300));
        window.await("the cursor stands in it", () -> focused("editor r1"));
        assertThat(window.model().rows()).hasSize(1);
    }

    @Test
    void aKeyOnAPageWithoutRowsBeginsOne() {
        window.with(Worksheet.empty("Untitled"));
        window.run(() -> window.ledger().leaveText());
        window.await("the page has the keys", () -> window.ledger().isFocusOwner());
        type("4");
        window.await("a row is begun", () -> text("r1").equals("4"));
        type("2");
        window.await("it goes on", () -> text("r1").equals("42"));
    }

    private static boolean focused(String name) {
        var owner =
                java.awt.KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
        return owner != null && name.equals(owner.getName());
    }

    private FigureView figure(String row) {
        return window.shown().stream()
                .filter(FigureView.class::isInstance)
                .filter(part -> ("result " + row).equals(part.getParent().getName()))
                .map(FigureView.class::cast)
                .findFirst()
                .orElseThrow();
    }

    private void write(String row, String words) {
        window.run(() -> window.window().bench().act("typed", page -> page.withText(row, words)));
        window.settle();
    }

    @Test
    void theFigureOfARowThatFailsStaysFadedAtItsHeightAndSaysSo() {
        window.select("r5");
        int height = figure("r5").getParent().getHeight();
        write("r5", "chart() fail");
        window.await("the row has failed", () -> window.gutter("r5").endsWith("failed"));
        window.settle();
        assertThat(figure("r5").isFaded()).isTrue();
        assertThat(figure("r5").getParent().getHeight()).isEqualTo(height);
        assertThat(ages()).contains("Failed: this is the figure of the last good run.");
        write("r5", "chart()");
        window.await("the row is fresh", () -> window.gutter("r5").endsWith("fresh"));
        assertThat(figure("r5").isFaded()).isFalse();
        assertThat(ages()).isEmpty();
    }

    private List<String> ages() {
        return window.shown().stream()
                .filter(part -> "age of the figure".equals(part.getName()))
                .map(part -> ((JTextArea) part).getText())
                .toList();
    }

    private int top() {
        return ((JViewport) window.ledger().getParent()).getViewPosition().y;
    }

    private int topOf(String row) {
        return window.shown().stream()
                .filter(part -> ("row " + row).equals(part.getName()))
                .mapToInt(part ->
                        SwingUtilities.convertPoint(part, 0, 0, window.ledger().getParent()).y)
                .findFirst()
                .orElseThrow();
    }

    /** The last row that begins at the upper edge or above it. */
    private String atTheEdge() {
        return window.window().bench().model().rows().stream()
                .map(Row::id)
                .filter(id -> topOf(id) <= 0)
                .reduce((before, after) -> after)
                .orElseThrow();
    }

    @Test
    void anotherThemeLeavesThePageWhereItWasAndTheCaretInItsWord() {
        window.select("r3");
        window.choose("Row", "Edit the row");
        window.await("it is typed in", () -> focused("editor r3"));
        window.run(() -> {
            window.frame().textBox("editor r3").target().select(2, 4);
            ((JViewport) window.ledger().getParent()).setViewPosition(new java.awt.Point(0, 300));
        });
        int before = top();
        window.choose("View", "Dark");
        window.await("the caret is back", () -> focused("editor r3"));
        window.settle();
        assertThat(top()).isEqualTo(before);
        assertThat(window.frame().textBox("editor r3").target().getSelectedText())
                .isEqualTo("aw");
    }

    @Test
    void anotherSizeOfTypeLeavesTheSameRowAtTheUpperEdge() {
        window.select("r6");
        window.run(() -> ((JViewport) window.ledger().getParent()).setViewPosition(new java.awt.Point(0, 500)));
        String first = atTheEdge();
        window.choose("View", "Larger type");
        window.settle();
        assertThat(atTheEdge()).isEqualTo(first);
        assertThat(window.model().selected()).contains("r6");
    }

    @Test
    void aDialOfABundledPageIsMovedWithoutAQuestion() {
        window.run(() -> window.window()
                .bench()
                .open(Samples.slackHeadAngles(), new Origin.Bundled("worksheets/slack-head-angles.rakeline"), true));
        window.settle();
        window.frame()
                .textBox("field head")
                .focus()
                .deleteText()
                .enterText("72")
                .pressAndReleaseKeys(KeyEvent.VK_ENTER);
        window.await(
                "the dial stands there", () -> window.model().page().dials().containsKey("head"));
        window.frame().close();
        window.await("the window is gone", () -> !window.window().frame().isDisplayable());
    }

    @Test
    void aPressOnASliderThatMovesNothingLeavesAValueBetweenItsPlaces() {
        window.run(() -> window.window().bench().dial("head", 71.26, "typed"));
        window.settle();
        var slider = window.frame().slider("slider head").target();
        window.run(() -> {
            slider.setValueIsAdjusting(true);
            slider.setValueIsAdjusting(false);
        });
        assertThat(window.model().page().dials()).containsEntry("head", 71.26);
    }

    @Test
    void theRackLeavesPickersOfBikesWhereTheyStand() {
        window.run(() ->
                window.window().bench().act("put on the rack", page -> page.withRack(List.of("bikes/s.bike.json"))));
        assertThat(window.model().page().picks()).containsEntry("xs", "bikes/xs.bike.json");
        window.choose("Edit", "Undo");
        assertThat(window.model().page().picks()).isEmpty();
    }

    @Test
    void aPageWithAFailedRowIsPrintedOnlyWhereThePersonSaysSo() {
        window.choose("Page", "Print…");
        assertThat(window.frame().optionPane().target().getMessage()).isNotNull();
        assertThat(OpenWindow.all(window.frame().optionPane().target())
                        .filter(part -> "gaps".equals(part.getName()))
                        .map(part -> ((JTextArea) part).getText()))
                .containsExactly("Row value, failed: Line 1: nothing here is called fail; did you mean trail?");
        window.press(window.frame().optionPane().buttonWithText("Cancel").target());
        assertThat(window.model().said()).isEqualTo("no handout is made");
    }

    @Test
    void f1ListsTheKeysInShow() {
        window.choose("View", "Show");
        window.await("it is shown", () -> Optional.ofNullable(show()).isPresent());
        window.robot().pressAndReleaseKey(KeyEvent.VK_F1);
        window.await(
                "the keys are listed",
                () -> java.util.Arrays.stream(show().getOwnedWindows()).anyMatch(java.awt.Window::isShowing));
    }

    private static java.awt.Window show() {
        return java.util.Arrays.stream(java.awt.Window.getWindows())
                .filter(each -> "show".equals(each.getName()) && each.isShowing())
                .findFirst()
                .orElse(null);
    }
}
