package rakeline.shell;

import java.awt.GraphicsEnvironment;
import java.awt.Rectangle;
import javax.swing.JFrame;

/** Where on the screen a new window stands. */
final class Stage {
    private static final int WIDEST = 1680;
    private static final int TALLEST = 1020;

    private Stage() {}

    /** Shows the window in the middle of the screen, as large as is comfortable. */
    static void set(JFrame frame) {
        Rectangle room = GraphicsEnvironment.getLocalGraphicsEnvironment().getMaximumWindowBounds();
        frame.setSize(Math.min(WIDEST, room.width), Math.min(TALLEST, room.height));
        frame.setLocation(room.x + (room.width - frame.getWidth()) / 2, room.y + (room.height - frame.getHeight()) / 2);
        frame.setVisible(true);
    }
}
