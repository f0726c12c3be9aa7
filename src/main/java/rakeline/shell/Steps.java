package rakeline.shell;

import java.util.function.BooleanSupplier;
import rakeline.shell.page.Bench;
import rakeline.shell.rack.RackStore;

/** Undo and redo where the person is: of numbers while the focus is on the rack, of the page elsewhere. */
final class Steps {
    private final Bench bench;
    private final RackStore rack;
    private final BooleanSupplier onRack;

    Steps(Bench bench, RackStore rack, BooleanSupplier onRack) {
        this.bench = bench;
        this.rack = rack;
        this.onRack = onRack;
    }

    private boolean isOfRack(boolean possible) {
        return onRack.getAsBoolean() && possible;
    }

    boolean canUndo() {
        return isOfRack(rack.canUndo()) || bench.model().history().canUndo();
    }

    boolean canRedo() {
        return isOfRack(rack.canRedo()) || bench.model().history().canRedo();
    }

    void undo() {
        if (isOfRack(rack.canUndo())) {
            rack.undo();
        } else {
            bench.undo();
        }
    }

    void redo() {
        if (isOfRack(rack.canRedo())) {
            rack.redo();
        } else {
            bench.redo();
        }
    }
}
