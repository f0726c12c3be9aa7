package rakeline.shell;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.KeyboardFocusManager;
import java.awt.Rectangle;
import java.awt.event.KeyEvent;
import java.nio.file.Path;
import javax.swing.JComboBox;
import javax.swing.JDialog;
import javax.swing.JList;
import javax.swing.JScrollPane;
import org.assertj.swing.core.GenericTypeMatcher;
import org.assertj.swing.finder.WindowFinder;
import org.assertj.swing.fixture.DialogFixture;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import rakeline.shell.figures.FigureView;
import rakeline.shell.look.Fit;
import rakeline.shell.page.Origin;

/** The window without a pointer. */
@Tag("window")
@ExtendWith(OnAScreen.class)
class KeyboardTest {
    @TempDir
    Path home;

    private OpenWindow window;

    @BeforeEach
    void open() {
        window = OpenWindow.sized(home, 1024, 700).with(Samples.slackHeadAngles());
    }

    @AfterEach
    void close() {
        window.close();
    }

    @Test
    void aKeyGoesToTheDials() {
        window.choose("View", "Go to the dials");
        awaitKeys(JComboBox.class);
        window.robot().pressAndReleaseKey(KeyEvent.VK_DOWN);
        window.await(
                "another bike is picked",
                () -> !window.window().bench().model().page().picks().isEmpty());
    }

    @Test
    void theShelfTakesTheKeysAndStepsOverItsHeadings() {
        window.choose("View", "Shelf");
        awaitKeys(JList.class);
        JList<?> shelf = (JList<?>) owner();
        assertThat(shelf.getSelectedValue()).isInstanceOf(Shelf.Item.Bundled.class);
        for (int i = 0; i < 3; i++) {
            window.robot().pressAndReleaseKey(KeyEvent.VK_DOWN);
            window.robot().waitForIdle();
            assertThat(shelf.getSelectedValue()).isInstanceOf(Shelf.Item.Bundled.class);
        }
    }

    @Test
    void theRackTakesTheKeysWhereItIsFilledWhileItIsEmpty() {
        window.choose("Rack", "Rack");
        window.await(
                "the key that brings bikes has the keys",
                () -> owner() != null && "rack bikes".equals(owner().getName()));
    }

    @Test
    void thePageTakesTheKeysBackWhenTheShelfCloses() {
        window.choose("View", "Shelf");
        awaitKeys(JList.class);
        window.choose("View", "Shelf");
        awaitRow("n1");
    }

    @Test
    void aRowThatMovesKeepsTheKeys() {
        window.select("r3");
        window.run(() -> window.ledger().leaveText());
        awaitRow("r3");
        window.choose("Row", "Move the row down");
        window.robot().waitForIdle();
        assertThat(owner().getName()).isEqualTo("row r3");
    }

    @Test
    void whereARowIsDeletedTheNextOneTakesTheKeys() {
        window.select("r3");
        window.run(() -> window.ledger().leaveText());
        awaitRow("r3");
        window.choose("Row", "Delete the row");
        awaitRow("r4");
    }

    @Test
    void undoingANewRowLeavesTheOneBesideItSelected() {
        window.select("r8");
        window.choose("Row", "Add a snippet below");
        window.choose("Edit", "Undo");
        assertThat(window.model().selected()).contains("r8");
    }

    @Test
    void undoingAMoveKeepsTheRowsSelected() {
        window.select("r3");
        window.run(() -> window.window().bench().extend("r4"));
        window.choose("Row", "Move the row down");
        window.choose("Edit", "Undo");
        assertThat(window.model().selection()).containsExactly("r3", "r4");
    }

    @Test
    void theDrawingTakesTheKeys() {
        window.choose("View", "Drawing");
        awaitKeys(FigureView.class);
    }

    @Test
    void theListOfKeysScrollsByKeys() {
        window.choose("Help", "Keys");
        DialogFixture keys = dialog("Keys");
        JScrollPane seen = OpenWindow.all(keys.target())
                .filter(JScrollPane.class::isInstance)
                .map(JScrollPane.class::cast)
                .findFirst()
                .orElseThrow();
        window.await("it has the keys", () -> keys.target().getFocusOwner() != null);
        window.press(KeyEvent.VK_PAGE_DOWN);
        window.await("it has scrolled", () -> seen.getViewport().getViewPosition().y > 0);
        keys.close();
    }

    @Test
    void whatOpensOverTheWindowStaysOnTheScreen() {
        JDialog[] dialog = new JDialog[1];
        window.run(() -> {
            dialog[0] = new JDialog(window.window().frame());
            Fit.over(window.window().frame(), dialog[0], 10_000, 10_000);
        });
        Rectangle screen = window.window().frame().getGraphicsConfiguration().getBounds();
        assertThat(screen.contains(dialog[0].getBounds())).isTrue();
        window.run(dialog[0]::dispose);
    }

    @Test
    void aPageThatWasLeftAloneAsksAgainWhenItIsToRun() {
        window.run(() -> window.window().bench().open(Samples.slackHeadAngles(), new Origin.New(), false));
        window.run(() -> window.window().bench().leaveAlone());
        assertThat(window.shown()).noneMatch(part -> "run it".equals(part.getName()));
        window.choose("Run", "Run all");
        window.frame().button("run it").requireVisible();
        assertThat(window.sessions()).isEqualTo(1);
    }

    private void awaitKeys(Class<? extends Component> kind) {
        window.await("a " + kind.getSimpleName() + " has the keys", () -> kind.isInstance(owner()));
    }

    private void awaitRow(String id) {
        window.await("row " + id + " has the keys", () -> owner() != null && ("row " + id).equals(owner().getName()));
    }

    private static Component owner() {
        return KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
    }

    private DialogFixture dialog(String title) {
        return WindowFinder.findDialog(new GenericTypeMatcher<>(JDialog.class) {
                    @Override
                    protected boolean isMatching(JDialog dialog) {
                        return title.equals(dialog.getTitle()) && dialog.isShowing();
                    }
                })
                .using(window.robot());
    }
}
