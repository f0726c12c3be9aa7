package rakeline.shell.figures;

import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.util.List;
import java.util.Optional;
import rakeline.figure.paint.Grip;

/** The handles of a figure by keys: H goes from one to the next, the arrow keys move it, Escape lets go. */
final class GripKeys {
    private final FigureView figure;
    private final GripHand hand;
    private Optional<Grip> taken = Optional.empty();

    GripKeys(FigureView figure, GripHand hand) {
        this.figure = figure;
        this.hand = hand;
        figure.addFocusListener(new FocusAdapter() {
            @Override
            public void focusLost(FocusEvent event) {
                letGo();
            }
        });
    }

    /** The handle that the keys move. */
    Optional<Grip> taken() {
        return taken;
    }

    /** Takes the next handle; after the last one none. */
    void next() {
        List<Grip> all = hand.movable();
        int now = taken.map(grip -> place(all, grip)).orElse(-1);
        letGo();
        taken = now + 1 < all.size() ? Optional.of(all.get(now + 1)) : Optional.empty();
        tell();
    }

    private static int place(List<Grip> all, Grip grip) {
        for (int i = 0; i < all.size(); i++) {
            if (all.get(i).isOf(grip)) {
                return i;
            }
        }
        return -1;
    }

    /** Ends what the keys did, as one step; false where they held nothing. */
    boolean letGo() {
        boolean held = taken.isPresent();
        if (held) {
            handles().ifPresent(Handles::rest);
            taken = Optional.empty();
            tell();
        }
        return held;
    }

    private Optional<Handles> handles() {
        return Handles.of(figure);
    }

    /** Moves what is held a step along an arrow, in px, y downward; false where nothing is held. */
    boolean move(int dx, int dy) {
        taken.ifPresent(grip -> handles()
                .ifPresent(handles -> handles.bound(grip).ifPresent(bound -> {
                    int along = grip.sense(dx, dy);
                    int steps = along == 0 ? dx - dy : along;
                    handles.move(grip, handles.along(grip, bound, steps));
                    tell();
                })));
        return taken.isPresent();
    }

    /** Label, value and unit, as they are read aloud. */
    private void tell() {
        String words = taken.flatMap(grip -> handles().flatMap(handles -> handles.bound(grip)))
                .map(bound -> "Handle of " + bound.label() + ": " + bound.shown() + "; arrow keys move it")
                .orElse("");
        figure.getAccessibleContext().setAccessibleDescription(words);
        figure.repaint();
    }
}
