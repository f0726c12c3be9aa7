package rakeline.shell;

import java.awt.Dimension;
import java.awt.Rectangle;
import javax.swing.Scrollable;
import rakeline.shell.look.Look;
import rakeline.shell.look.Pile;

/** The drawings under one another, as wide as what they are seen through. */
final class SidePile extends Pile implements Scrollable {
    private final transient Look look;

    SidePile(Look look) {
        super(look.space(2));
        this.look = look;
        setBorder(look.room(4, 4, 4, 4));
    }

    @Override
    public Dimension getPreferredScrollableViewportSize() {
        return getPreferredSize();
    }

    @Override
    public int getScrollableUnitIncrement(Rectangle visible, int orientation, int direction) {
        return look.space(8);
    }

    @Override
    public int getScrollableBlockIncrement(Rectangle visible, int orientation, int direction) {
        return visible.height;
    }

    @Override
    public boolean getScrollableTracksViewportWidth() {
        return true;
    }

    @Override
    public boolean getScrollableTracksViewportHeight() {
        return false;
    }
}
