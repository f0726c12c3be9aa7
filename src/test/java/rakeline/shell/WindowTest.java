package rakeline.shell;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Toolkit;
import java.awt.event.KeyEvent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.assertj.swing.core.KeyPressInfo;
import org.assertj.swing.core.matcher.JButtonMatcher;
import org.fife.ui.rsyntaxtextarea.RSyntaxTextArea;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import rakeline.desk.Bounds;
import rakeline.desk.Memory;
import rakeline.desk.PageFile;
import rakeline.desk.Places;
import rakeline.desk.SafeFile;
import rakeline.shell.figures.FigureView;
import rakeline.worksheet.Row;
import rakeline.worksheet.Worksheet;

@Tag("window")
@ExtendWith(OnAScreen.class)
class WindowTest {
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
    void aRowSaysItsNameAndItsStateInWords() {
        assertThat(List.of(window.gutter("r1"), window.gutter("r7"))).containsExactly("xs fresh", "value failed");
    }

    @Test
    void theStatusLineCountsTheStates() {
        assertThat(window.label("counts")).isEqualTo("10 rows · 7 fresh · 1 failed");
    }

    @Test
    void readShowsNoCode() {
        window.press(window.frame().toggleButton("read").target());
        assertThat(window.shown()).noneMatch(RSyntaxTextArea.class::isInstance);
    }

    @Test
    void readShowsTheFiguresOfThePage() {
        window.press(window.frame().toggleButton("read").target());
        assertThat(window.shown().stream().filter(FigureView.class::isInstance)).hasSizeGreaterThanOrEqualTo(3);
    }

    @Test
    void aBurstOfTypingIsUndoneInOneStep() {
        window.frame().textBox("editor r3").focus().enterText("abc");
        window.await("it is typed", () -> text("r3").contains("abc"));
        assertThat(text("r3")).contains("abc");
        window.choose("Edit", "Undo");
        assertThat(text("r3")).isEqualTo("draw(it)");
    }

    @Test
    void theTextOnTheWindowFollowsAnUndo() {
        window.frame().textBox("editor r3").focus().enterText("abc");
        window.await("it is typed", () -> text("r3").contains("abc"));
        window.choose("Edit", "Undo");
        window.frame().textBox("editor r3").requireText("draw(it)");
    }

    @Test
    void aRowRunsAgainWhenTheTypingRests() {
        window.frame().textBox("editor r3").focus().enterText(" ");
        window.await("the row has run again", () -> window.session(0).ran().size() > 8);
        assertThat(window.session(0).ran()).endsWith("r3");
    }

    @Test
    void theKeyForStoppingReachesThePageFromARowsText() {
        window.session(0).hold();
        window.run(() -> window.window().bench().act("typed", page -> page.withText("r6", "slow()")));
        window.await("the row runs", () -> window.window().bench().model().isRunning());
        window.frame().textBox("editor r3").focus().pressAndReleaseKeys(KeyEvent.VK_F8);
        window.settle();
        assertThat(window.gutter("r6")).isEqualTo("value stopped");
    }

    @Test
    void aRowRunsAgainWhenItIsLeft() {
        window.frame().textBox("editor r3").focus().enterText(" ");
        window.await("it is typed", () -> text("r3").contains(" "));
        window.frame().textBox("editor r6").focus();
        window.await("the row has run again", () -> window.session(0).ran().size() > 8);
        assertThat(window.session(0).ran()).endsWith("r3");
    }

    @Test
    void draggingADialRunsWhatDependsOnIt() {
        int before = window.session(0).ran().size();
        window.frame().slider("slider head").slideToMaximum();
        window.await("the dial stands at its end", () -> dial("head") == 74);
        window.settle();
        List<String> again = window.session(0).ran();
        assertThat(again.subList(before, again.size())).contains("r2", "r5").doesNotContain("r1", "r6");
    }

    @Test
    void oneDragOfADialIsOneStep() {
        window.frame().slider("slider head").slideToMaximum();
        window.await("the dial stands at its end", () -> dial("head") == 74);
        window.choose("Edit", "Undo");
        assertThat(window.model().page().dials()).isEmpty();
    }

