package rakeline.shell;

import java.awt.event.ActionEvent;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import javax.swing.AbstractAction;
import javax.swing.Action;
import javax.swing.KeyStroke;

/**
 * Something that a person can do, from a menu and by a key.
 *
 * @param menu the menu that it stands in
 * @param words as in the menu and in the list of keys
 * @param key none where only the menu does it
 * @param possible whether it can be done now
 */
record Deed(String menu, String words, Optional<KeyStroke> key, BooleanSupplier possible, Runnable work) {
    /**
     * @param key as in {@code ctrl shift S}; where the platform has another key for shortcuts, that one stands for ctrl
     */
    static Deed of(String menu, String words, String key, Runnable work) {
        return new Deed(menu, words, Optional.of(Keys.stroke(key)), () -> true, work);
    }

    /** The same, to be done only at times. */
    Deed when(BooleanSupplier when) {
        return new Deed(menu, words, key, when, work);
    }

    AbstractAction action() {
        AbstractAction action = new AbstractAction(words) {
            @Override
            public void actionPerformed(ActionEvent event) {
                if (possible.getAsBoolean()) {
                    work.run();
                }
            }
        };
        key.ifPresent(stroke -> action.putValue(Action.ACCELERATOR_KEY, stroke));
        return action;
    }
}
