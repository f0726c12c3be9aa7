package rakeline.shell;

import java.awt.Frame;
import java.awt.GraphicsConfiguration;
import java.awt.GraphicsEnvironment;
import java.awt.Rectangle;
import java.util.Arrays;
import javax.swing.JFrame;
import rakeline.desk.Bounds;

/** Where on the screens the window stands. */
final class Stage {
    private static final int WIDEST = 1680;
    private static final int TALLEST = 1020;

    private Stage() {}

    /** Shows the window where it stood last, as far as there is still a screen; the first time, large in the middle. */
    static void set(JFrame frame, Bounds last) {
        Bounds room = room();
        frame.setBounds(rectangle(last.equals(Bounds.first()) ? middle(room) : last.within(roomOf(last, room))));
        frame.setExtendedState(last.fills() ? Frame.MAXIMIZED_BOTH : Frame.NORMAL);
        frame.setVisible(true);
    }

    /** Where the window stands now; while it fills the screen, where it stood before. */
    static Bounds of(JFrame frame, Bounds before) {
        boolean fills = (frame.getExtendedState() & Frame.MAXIMIZED_BOTH) == Frame.MAXIMIZED_BOTH;
        Rectangle now = fills ? rectangle(before) : frame.getBounds();
        return new Bounds(now.x, now.y, now.width, now.height, fills);
    }

    private static Bounds room() {
        Rectangle room = GraphicsEnvironment.getLocalGraphicsEnvironment().getMaximumWindowBounds();
        return new Bounds(room.x, room.y, room.width, room.height, false);
    }

    /** The screen that holds the middle of a place, or the first one's room. */
    private static Bounds roomOf(Bounds place, Bounds first) {
        int x = place.x() + place.width() / 2;
        int y = place.y() + place.height() / 2;
        return Arrays.stream(GraphicsEnvironment.getLocalGraphicsEnvironment().getScreenDevices())
                .map(device -> device.getDefaultConfiguration())
                .map(GraphicsConfiguration::getBounds)
                .filter(screen -> screen.contains(x, y))
                .findFirst()
                .map(screen -> new Bounds(screen.x, screen.y, screen.width, screen.height, false))
                .orElse(first);
    }

    private static Bounds middle(Bounds room) {
        int width = Math.min(WIDEST, room.width());
        int height = Math.min(TALLEST, room.height());
        return new Bounds(
                room.x() + (room.width() - width) / 2, room.y() + (room.height() - height) / 2, width, height, false);
    }

    private static Rectangle rectangle(Bounds place) {
        return new Rectangle(place.x(), place.y(), place.width(), place.height());
    }
}
