package rakeline.shell;

import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import javax.swing.KeyStroke;

/** Keys in words. */
final class Keys {
    private Keys() {}

    /** As in {@code Ctrl+Shift+S}. */
    static String words(KeyStroke stroke) {
        String modifiers = InputEvent.getModifiersExText(stroke.getModifiers());
        String key = switch (stroke.getKeyCode()) {
            case KeyEvent.VK_PLUS, KeyEvent.VK_EQUALS -> "+";
            case KeyEvent.VK_MINUS -> "−";
            default -> KeyEvent.getKeyText(stroke.getKeyCode());
        };
        return modifiers.isEmpty() ? key : modifiers + "+" + key;
    }
}
