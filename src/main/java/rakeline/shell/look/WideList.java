package rakeline.shell.look;

import java.awt.event.MouseEvent;
import javax.swing.JList;
import javax.swing.ListModel;

/** A list as wide as it is seen: it never scrolls sideways, and what is cut off is said where the pointer rests. */
public final class WideList<T> extends JList<T> {
    public WideList(ListModel<T> items) {
        super(items);
    }

    @Override
    public boolean getScrollableTracksViewportWidth() {
        return true;
    }

    @Override
    public String getToolTipText(MouseEvent event) {
        String own = super.getToolTipText(event);
        int place = locationToIndex(event.getPoint());
        return own != null || place < 0 ? own : String.valueOf(getModel().getElementAt(place));
    }
}
