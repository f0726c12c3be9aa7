package rakeline.shell.rack;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class RackHistoryTest {
    private final RackRow first = RackRow.begun("new 1", "A");
    private final RackRow second = RackRow.begun("new 1", "B");
    private final RackRow third = RackRow.begun("new 1", "C");

    @Test
    void whatIsTypedInOneCellIsOneStep() {
        RackHistory history = RackHistory.EMPTY.and(first, second, "cell").and(second, third, "cell");
        assertThat(history.undo().orElseThrow().step().to()).isEqualTo(first);
    }

    @Test
    void aPauseEndsTheStep() {
        RackHistory history =
                RackHistory.EMPTY.and(first, second, "cell").pause().and(second, third, "cell");
        assertThat(history.undo().orElseThrow().step().to()).isEqualTo(second);
    }

    @Test
    void anotherCellIsAnotherStep() {
        RackHistory history = RackHistory.EMPTY.and(first, second, "one").and(second, third, "other");
        assertThat(history.before()).hasSize(2);
    }

    @Test
    void whatIsUndoneCanBeDoneAgain() {
        RackHistory undone = RackHistory.EMPTY
                .and(first, second, "cell")
                .undo()
                .orElseThrow()
                .history();
        assertThat(undone.redo().orElseThrow().step().to()).isEqualTo(second);
    }

    @Test
    void anEditAfterAnUndoForgetsWhatWasUndone() {
        RackHistory undone = RackHistory.EMPTY
                .and(first, second, "cell")
                .undo()
                .orElseThrow()
                .history();
        assertThat(undone.and(first, third, "cell").redo()).isEmpty();
    }

    @Test
    void typingBackToTheStartIsNoStep() {
        RackHistory history = RackHistory.EMPTY.and(first, second, "cell").and(second, first, "cell");
        assertThat(history.undo()).isEmpty();
    }

    @Test
    void aNumberThatIsStillMovedWhileItsBikeGetsAFileIsOneStep() {
        RackRow placed =
                new RackRow("a.bike.json", "a.bike.json", second.place(), "B", second.bike(), second.waiting(), "");
        RackRow further = placed.named("C");
        RackHistory history = RackHistory.EMPTY
                .and(first, second, "new 1 frame.stackMm")
                .moved("new 1", placed)
                .and(placed, further, "a.bike.json frame.stackMm");
        assertThat(history.before()).hasSize(1);
    }

    @Test
    void theStepsOfABikeFollowItToItsFile() {
        RackRow placed = new RackRow(
                "a.bike.json",
                "a.bike.json",
                java.util.Optional.empty(),
                "B",
                java.util.Optional.empty(),
                java.util.Map.of(),
                "");
        RackHistory moved = RackHistory.EMPTY.and(first, second, "cell").moved("new 1", placed);
        assertThat(moved.undo().orElseThrow().step().to().id()).isEqualTo("a.bike.json");
    }
}
