package rakeline.shell;

import java.awt.GraphicsEnvironment;
import java.awt.Toolkit;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import javax.swing.KeyStroke;

/** Keys, as they are written here and as people read them. */
final class Keys {
    private Keys() {}

    /** The stroke that is written so, with the platform's own shortcut key for {@code ctrl}. */
    static KeyStroke stroke(String written) {
        int shortcut = GraphicsEnvironment.isHeadless()
                ? InputEvent.CTRL_DOWN_MASK
                : Toolkit.getDefaultToolkit().getMenuShortcutKeyMaskEx();
        return stroke(written, shortcut);
    }

    /** The stroke that is written so, with a mask in place of that of ctrl. */
    static KeyStroke stroke(String written, int shortcut) {
        KeyStroke stroke = KeyStroke.getKeyStroke(written);
        int held = stroke.getModifiers() & (InputEvent.SHIFT_DOWN_MASK | InputEvent.ALT_DOWN_MASK);
        boolean ctrl = (stroke.getModifiers() & InputEvent.CTRL_DOWN_MASK) != 0;
        return KeyStroke.getKeyStroke(stroke.getKeyCode(), held | (ctrl ? shortcut : 0));
    }

    /** As in {@code Ctrl+Shift+S}; a sign as it stands on its key. */
    static String words(KeyStroke stroke) {
        String modifiers = InputEvent.getModifiersExText(stroke.getModifiers());
        String key = switch (stroke.getKeyCode()) {
            case KeyEvent.VK_PLUS -> "+";
            case KeyEvent.VK_EQUALS -> "=";
            case KeyEvent.VK_MINUS -> "−";
            case KeyEvent.VK_COMMA -> ",";
            case KeyEvent.VK_SLASH -> "/";
            default -> KeyEvent.getKeyText(stroke.getKeyCode());
        };
        return modifiers.isEmpty() ? key : modifiers + "+" + key;
    }
}
