package rakeline.shell;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Point;
import java.awt.Window;
import java.awt.event.KeyEvent;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import javax.swing.JComponent;
import javax.swing.JWindow;
import org.assertj.swing.core.MouseButton;
import org.fife.ui.rsyntaxtextarea.RSyntaxTextArea;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import rakeline.worksheet.Row;

/** Rows are selected, moved, copied and searched; a snippet helps with its brackets and says where it is wrong. */
@Tag("window")
@ExtendWith(OnAScreen.class)
class EditingTest {
    @TempDir
    Path home;

    private OpenWindow window;

    @BeforeEach
    void openAWindow() {
        window = OpenWindow.sized(home, 1920, 1000).with(Samples.slackHeadAngles());
    }

    @AfterEach
    void closeIt() {
        window.close();
    }

    @Test
    void shiftAndDownSelectsOneRowMore() {
        window.select("r2");
        window.choose("Row", "Leave the row's text");
        press(KeyEvent.VK_SHIFT, KeyEvent.VK_DOWN);
        window.await(
                "two rows are selected",
                () -> window.window().bench().model().selection().size() == 2);
        assertThat(window.model().selection()).containsExactly("r2", "r3");
    }

    @Test
    void selectedRowsMoveTogether() {
        select("r3", "r4");
        window.choose("Row", "Move the row up");
        assertThat(ids()).startsWith("n1", "r1", "r3", "r4", "r2");
    }

    @Test
    void cutRowsArePastedBelowTheSelectedOne() {
        select("r3", "r4");
        window.choose("Edit", "Cut");
        assertThat(ids()).doesNotContain("r3", "r4");
        window.select("r8");
        window.choose("Row", "Leave the row's text");
        window.choose("Edit", "Paste");
        List<Row> rows = window.model().rows();
        assertThat(rows.subList(rows.size() - 2, rows.size()))
                .extracting(Row::text)
                .containsExactly("draw(it)", "drawPlan(it)");
    }

    @Test
    void pastedRowsAreOneStep() {
        select("r3", "r4");
        window.choose("Edit", "Copy");
        window.choose("Edit", "Paste");
        window.choose("Edit", "Undo");
        assertThat(window.model().page()).isEqualTo(Samples.slackHeadAngles());
    }

    @Test
    void copyInARowsTextCopiesTheText() {
        type("r3", 0, 4);
        press(KeyEvent.VK_CONTROL, KeyEvent.VK_C);
        type("r6", 0, text("r6").length());
        press(KeyEvent.VK_CONTROL, KeyEvent.VK_V);
        window.await("it is pasted", () -> text("r6").equals("draw"));
        assertThat(ids()).hasSize(10);
    }

    @Test
    void aRowIsMovedByDraggingItsMargin() {
        Point from = centre("gutter r3");
        Point to = centre("row r2");
        window.robot().pressMouse(from, MouseButton.LEFT_BUTTON);
        window.robot().moveMouse(from.x, (from.y + to.y) / 2);
        window.robot().moveMouse(from.x, to.y - 10);
        window.robot().releaseMouse(MouseButton.LEFT_BUTTON);
        window.await("the row has moved", () -> ids().indexOf("r3") < ids().indexOf("r2"));
        assertThat(ids()).startsWith("n1", "r1", "r3", "r2", "r4");
    }

    private Point centre(String name) {
        java.awt.Component part = window.shown().stream()
                .filter(each -> name.equals(each.getName()))
                .findFirst()
                .orElseThrow();
        Point corner = part.getLocationOnScreen();
        return new Point(corner.x + part.getWidth() / 2, corner.y + part.getHeight() / 2);
    }

    @Test
    void wordsAreFoundAcrossRows() {
        find("it)");
        assertThat(window.label("found")).isEqualTo("1 of 5");
    }

    @Test
    void theNextPlaceIsInTheNextRowThatHasIt() {
        find("draw");
        window.robot().pressAndReleaseKey(KeyEvent.VK_ENTER);
        window.await(
                "the next is selected",
                () -> window.window().bench().model().selected().equals(java.util.Optional.of("r4")));
        assertThat(window.frame().textBox("editor r4").target().getSelectedText())
                .isEqualTo("draw");
    }

    @Test
    void replacingAllIsOneStep() {
        find("draw");
        window.write(window.frame().textBox("replace by"), "sketch");
        window.press(window.frame().button("replace all").target());
        assertThat(List.of(text("r3"), text("r4"))).containsExactly("sketch(it)", "sketchPlan(it)");
        window.choose("Edit", "Undo");
        assertThat(window.model().page()).isEqualTo(Samples.slackHeadAngles());
    }