    @Test
    void aFieldTakesACommaAndAPoint() {
        type("field head", "71,9");
        assertThat(dial("head")).isEqualTo(71.9);
        type("field head", "72.05");
        assertThat(dial("head")).isEqualTo(72.05);
    }

    @Test
    void aValueOutOfRangeIsRefusedInOneSentence() {
        type("field head", "80");
        window.frame()
                .textBox("notice words")
                .requireText("Head angle is \"80\"; accepted is a number from 69 to 74°.");
    }

    @Test
    void theArrowKeysStepADial() {
        window.frame().textBox("field crank").focus().pressAndReleaseKeys(KeyEvent.VK_UP);
        assertThat(dial("crank")).isEqualTo(167.5);
    }

    @Test
    void aDoubleClickReturnsToTheBikesOwnValue() {
        type("field head", "73");
        window.robot().doubleClick(window.frame().label("name head").target());
        window.await("the dial is back", () -> dial("head") == 71.3);
        assertThat(dial("head")).isEqualTo(71.3);
    }

    @Test
    void theStatusLineSaysWhatTheDialDid() {
        type("field head", "72");
        window.settle();
        window.await("it is said", () -> window.window().bench().model().said().startsWith("Head angle"));
        assertThat(window.label("said")).isEqualTo("Head angle 72.0° → Trail 60.7 mm");
    }

    @Test
    void aPickerChoosesByName() {
        window.choose(window.frame().comboBox("picker xs").target(), "Road S");
        assertThat(window.model().page().picks()).isEqualTo(Map.of("xs", "bikes/s.bike.json"));
    }

    @Test
    void aRowIsAddedBelowTheSelectedOneWithTheCaretInIt() {
        window.select("r3");
        window.choose("Row", "Add a snippet below");
        window.frame().textBox("editor r9").requireFocused();
        assertThat(window.model().page().indexOf("r9")).isEqualTo(4);
    }

    @Test
    void steppingToAnotherRowLeavesTheTextAndRunsIt() {
        window.frame().textBox("editor r3").focus().enterText("x");
        window.choose("Row", "Select the row below");
        window.await("the row has run again", () -> window.session(0).ran().size() > 8);
        assertThat(window.model().selected()).contains("r4");
    }

    @Test
    void aRowMovesUp() {
        window.select("r5");
        window.choose("Row", "Move the row up");
        assertThat(window.model().page().indexOf("r5")).isEqualTo(4);
    }

    @Test
    void aDeletedRowComesBackWithUndo() {
        window.select("n2");
        window.choose("Row", "Delete the row");
        assertThat(window.model().page().row("n2")).isEmpty();
        window.choose("Edit", "Undo");
        assertThat(window.model().page()).isEqualTo(Samples.slackHeadAngles());
    }

    @Test
    void aDoubleClickEditsANoteAsPlainText() {
        window.select("n2");
        window.choose("Row", "Edit the row");
        window.frame().textBox("editor n2").requireText(text("n2"));
    }

    @Test
    void closingAsksAboutUnsavedChangesAndGoingBackKeepsTheWindow() {
        window.frame().textBox("editor r3").focus().enterText("x");
        window.frame().close();
        window.frame()
                .optionPane()
                .requireMessage(org.assertj.core.util.Strings.concat(
                        "“", Samples.slackHeadAngles().title(), "” has changes that are not saved."));
        window.press(window.frame().optionPane().buttonWithText("Cancel").target());
        window.frame().requireVisible();
    }

    @Test
    void notSavingClosesTheWindow() {
        window.frame().textBox("editor r3").focus().enterText("x");
        window.frame().close();
        window.press(window.frame().optionPane().buttonWithText("Do not save").target());
        window.await("the window is gone", () -> !window.window().frame().isDisplayable());
    }

    private Path savedPage() {
        Path file = home.resolve("mine.rakeline");
        window.run(() -> window.window()
                .filing()
                .write(file, window.window().bench().model().page(), () -> {}));
        window.await(
                "it is saved",
                () -> window.window().bench().model().origin().path().isPresent());
        return file;
    }

