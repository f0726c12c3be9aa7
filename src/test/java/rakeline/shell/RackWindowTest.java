package rakeline.shell;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Point;
import java.awt.Rectangle;
import java.awt.Toolkit;
import java.awt.datatransfer.StringSelection;
import java.awt.event.KeyEvent;
import java.awt.event.MouseEvent;
import java.awt.event.WindowEvent;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.swing.JComboBox;
import javax.swing.JTable;
import org.assertj.swing.core.MouseButton;
import org.assertj.swing.core.matcher.JButtonMatcher;
import org.assertj.swing.data.TableCell;
import org.assertj.swing.fixture.JTableFixture;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import rakeline.desk.Places;
import rakeline.figure.Drawing;
import rakeline.shell.figures.FigureView;
import rakeline.worksheet.Row;
import rakeline.worksheet.Worksheet;

/** A fitter's work on the rack, with real keys. */
@Tag("window")
@ExtendWith(OnAScreen.class)
class RackWindowTest {
    private static final String ROAD_XS = "demo-data/bikes/road-xs.bike.json";
    private static final String ROAD_S = "demo-data/bikes/road-s.bike.json";
    private static final int STACK = 0;
    private static final int WHEELBASE_CHARTED = 9;
    private static final int TRAIL = 11;

    @TempDir
    Path home;

    private OpenWindow window;
    private JTableFixture rack;

    @BeforeEach
    void openTheRack() {
        window = OpenWindow.sized(home, 1920, 1000)
                .with(Worksheet.empty("Two sizes")
                        .withRack(List.of(ROAD_XS, ROAD_S))
                        .withRows(List.of(Row.Snippet.of("r1", "Bike xs = bike(\"" + ROAD_XS + "\");"))));
        window.choose("Rack", "Rack");
        rack = window.frame().table("rack");
        window.await("the measures are there", () -> !text(0, TRAIL).isEmpty());
    }

    @AfterEach
    void closeIt() {
        window.close();
    }

    private String text(int row, int column) {
        JTable table = rack.target();
        return table.getRowCount() > row
                ? String.valueOf(table.prepareRenderer(table.getCellRenderer(row, column), row, column)
                        .getAccessibleContext()
                        .getAccessibleName())
                : "";
    }

    private void enter(int row, int column, String number) {
        rack.cell(TableCell.row(row).column(column)).click();
        window.robot().enterText(number);
    }

    private void key(int code) {
        window.robot().pressAndReleaseKeys(code);
    }

    private Path own(String name) {
        return Places.in(home).worksheets().resolve(name);
    }

    private List<String> paths() {
        return window.window().bench().model().page().rack();
    }

    @Test
    void measuresFollowWhileANumberIsTyped() {
        String before = text(0, TRAIL);
        enter(0, 2, "72.5");
        window.await("the trail has followed", () -> !text(0, TRAIL).equals(before));
        assertThat(rack.target().isEditing()).isTrue();
    }

    @Test
    void aBundledBikeIsCopiedAndThePageReadsTheCopy() {
        enter(0, STACK, "512");
        key(KeyEvent.VK_ENTER);
        window.await("the page reads the copy", () -> paths().contains("road-xs.bike.json"));
        assertThat(own("road-xs.bike.json")).content().contains("\"stackMm\": 512");
        assertThat(window.model().page().row("r1").orElseThrow().text()).contains("bike(\"road-xs.bike.json\")");
    }

    @Test
    void anUndoOnTheRackBringsTheNumberBackIntoTheFile() {
        enter(0, STACK, "512");
        key(KeyEvent.VK_ENTER);
        window.await("the page reads the copy", () -> paths().contains("road-xs.bike.json"));
        rack.cell(TableCell.row(0).column(STACK)).click();
        window.choose("Edit", "Undo");
        window.await(
                "the file has the number of before",
                () -> content("road-xs.bike.json").contains("\"stackMm\": 508"));
    }

