package rakeline.shell.rack;

import java.util.Optional;
import java.util.function.UnaryOperator;
import rakeline.quantity.Refusal;

/** Changes of bikes, each on the rack, in what is to be written, and among the steps that can be undone. */
final class RackSteps {
    private final RackNow now;
    private final RackKeeper keeper;
    private RackHistory history = RackHistory.EMPTY;

    RackSteps(RackNow now, RackKeeper keeper) {
        this.now = now;
        this.keeper = keeper;
    }

    /**
     * Changes a bike.
     *
     * @param cell changes that carry the same words are one step, until {@link #pause}
     */
    void change(RackRow before, UnaryOperator<RackRow> edit, String cell) {
        RackRow after = edit.apply(before);
        if (!after.equals(before)) {
            history = history.and(before, after, cell);
            keeper.edited(before.id(), edit);
            now.put(before.id(), after);
        }
    }

    /** Ends the step that is open. */
    void pause() {
        history = history.pause();
    }

    /** What was done cannot be undone any more. */
    void forget() {
        history = RackHistory.EMPTY;
    }

    /** A bike has another id by now. */
    void moved(String oldId, RackRow row) {
        history = history.moved(oldId, row);
    }

    boolean canUndo() {
        return !history.before().isEmpty();
    }

    boolean canRedo() {
        return !history.after().isEmpty();
    }

    /** Takes the last step back; the bike as it stood, where it still is on the rack. */
    Optional<RackRow> undo() {
        return history.undo().flatMap(this::travel);
    }

    /** Takes the step that was undone last once more. */
    Optional<RackRow> redo() {
        return history.redo().flatMap(this::travel);
    }

    private Optional<RackRow> travel(RackHistory.Move move) {
        history = move.history();
        Optional<RackRow> row = now.model().row(move.step().to().id());
        row.ifPresent(here -> travel(here, move.step().to()));
        return row;
    }

    private void travel(RackRow row, RackRow to) {
        keeper.edited(row.id(), theirs -> {
            throw new Refusal("it cannot be undone on numbers of another program.");
        });
        now.put(
                row.id(),
                new RackRow(row.id(), row.path(), row.place(), to.name(), to.bike(), to.waiting(), row.trouble()));
    }
}