    private void openAPageFromElsewhere() {
        Path file = home.resolve("theirs.rakeline");
        PageFile.create(SafeFile.onDisk(), file, Samples.slackHeadAngles());
        window.run(() -> window.window().open(file));
        window.await("it is asked", () -> !window.window().bench().model().allowed());
    }

    @Test
    void aSavedPageSaysSoAndStandsInItsFile() {
        Path file = savedPage();
        assertThat(PageFile.open(SafeFile.onDisk(), file).page())
                .isEqualTo(Samples.slackHeadAngles().withPick("xs", "bikes/xs.bike.json"));
        assertThat(window.label("about")).isEqualTo("for the educator · saved");
    }

    @Test
    void aPageIsSavedInTheViewThatItIsShownIn() {
        window.choose("View", "Read");
        Path file = savedPage();
        assertThat(PageFile.open(SafeFile.onDisk(), file).page().view()).isEqualTo(Worksheet.View.READ);
    }

    @Test
    void theWindowOpensWhereItStoodLast() {
        window.run(() -> window.window().frame().setBounds(40, 30, 1000, 700));
        window.frame().close();
        window.await("the window is gone", () -> !window.window().frame().isDisplayable());
        assertThat(Memory.bounds(SafeFile.onDisk(), Places.in(home)).recall().value())
                .isEqualTo(new Bounds(40, 30, 1000, 700, false));
    }

    @Test
    void aFileFromElsewhereRunsNothingUntilItIsAllowed() {
        openAPageFromElsewhere();
        assertThat(window.sessions()).isEqualTo(1);
        window.press(window.frame().button("run it").target());
        window.settle();
        assertThat(window.session(1).ran()).contains("r5");
    }

    @Test
    void rowsOfAFileFromElsewhereSayThatTheyHaveNotRun() {
        openAPageFromElsewhere();
        assertThat(window.label("counts")).isEqualTo("10 rows · 8 not run");
    }

    @Test
    void codeThatWasAllowedRunsWhenItIsOpenedAgainUnderAnotherName() {
        openAPageFromElsewhere();
        window.press(window.frame().button("run it").target());
        Path other = home.resolve("other.rakeline");
        PageFile.create(SafeFile.onDisk(), other, Samples.slackHeadAngles());
        window.run(() -> window.window().open(other));
        window.await(
                "it is open",
                () -> window.window().bench().model().origin().path().equals(Optional.of(other)));
        assertThat(window.model().allowed()).isTrue();
    }

    @Test
    void aFileThatAnotherProgramChangedIsNotOverwrittenButAsked() {
        Path file = savedPage();
        Worksheet theirs = Samples.slackHeadAngles().withText("r3", "theirs");
        PageFile.create(SafeFile.onDisk(), file, theirs);
        window.run(() -> window.window().bench().act("typed", page -> page.withText("r3", "mine")));
        window.choose("Page", "Save");
        window.press(window.frame()
                .optionPane()
                .buttonWithText("Reload from the file")
                .target());
        window.await(
                "theirs is loaded", () -> window.window().bench().model().page().equals(theirs));
        assertThat(PageFile.open(SafeFile.onDisk(), file).page()).isEqualTo(theirs);
    }

    @Test
    void aPageThatWasNotSavedIsBroughtBackAsAStepThatCanBeUndone() {
        Worksheet saved = Samples.slackHeadAngles();
        Path file = home.resolve("mine.rakeline");
        PageFile.create(SafeFile.onDisk(), file, saved);
        Worksheet typed = saved.withText("r3", "typed before the end");
        Drafts.left(home, typed, file);
        window.run(() -> window.window().recover());
        window.press(window.frame().optionPane().buttonWithText("Restore").target());
        window.await("it is back", () -> window.window().bench().model().page().equals(typed));
        window.choose("Edit", "Undo");
        assertThat(window.model().page()).isEqualTo(saved);
    }

