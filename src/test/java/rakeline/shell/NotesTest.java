package rakeline.shell;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.event.KeyEvent;
import java.nio.file.Path;
import java.util.List;
import javax.swing.text.BadLocationException;
import javax.swing.text.Document;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import rakeline.shell.figures.FigureView;
import rakeline.shell.ledger.NotePane;
import rakeline.worksheet.Row;
import rakeline.worksheet.Worksheet;

/** Notes in the window: numbers that the run fills in, and worked answers that wait to be opened. */
@Tag("window")
@ExtendWith(OnAScreen.class)
class NotesTest {
    private static final String HEAD = "double head = dial(\"Head angle\", \"°\", 69, 74, 0.1, 71.3);";

    @TempDir
    Path home;

    private OpenWindow window;

    @BeforeEach
    void openAWindow() {
        window = OpenWindow.sized(home, 1366, 768)
                .with(Worksheet.empty("Exercise")
                        .withRows(List.of(
                                Row.Snippet.of("r1", HEAD),
                                new Row.Note("n1", "The head angle is {{head|1}}°."),
                                new Row.Note("n2", "Worked answer: a degree slacker.", true),
                                Row.Snippet.of("r2", "sweep(bike).chart()").folded(true))));
    }

    @AfterEach
    void closeIt() {
        window.close();
    }

    private List<String> notes() {
        return window.shown().stream()
                .filter(NotePane.class::isInstance)
                .map(pane -> text(((NotePane) pane).getDocument()))
                .toList();
    }

    private List<String> folds() {
        return window.shown().stream()
                .filter(line -> "fold".equals(line.getName()))
                .map(line -> line.getAccessibleContext().getAccessibleName())
                .toList();
    }

    private static String text(Document document) {
        try {
            return document.getText(0, document.getLength()).strip();
        } catch (BadLocationException e) {
            throw new AssertionError(e);
        }
    }

    @Test
    void aNumberInANoteFollowsTheDial() {
        window.await("it is filled", () -> notes().contains("The head angle is 71.3°."));
        window.run(() -> window.window().bench().dial("head", 70, "Head angle 70"));
        window.await("it follows", () -> notes().contains("The head angle is 70.0°."));
    }

    @Test
    void aFoldedNoteSaysNothingUntilItIsOpened() {
        assertThat(notes()).noneMatch(note -> note.contains("Worked answer"));
        assertThat(folds()).containsOnly("Answer, closed");
        window.select("n2");
        window.choose("Row", "Leave the row's text");
        window.robot().pressAndReleaseKey(KeyEvent.VK_SPACE);
        window.await("it is open", () -> notes().contains("Worked answer: a degree slacker."));
        assertThat(folds()).containsOnly("Answer, open");
    }

    @Test
    void aFoldedFigureIsNotThereForAReaderUntilItsAnswerIsOpened() {
        window.choose("View", "Read");
        window.await("one line stands for the answer", () -> folds().equals(List.of("Answer, closed")));
        assertThat(figures()).isZero();
        window.run(() -> window.window().bench().turnAnswer("n2"));
        window.await("its figure is there", () -> figures() == 1);
        assertThat(folds()).containsExactly("Answer, open");
    }

    private long figures() {
        return OpenWindow.all(window.ledger())
                .filter(FigureView.class::isInstance)
                .filter(Component::isShowing)
                .count();
    }

    @Test
    void aNoteIsFoldedFromTheMenu() {
        window.select("n1");
        window.choose("Row", "Hide as an answer, or unhide");
        window.await("it is folded", () -> notes().stream().noneMatch(note -> note.startsWith("The head angle is")));
    }
}
