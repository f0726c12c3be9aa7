package rakeline.shell.rack;

import java.awt.Component;
import java.awt.Dimension;
import java.util.List;
import javax.swing.JComponent;
import javax.swing.JPanel;
import rakeline.shell.look.Heights;
import rakeline.shell.look.Look;

/** What was found: the first thing on the left, the others beside it where there is room, else all under one another. */
final class Shown extends JPanel implements Heights.Flowing {
    private static final int WIDE = 1000;
    private static final double LEFT = 0.56;

    private final transient Look look;

    Shown(Look look) {
        super(null);
        this.look = look;
        setOpaque(false);
    }

    void show(List<? extends JComponent> things) {
        removeAll();
        things.forEach(this::add);
        revalidate();
        repaint();
    }

    private int margin() {
        return look.space(4);
    }

    @Override
    public int heightFor(int width) {
        return place(width, false);
    }

    @Override
    public void doLayout() {
        place(getWidth(), true);
    }

    private int place(int width, boolean sets) {
        int inner = Math.max(1, width - 2 * margin());
        if (inner < look.px(WIDE) || getComponentCount() < 2) {
            return pile(0, margin(), inner, sets);
        }
        int left = (int) (LEFT * inner) - margin();
        int first = one(getComponent(0), margin(), look.space(2), left, sets);
        int others = pile(1, margin() + left + 2 * margin(), inner - left - 2 * margin(), sets);
        return Math.max(first, others);
    }

    /** Under one another from one of them on. */
    private int pile(int from, int x, int width, boolean sets) {
        int y = look.space(2);
        for (int i = from; i < getComponentCount(); i++) {
            y = one(getComponent(i), x, y, width, sets);
        }
        return y;
    }

    private int one(Component component, int x, int y, int width, boolean sets) {
        int height = Heights.of(component, width);
        if (sets) {
            component.setBounds(x, y, width, height);
        }
        return y + height + look.space(4);
    }

    @Override
    public Dimension getPreferredSize() {
        int width = getWidth() > 0 ? getWidth() : look.px(800);
        return new Dimension(width, heightFor(width));
    }
}
