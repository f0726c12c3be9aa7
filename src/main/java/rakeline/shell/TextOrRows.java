package rakeline.shell;

import java.awt.KeyboardFocusManager;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.text.JTextComponent;

/** What is done to the text that has the keys, and to rows where none has them. */
final class TextOrRows {
    private TextOrRows() {}

    static Runnable either(Consumer<JTextComponent> text, Runnable rows) {
        return () -> inUse().ifPresentOrElse(text, rows);
    }

    private static Optional<JTextComponent> inUse() {
        return Optional.ofNullable(
                        KeyboardFocusManager.getCurrentKeyboardFocusManager().getPermanentFocusOwner())
                .filter(JTextComponent.class::isInstance)
                .map(JTextComponent.class::cast);
    }
}
