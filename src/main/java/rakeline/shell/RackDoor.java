package rakeline.shell;

import java.util.function.Consumer;
import java.util.function.Supplier;
import rakeline.desk.RackView;
import rakeline.shell.page.Background;
import rakeline.shell.page.Bench;
import rakeline.shell.rack.RackHand;
import rakeline.shell.rack.RackStore;

/** Opens the rack and closes it, and remembers which. */
final class RackDoor {
    private final Bench bench;
    private final RackStore rack;
    private final Remembered<RackView> view;
    private final Supplier<Face> face;

    RackDoor(Bench bench, RackStore rack, Remembered<RackView> view, Supplier<Face> face) {
        this.bench = bench;
        this.rack = rack;
        this.view = view;
        this.face = face;
    }

    /** Leaves it as it was left last, once that is known. */
    void recall(Background background) {
        background.run(view::now, this::recalled, bench::notice);
    }

    private void recalled(RackView was) {
        rack.recall();
        face.get().openRack(view.now().isOpen());
    }

    /** Opens the rack and goes to it, or closes it. */
    void turn() {
        boolean open = !face.get().isRackOpen();
        face.get().openRack(open);
        view.change(before -> before.opened(open), bench::notice);
        if (open) {
            face.get().rack().enter();
        } else {
            face.get().ledger().requestFocusInWindow();
        }
    }

    /** Does something on the rack, which is opened for it. */
    void on(Consumer<RackHand> work) {
        if (!face.get().isRackOpen()) {
            turn();
        }
        work.accept(face.get().rack().hand());
    }
}
