package rakeline.shell.look;

import java.awt.Component;
import java.awt.Dimension;
import java.awt.Insets;
import java.util.Arrays;
import java.util.List;
import javax.swing.JPanel;

/** Things under one another, each as wide as the pile and as tall as it wants. */
public class Pile extends JPanel implements Heights.Flowing {
    private final int gap;

    /**
     * @param gap between two things, in pixels
     */
    public Pile(int gap) {
        super(null);
        this.gap = gap;
        setOpaque(false);
    }

    @Override
    public int heightFor(int width) {
        List<Component> shown = shown();
        Insets room = getInsets();
        int inner = width - room.left - room.right;
        int gaps = gap * Math.max(0, shown.size() - 1);
        return room.top
                + room.bottom
                + gaps
                + shown.stream()
                        .mapToInt(component -> Heights.of(component, inner))
                        .sum();
    }

    @Override
    public void doLayout() {
        Insets room = getInsets();
        int width = getWidth() - room.left - room.right;
        int y = room.top;
        for (Component component : shown()) {
            int height = Heights.of(component, width);
            component.setBounds(room.left, y, width, height);
            y += height + gap;
        }
    }

    @Override
    public Dimension getPreferredSize() {
        int widest =
                shown().stream().mapToInt(c -> c.getPreferredSize().width).max().orElse(0);
        return new Dimension(widest, heightFor(getWidth() > 0 ? getWidth() : widest));
    }

    private List<Component> shown() {
        return Arrays.stream(getComponents())
                .filter(component -> component.isVisible() && !isApart(component))
                .toList();
    }

    /** Whether it has a place of its own, apart from the others. */
    protected boolean isApart(Component component) {
        return false;
    }
}
