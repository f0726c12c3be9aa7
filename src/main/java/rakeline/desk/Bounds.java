package rakeline.desk;

/**
 * Where the window stands, in the screen's own units, x to the right and y down.
 *
 * @param fills true: it fills the screen, and the rest is where it returns to
 */
public record Bounds(int x, int y, int width, int height, boolean fills) {
    /** Of a window that never stood anywhere. */
    public static Bounds first() {
        return new Bounds(0, 0, 1366, 768, false);
    }

    /** The same within an area: no larger than it, and wholly inside. */
    public Bounds within(Bounds area) {
        int newWidth = Math.min(width, area.width);
        int newHeight = Math.min(height, area.height);
        return new Bounds(
                between(x, area.x, area.x + area.width - newWidth),
                between(y, area.y, area.y + area.height - newHeight),
                newWidth,
                newHeight,
                fills);
    }

    private static int between(int value, int least, int most) {
        return Math.max(least, Math.min(value, most));
    }
}
