package rakeline.shell.rack;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Set;
import org.junit.jupiter.api.Test;

class RackHistoryTest {
    private final RackHistory.Change change = new RackHistory.Change("a", BikeDraft.begun("A"), BikeDraft.begun("B"));
    private final RackHistory.Presence off = new RackHistory.Presence(Set.of("a", "b"), Set.of("a"), false);

    @Test
    void theLastStepIsUndoneFirst() {
        RackHistory history = RackHistory.EMPTY.and(change).and(off);
        assertThat(history.undo().orElseThrow().step()).isEqualTo(off.reversed());
    }

    @Test
    void whatIsUndoneCanBeDoneAgain() {
        RackHistory undone = RackHistory.EMPTY.and(change).undo().orElseThrow().history();
        assertThat(undone.redo().orElseThrow().step()).isEqualTo(change);
    }

    @Test
    void aStepAfterAnUndoForgetsWhatWasUndone() {
        RackHistory undone = RackHistory.EMPTY.and(change).undo().orElseThrow().history();
        assertThat(undone.and(off).redo()).isEmpty();
    }

    @Test
    void ofABikeThatIsGoneNothingIsUndone() {
        RackHistory history = RackHistory.EMPTY.and(change).and(off).without("a"::equals);
        assertThat(history.before()).containsExactly(new RackHistory.Presence(Set.of("b"), Set.of("a"), false));
    }
}
