package rakeline.shell.look;

import java.awt.Component;
import javax.swing.text.JTextComponent;

/** How tall things are once their width is known. */
public final class Heights {
    private static final int ENDLESS = 100_000;

    private Heights() {}

    /** Something whose height follows from its width. */
    public interface Flowing {
        /** In pixels, for a width in pixels. */
        int heightFor(int width);
    }

    /** The height that a component wants at a width, in pixels. */
    public static int of(Component component, int width) {
        if (!component.isVisible()) {
            return 0;
        }
        if (component instanceof Flowing flowing) {
            return flowing.heightFor(width);
        }
        boolean flows = component instanceof JTextComponent;
        if (flows && (component.getWidth() != width || component.getHeight() == 0)) {
            component.setSize(width, ENDLESS);
        }
        return component.getPreferredSize().height;
    }
}
