package rakeline.shell.look;

import java.awt.Component;
import java.awt.Dimension;
import java.awt.GraphicsConfiguration;
import java.awt.Insets;
import java.awt.Rectangle;
import java.awt.Window;

/** Keeps what opens over the window within the screen. */
public final class Fit {
    /** What a window's frame and title take, in pixels. */
    private static final int FRAME = 40;

    private Fit() {}

    /** Makes a window so large, or as large as the screen has room for, and puts it over another. */
    public static void over(Component over, Window window, int width, int height) {
        Dimension room = room(over);
        window.setSize(Math.min(width, room.width), Math.min(height, room.height));
        window.setLocationRelativeTo(over);
    }

    private static Dimension room(Component over) {
        GraphicsConfiguration screen = over.getGraphicsConfiguration();
        Rectangle bounds = screen.getBounds();
        Insets taken = over.getToolkit().getScreenInsets(screen);
        return new Dimension(
                bounds.width - taken.left - taken.right - FRAME, bounds.height - taken.top - taken.bottom - FRAME);
    }
}
