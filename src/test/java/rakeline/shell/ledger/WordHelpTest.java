package rakeline.shell.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.assertj.swing.edt.GuiActionRunner;
import org.fife.ui.autocomplete.Completion;
import org.fife.ui.rsyntaxtextarea.RSyntaxTextArea;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import rakeline.catalogue.Roots;
import rakeline.engine.jshell.Sessions;
import rakeline.shell.OnAScreen;
import rakeline.study.Vocabulary;
import rakeline.worksheet.Row;
import rakeline.worksheet.Worksheet;

/** What is offered while a snippet is typed. */
@Tag("window")
@ExtendWith(OnAScreen.class)
class WordHelpTest {
    private static CodeHelp help;

    @TempDir
    private static Path folder;

    @BeforeAll
    static void open() {
        help = new CodeHelp(
                Vocabulary.standard(),
                Sessions::suggestions,
                page -> new Roots(page.stream().toList()));
    }

    @AfterAll
    static void close() {
        help.close();
    }

    @Test
    void aKeyIsCompletedAcrossItsDots() {
        assertThat(offered("Bike xs = bike(\"a\"); xs.with(\"frame.headA")).containsExactly("frame.headAngleDeg");
    }

    @Test
    void whatCanBeHeldIsAMeasure() {
        assertThat(offered("Bike xs = bike(\"a\"); sweep(xs).hold(\""))
                .contains("trailMm")
                .doesNotContain("fork.offsetMm");
    }

    @Test
    void insideQuotesOfABikeItsFilesAreOffered() throws IOException {
        Files.writeString(folder.resolve("mine.bike.json"), "{}");
        assertThat(offered("bike(\""))
                .startsWith("mine.bike.json")
                .contains("demo-data/bikes/road-xs.bike.json")
                .doesNotContain("demo-data/riders/rider-156.rider.json");
        assertThat(offered("bike(\"demo-data/bikes/road-x"))
                .containsExactlyInAnyOrder(
                        "demo-data/bikes/road-xl.bike.json",
                        "demo-data/bikes/road-xs.bike.json",
                        "demo-data/bikes/road-xxs.bike.json");
    }

    @Test
    void whereTheHandsAreIsOneOfThreeWords() {
        assertThat(offered("Bike xs = bike(\"a\"); sweep(xs).hands(\"")).containsExactly("tops", "hoods", "drops");
    }

    @Test
    void aConstantIsCompleted() {
        assertThat(offered("Bike xs = bike(\"a\"); sweep(xs).track(WHEELB")).containsExactly("WHEELBASE");
    }

    @Test
    void aWordOfThePreludeIsCompletedToItsBracket() {
        assertThat(offered("drawF")).containsExactly("drawFoot(");
    }

    @Test
    void whatIsOfferedHoldsWhileAWordOfItIsTypedOn() {
        assertThat(typedOn("Bike xs = bike(\"a\"); xs.with(\"frame.", "headA")).containsExactly("frame.headAngleDeg");
        assertThat(typedOn("Bike xs = bike(\"a\"); xs.with(\"frame.", "headA\", "))
                .isEmpty();
    }

    private static List<String> offered(String typed) {
        return typedOn(typed, "");
    }

    private static List<String> typedOn(String typed, String more) {
        Worksheet page = Worksheet.empty("").insert(0, Row.Snippet.of("r1", typed));
        CodeHelp.Offered offered = help.offered(page, Optional.of(folder), "r1", typed.length());
        return GuiActionRunner.execute(() -> {
            WordHelp.Words words = new WordHelp.Words();
            words.take(typed, offered);
            RSyntaxTextArea editor = new RSyntaxTextArea(typed + more);
            editor.setCaretPosition(editor.getText().length());
            return words.getCompletions(editor).stream()
                    .map(Completion::getReplacementText)
                    .toList();
        });
    }
}
