package rakeline.shell.look;

import java.awt.BorderLayout;
import java.awt.Dimension;
import java.awt.Rectangle;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.Scrollable;

/** What a scroll pane shows: as wide as it is seen through, as tall as its content then wants. */
public final class Scrolled extends JPanel implements Scrollable {
    private final transient Look look;
    private final JComponent content;

    public Scrolled(Look look, JComponent content) {
        super(new BorderLayout());
        this.look = look;
        this.content = content;
        setOpaque(false);
        add(content, BorderLayout.CENTER);
    }

    @Override
    public Dimension getPreferredSize() {
        int width = getWidth() > 0 ? getWidth() : content.getPreferredSize().width;
        return new Dimension(width, Heights.of(content, width));
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
