package rakeline.shell.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.assertj.swing.edt.GuiActionRunner;
import org.fife.ui.autocomplete.Completion;
import org.fife.ui.rsyntaxtextarea.RSyntaxTextArea;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import rakeline.engine.jshell.Sessions;
import rakeline.handling.Ride;
import rakeline.shell.OnAScreen;
import rakeline.study.Fixture;
import rakeline.study.Vocabulary;

/** What is offered while a snippet is typed. */
@Tag("window")
@ExtendWith(OnAScreen.class)
class WordHelpTest {
    @Test
    void aKeyIsCompletedAcrossItsDots() {
        assertThat(offered("xs.with(\"frame.headA")).containsExactly("frame.headAngleDeg");
    }

    @Test
    void aConstantIsCompleted() {
        assertThat(offered("track(WHEELB")).contains("WHEELBASE");
    }

    @Test
    void aWordOfThePreludeIsCompletedToItsBracket() {
        assertThat(offered("drawF")).contains("drawFoot(");
    }

    @Test
    void oneMoreDeclarationIsOffered() {
        assertThat(offered("track(\"stackO")).containsExactly(Fixture.KEY);
    }

    private static List<String> offered(String typed) {
        return GuiActionRunner.execute(() -> {
            RSyntaxTextArea editor = new RSyntaxTextArea(typed);
            editor.setCaretPosition(typed.length());
            Vocabulary vocabulary = Vocabulary.standard().and(Fixture.class, Ride::geometry);
            return new WordHelp.Words(new CodeHelp(vocabulary, Sessions::suggestions).words())
                    .getCompletions(editor).stream()
                            .map(Completion::getReplacementText)
                            .toList();
        });
    }
}