    private String content(String name) {
        try {
            return Files.readString(own(name));
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    @Test
    void aNumberThatCannotStandKeepsItsCellOpenAndSaysWhatIsAccepted() {
        enter(0, STACK, "5120");
        key(KeyEvent.VK_ENTER);
        assertThat(rack.target().isEditing()).isTrue();
        window.frame().textBox("rack told").requireText("Stack is \"5120\"; accepted is a number from 200 to 800 mm.");
    }

    @Test
    void escapeTakesBackWhatWasTyped() {
        String before = text(0, STACK);
        enter(0, STACK, "512");
        key(KeyEvent.VK_ESCAPE);
        window.await("the number is that of before", () -> text(0, STACK).equals(before));
    }

    @Test
    void aChartedNumberThatDisagreesIsMarkedInWords() {
        enter(0, WHEELBASE_CHARTED, "983");
        key(KeyEvent.VK_ENTER);
        window.await("it is marked", () -> text(0, WHEELBASE_CHARTED).endsWith("12.2 mm over."));
    }

    @Test
    void twoBikesAreComparedAtTheSameContactPointsAndMatchedToStockParts() {
        rack.selectRows(0, 1);
        window.press(window.frame().button("rack Compare").target());
        window.await("they are compared", () -> figures().size() == 3);
        choose("rack contact", 2);
        window.await("the points of one are on both", () -> titles().anyMatch(title -> title.contains("Road XS")));
        choose("rack parts", 1);
        window.press(window.frame().button("rack Match").target());
        window.await("options are offered", () -> titles().anyMatch(title -> title.contains("combinations")));
        window.press(window.frame().button("rack take").target());
        window.await("the option is on the rack", () -> paths().size() == 3);
    }

    @Test
    void aDragOnAMeasuredBikeWritesNothingUntilTheHandLetsGoAndThenACopy() {
        FigureView drawing = drawn();
        Point at = placeThatSays(drawing, "Drag to move Stack of Road XS");
        window.robot().moveMouse(drawing, at);
        window.robot().pressMouse(MouseButton.LEFT_BUTTON);
        window.robot().moveMouse(drawing, new Point(at.x, at.y - 15));
        window.robot().moveMouse(drawing, new Point(at.x, at.y - 30));
        assertThat(paths()).containsExactly(ROAD_XS, ROAD_S);
        window.robot().releaseMouseButtons();
        window.await("a copy is on the rack", () -> paths().size() == 3);
        assertThat(paths().get(2)).matches("Road XS, stack \\d+ mm\\.bike\\.json");
        window.choose("Edit", "Undo");
        window.await("it is off again", () -> paths().size() == 2);
    }

    @Test
    void aHandleIsMovedByKeysAsWell() {
        FigureView drawing = drawn();
        window.robot().focusAndWaitForFocusGain(drawing);
        key(KeyEvent.VK_H);
        String before = drawing.getAccessibleContext().getAccessibleDescription();
        assertThat(before).startsWith("Handle of ").contains(" of Road XS: ");
        window.robot().pressAndReleaseKeys(KeyEvent.VK_UP, KeyEvent.VK_RIGHT, KeyEvent.VK_RIGHT);
        window.await(
                "it has moved",
                () -> !drawing.getAccessibleContext().getAccessibleDescription().equals(before));
        key(KeyEvent.VK_ESCAPE);
        window.await("a copy is on the rack", () -> paths().size() == 3);
    }

    private FigureView drawn() {
        rack.selectRows(0, 1);
        window.press(window.frame().button("rack Compare").target());
        window.await("they are compared", () -> figures().size() == 3);
        return figures().stream()
                .filter(view -> view.figure().filter(Drawing.class::isInstance).isPresent())
                .findFirst()
                .orElseThrow();
    }

    /** The first place of a figure whose words are these, brought into sight. */
    private Point placeThatSays(FigureView figure, String words) {
        Point place = IntStream.range(0, figure.getWidth() * figure.getHeight() / 9)
                .mapToObj(i -> new Point(3 * i % figure.getWidth(), 3 * (3 * i / figure.getWidth())))
                .filter(at -> words.equals(figure.getToolTipText(
                        new MouseEvent(figure, MouseEvent.MOUSE_MOVED, 0, 0, at.x, at.y, 0, false))))
                .findFirst()
                .orElseThrow();
        window.run(() -> figure.scrollRectToVisible(new Rectangle(place.x - 60, place.y - 60, 120, 120)));
        return place;
    }

    @Test
    void onesOwnRiderIsOfferedWhenTheWindowIsLookedAtAgain() throws IOException {
        Path folder = Files.createDirectories(Places.in(home).worksheets());
        Files.writeString(folder.resolve("mine.rider.json"), """
                {"format": "rakeline/rider", "version": 1, "name": "My customer", "statureMm": 1650, "inseamMm": 770, "massKg": 60}
                """);
        Files.writeString(folder.resolve("broken.rider.json"), "{");
        window.run(() -> Stream.of(window.window().frame().getWindowFocusListeners())
                .forEach(one -> one.windowGainedFocus(
                        new WindowEvent(window.window().frame(), WindowEvent.WINDOW_GAINED_FOCUS))));
        JComboBox<?> box = window.frame().comboBox("rack rider").target();
        window.await(
                "the rider is offered",
                () -> IntStream.range(0, box.getItemCount())
                        .anyMatch(i -> "My customer".equals(String.valueOf(box.getItemAt(i)))));
    }

    /** With the keys, as someone does who does not look for the mouse. */
    private void choose(String name, int place) {
        JComboBox<?> box = window.frame().comboBox(name).target();
        window.await("there is something to choose", () -> box.getItemCount() > place);
        window.run(box::requestFocusInWindow);
        window.await("it has the keys", box::isFocusOwner);
        for (int i = 0; i < place; i++) {
            key(KeyEvent.VK_DOWN);
        }
        window.await("it is chosen", () -> box.getSelectedIndex() == place);
    }

    private List<FigureView> figures() {
        return window.shown().stream()
                .filter(FigureView.class::isInstance)
                .map(FigureView.class::cast)
                .toList();
    }

    private Stream<String> titles() {
        return figures().stream().map(view -> view.getAccessibleContext().getAccessibleName());
    }

    @Test
    void aChartIsPastedFromASpreadsheet() {
        copy("""
                Size\tStack (cm)\tReach (cm)\tHead angle\tSeat angle\tChainstay (cm)\tBB drop (cm)\tFork offset (mm)
                S\t53,5\t38\t72\t74\t41\t7\t45
                M\t55,5\t38,7\t72,5\t73,5\t41\t7\t45
                """);
        rack.cell(TableCell.row(0).column(0)).click();
        window.run(() -> javax.swing.SwingUtilities.invokeLater(() -> rack.target()
                .getActionMap()
                .get("paste")
                .actionPerformed(new java.awt.event.ActionEvent(rack.target(), 0, "paste"))));
        window.await(
                "the preview asks for the wheels",
                () -> window.robot()
                                .finder()
                                .findAll(component ->
                                        "chart Both wheels, bead seat, mm, for every size".equals(component.getName()))
                                .size()
                        == 1);
        window.write(window.frame().dialog().textBox("chart Both wheels, bead seat, mm, for every size"), "622");
        window.write(window.frame().dialog().textBox("chart Both wheels, tyre, mm, for every size"), "28");
        window.press(window.frame()
                .dialog()
                .button(JButtonMatcher.withText("Put them on the rack"))
                .target());
        window.await("both sizes are on the rack", () -> paths().size() == 4);
    }

    @Test
    void whatIsPastedFromTheMenuWhileTheRackHasTheKeysGoesIntoItsCells() {
        copy("512");
        rack.cell(TableCell.row(0).column(STACK)).click();
        window.choose("Edit", "Paste");
        window.await("it stands in the cell", () -> text(0, STACK).contains("512"));
        assertThat(window.model().page().rows()).hasSize(1);
    }

    private static void copy(String text) {
        Toolkit.getDefaultToolkit().getSystemClipboard().setContents(new StringSelection(text), null);
    }

    @Test
    void whatIsTypedAfterABikeIsBegunIsThatBikesAndIsKeptUntilItIsWhole() {
        window.choose("Rack", "New bike");
        window.await(
                "the new bike is at hand",
                () -> rack.target().getSelectedRow() == 2 && rack.target().isFocusOwner());
        window.robot().enterText("560");
        key(KeyEvent.VK_ENTER);
        window.await(
                "it is kept",
                () -> Files.exists(Places.in(home).state().resolve("rack.json")) && kept().contains("560"));
    }

    private String kept() {
        try {
            return Files.readString(Places.in(home).state().resolve("rack.json"));
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    @Test
    void theKeysAreBackInTheRackAfterAnotherTheme() {
        rack.cell(TableCell.row(0).column(STACK)).click();
        window.choose("View", "Dark");
        window.await("the new table has the keys", () -> {
            JTable now = window.frame().table("rack").target();
            return now != rack.target() && now.isFocusOwner();
        });
        assertThat(window.window().frame().getMostRecentFocusOwner()).isInstanceOf(JTable.class);
    }
}
