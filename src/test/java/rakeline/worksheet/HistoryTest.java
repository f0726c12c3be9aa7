package rakeline.worksheet;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class HistoryTest {
    private static final History START = History.of(page("start"));

    @Test
    void aBurstOfTypingIsOneStep() {
        History typed = typed(typed(typed(START, "a"), "ab"), "abc");
        assertThat(typed.undo().now()).isEqualTo(page("start"));
    }

    @Test
    void aPauseBeginsAnotherStep() {
        assertThat(typed(typed(START, "a").pause(), "ab").undo().now()).isEqualTo(page("a"));
    }

    @Test
    void anotherKeyBeginsAnotherStep() {
        assertThat(typed(START, "a").edit("dial head", page("b")).undo().now()).isEqualTo(page("a"));
    }

    @Test
    void actionsWithoutAKeyNeverJoin() {
        assertThat(START.edit(page("a")).edit(page("b")).undo().now()).isEqualTo(page("a"));
    }

    @Test
    void typingAfterAnActionDoesNotJoinIt() {
        assertThat(typed(START.edit(page("a")), "b").undo().now()).isEqualTo(page("a"));
    }

    @Test
    void typingAfterAnUndoDoesNotJoinWhatStands() {
        History back = typed(typed(START, "a").pause(), "ab").undo();
        assertThat(typed(back, "ax").undo().now()).isEqualTo(page("a"));
    }

    @Test
    void typingAfterASaveBeginsAnotherStep() {
        assertThat(typed(typed(START, "a").saved(), "ab").undo().now()).isEqualTo(page("a"));
    }

    @Test
    void whatWasUndoneIsDoneAgain() {
        assertThat(typed(START, "a").undo().redo().now()).isEqualTo(page("a"));
    }

    @Test
    void anEditAfterAnUndoForgetsWhatWasUndone() {
        assertThat(START.edit(page("a")).undo().edit(page("b")).canRedo()).isFalse();
    }

    @Test
    void anEditThatChangesNothingIsNoStep() {
        assertThat(START.edit(page("start")).canUndo()).isFalse();
    }

    @Test
    void anEditThatChangesNothingKeepsWhatWasUndone() {
        History undone = START.edit(page("a")).undo();
        assertThat(undone.edit(page("start")).canRedo()).isTrue();
    }

    @Test
    void undoAtTheBeginningStays() {
        assertThat(START.undo().now()).isEqualTo(page("start"));
    }

    @Test
    void redoAtTheEndStays() {
        assertThat(START.redo().now()).isEqualTo(page("start"));
    }

    @Test
    void theOldestStepsAreForgotten() {
        History history = START;
        for (int i = 0; i < History.DEPTH + 5; i++) {
            history = history.edit(page("step " + i));
        }
        while (history.canUndo()) {
            history = history.undo();
        }
        assertThat(history.now()).isEqualTo(page("step 4"));
    }

    @Test
    void aPageJustReadIsSaved() {
        assertThat(START.isSaved()).isTrue();
    }

    @Test
    void anEditedPageIsNotSaved() {
        assertThat(typed(START, "a").isSaved()).isFalse();
    }

    @Test
    void undoingBackToTheSavedVersionIsSaved() {
        assertThat(typed(START, "a").saved().edit(page("b")).undo().isSaved()).isTrue();
    }

    @Test
    void undoingBehindTheSavedVersionIsNotSaved() {
        assertThat(typed(START, "a").saved().undo().isSaved()).isFalse();
    }

    @Test
    void typingBackToTheSavedVersionIsSaved() {
        assertThat(typed(typed(START, "a"), "start").isSaved()).isTrue();
    }

    @Test
    void aSaveOfAnEarlierVersionLeavesTheLaterEditUnsaved() {
        History typed = typed(START, "a");
        assertThat(typed(typed, "ab").saved(typed.now()).isSaved()).isFalse();
    }

    @Test
    void anotherViewIsNothingToSave() {
        assertThat(START.viewed(Worksheet.View.READ).isSaved()).isTrue();
    }

    @Test
    void undoLeavesThePageInItsView() {
        History history = START.edit(page("a")).viewed(Worksheet.View.READ).undo();
        assertThat(history.now()).isEqualTo(START.now().withView(Worksheet.View.READ));
    }

    private static History typed(History history, String title) {
        return history.edit("typing", page(title));
    }

    private static Worksheet page(String title) {
        return Worksheet.empty(title);
    }
}