    @Test
    void anErrorIsUnderlinedAtItsPlaceAndSaidInOneSentence() {
        RSyntaxTextArea editor =
                (RSyntaxTextArea) window.frame().textBox("editor r7").target();
        window.await("it is underlined", () -> !editor.getParserNotices().isEmpty());
        assertThat(editor.getParserNotices().get(0).getMessage())
                .isEqualTo("Line 1: nothing here is called fail; did you mean trail?");
    }

    @Test
    void anErrorIsNoLongerUnderlinedOnceTheTextIsAnother() {
        RSyntaxTextArea editor = editor("r7");
        window.await("it is underlined", () -> !editor.getParserNotices().isEmpty());
        type("r7", 0, 4);
        window.robot().enterText("draw");
        window.await("it is typed", () -> text("r7").startsWith("draw("));
        window.await("it is gone", () -> editor.getParserNotices().isEmpty());
        assertThat(text("r7")).isEqualTo("draw(it)");
    }

    @Test
    void aBracketThatIsOpenedIsClosed() {
        type("r3", 0, text("r3").length());
        window.robot().enterText("draw(");
        window.await("it is typed", () -> text("r3").startsWith("draw("));
        assertThat(text("r3")).isEqualTo("draw()");
    }

    @Test
    void aLineIsPutBehindACommentMarkAndBack() {
        window.frame().textBox("editor r3").focus();
        window.choose("Edit", "Comment out or uncomment");
        assertThat(text("r3")).isEqualTo("//draw(it)");
        window.choose("Edit", "Comment out or uncomment");
        assertThat(text("r3")).isEqualTo("draw(it)");
    }

    @Test
    void helpOpensAtTheQuantityAtTheCaret() {
        int place = text("r2").indexOf("headAngleDeg");
        type("r2", place, place + 4);
        press(KeyEvent.VK_SHIFT, KeyEvent.VK_F1);
        assertThat(window.frame().dialog("guide").list("topics").selection())
                .containsExactly("Head angle · frame.headAngleDeg");
        assertThat(window.frame()
                        .dialog("guide")
                        .panel("topic drawing")
                        .target()
                        .isShowing())
                .isTrue();
        window.frame().dialog("guide").close();
    }

    @Test
    void whatALastRowComesToIsBroughtInSight() {
        window.select("r8");
        window.choose("Row", "Add a snippet below");
        String added = ids().get(ids().size() - 1);
        window.robot().enterText("draw(it)");
        window.robot().pressAndReleaseKey(KeyEvent.VK_F5);
        window.await("the drawing is in sight", () -> isWholeInSight("result " + added));
        assertThat(isWholeInSight("editor " + added)).isTrue();
    }

    private boolean isWholeInSight(String name) {
        return window.shown().stream()
                .filter(part -> name.equals(part.getName()))
                .map(JComponent.class::cast)
                .anyMatch(part -> part.getHeight() > 0 && part.getVisibleRect().height == part.getHeight());
    }

    @Test
    void theListOfWordsIsLegibleWhereOneFits() {
        type("r3", 0, text("r3").length());
        window.robot().enterText("drawFo");
        press(KeyEvent.VK_CONTROL, KeyEvent.VK_SPACE);
        window.await(
                "the list and what the word means are there", () -> heights().size() == 2);
        assertThat(heights()).allMatch(height -> height >= 150);
    }

    private static List<Integer> heights() {
        return Stream.of(Window.getWindows())
                .filter(JWindow.class::isInstance)
                .filter(Window::isShowing)
                .map(Window::getHeight)
                .toList();
    }

    private RSyntaxTextArea editor(String row) {
        return (RSyntaxTextArea) window.frame().textBox("editor " + row).target();
    }

    /** Puts the keys into a row's text with some of it selected. */
    private void type(String row, int from, int to) {
        window.frame().textBox("editor " + row).focus();
        window.run(() -> editor(row).select(from, to));
    }

    private void press(int held, int key) {
        window.robot().pressKey(held);
        window.robot().pressAndReleaseKey(key);
        window.robot().releaseKey(held);
        window.robot().waitForIdle();
    }

    private void find(String words) {
        window.choose("Edit", "Find and replace");
        window.write(window.frame().textBox("find"), words);
    }

    private void select(String from, String to) {
        window.run(() -> {
            window.window().bench().select(from);
            window.window().bench().extend(to);
        });
        window.choose("Row", "Leave the row's text");
    }

    private List<String> ids() {
        return window.window().bench().model().rows().stream().map(Row::id).toList();
    }

    private String text(String row) {
        return window.window().bench().model().page().row(row).map(Row::text).orElseThrow();
    }
}
