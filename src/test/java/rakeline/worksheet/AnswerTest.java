package rakeline.worksheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class AnswerTest {
    private static final Worksheet PAGE = Worksheet.empty("Exercises")
            .withRows(List.of(
                    new Row.Note("q", "Which?"),
                    Row.Snippet.of("c", "check()").folded(true),
                    new Row.Note("a", "This one.").folded(true),
                    new Row.Note("r", "And then?"),
                    new Row.Note("b", "That one.").folded(true)));

    @Test
    void foldedRowsThatFollowOneAnotherAreOneAnswer() {
        assertThat(Answer.of(PAGE)).extracting(Answer::ids).containsExactly(List.of("c", "a"), List.of("b"));
    }

    @Test
    void aRowThatIsNotFoldedBelongsToNone() {
        assertThat(Answer.holding(PAGE, "r")).isEmpty();
        assertThat(Answer.holding(PAGE, "a").orElseThrow().beginsWith("c")).isTrue();
        assertThat(Answer.holding(PAGE, "a").orElseThrow().beginsWith("a")).isFalse();
    }
}