    @Test
    void aBrokenFileIsRefusedInOneSentenceAndThePageStays() throws Exception {
        Path file = Files.writeString(home.resolve("broken.rakeline"), "{");
        window.run(() -> window.window().open(file));
        window.await(
                "it is said", () -> !window.window().bench().model().notice().isEmpty());
        assertThat(window.model().notice()).startsWith(file.toString());
        assertThat(window.model().page()).isEqualTo(Samples.slackHeadAngles());
    }

    @Test
    void aLongRunShowsItsProgressAndCanBeStopped() {
        window.session(0).hold();
        window.run(() -> window.window().bench().act("typed", page -> page.withText("r6", "slow()")));
        window.await(
                "progress is shown",
                () -> OpenWindow.all(window.window().frame())
                        .anyMatch(component -> "running".equals(component.getName()) && component.isShowing()));
        assertThat(window.gutter("r6")).isEqualTo("value running");
        window.press(window.frame().button(JButtonMatcher.withText("Stop")).target());
        window.settle();
        assertThat(window.gutter("r6")).isEqualTo("value stopped");
    }

    @Test
    void aRowThatWaitsSaysHowItIsRun() {
        window.select("r6");
        window.choose("Row", "Run only when asked, or automatically");
        window.settle();
        assertThat(window.gutter("r6")).isEqualTo("value waiting");
        window.choose("Run", "Run the row");
        window.settle();
        assertThat(window.gutter("r6")).isEqualTo("value fresh");
    }

    @Test
    void theArrowKeysReadAChartOffInWords() {
        FigureView chart = chart();
        window.run(chart::requestFocusInWindow);
        window.robot().pressAndReleaseKey(KeyEvent.VK_RIGHT);
        window.robot().waitForIdle();
        assertThat(chart.getAccessibleContext().getAccessibleDescription())
                .isEqualTo("Head angle 71.3°, Trail 65.1 mm, Wheelbase 971.0 mm, Toe room −23.0 mm");
    }

    @Test
    void plusLooksCloserAndEscapeReturns() {
        FigureView chart = chart();
        window.run(chart::requestFocusInWindow);
        window.robot().pressAndReleaseKey(KeyEvent.VK_ADD);
        window.robot().waitForIdle();
        assertThat(chart.view().x().to()).isCloseTo(73.5, org.assertj.core.data.Offset.offset(0.05));
        window.robot().pressAndReleaseKey(KeyEvent.VK_ESCAPE);
        window.robot().waitForIdle();
        assertThat(chart.view()).isEqualTo(rakeline.figure.paint.View.WHOLE);
    }

    @Test
    void f1ListsTheKeys() {
        window.frame().pressAndReleaseKey(KeyPressInfo.keyCode(KeyEvent.VK_F1));
        window.frame().dialog().requireVisible();
        assertThat(OpenWindow.all(window.frame().dialog().target())
                        .filter(javax.swing.JLabel.class::isInstance)
                        .map(label -> ((javax.swing.JLabel) label).getText()))
                .contains("Run from here", "Shift+F5");
        window.frame().dialog().close();
    }

    private FigureView chart() {
        return window.shown().stream()
                .filter(FigureView.class::isInstance)
                .map(FigureView.class::cast)
                .filter(view -> view.figure()
                        .filter(rakeline.figure.Chart.class::isInstance)
                        .isPresent())
                .findFirst()
                .orElseThrow();
    }

    private void type(String field, String text) {
        window.frame().textBox(field).focus().deleteText().enterText(text).pressAndReleaseKeys(KeyEvent.VK_ENTER);
    }

    private String text(String row) {
        return window.window().bench().model().page().row(row).map(Row::text).orElseThrow();
    }

    private double dial(String name) {
        return Optional.ofNullable(
                        window.window().bench().model().page().dials().get(name))
                .orElse(Double.NaN);
    }

    @Test
    void anEmptyPageShowsNoDials() {
        window.with(Worksheet.empty("Untitled"));
        assertThat(window.shown()).noneMatch(component -> "dial head".equals(component.getName()));
    }

    @Test
    void laidOutThePageComesToRest() {
        window.awaitRest();
        assertThat(Toolkit.getDefaultToolkit().getSystemEventQueue().peekEvent())
                .isNull();
    }
}
