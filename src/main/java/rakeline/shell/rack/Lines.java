package rakeline.shell.rack;

import java.awt.Component;
import java.awt.Dimension;
import java.util.Arrays;
import java.util.List;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import rakeline.shell.look.Heights;
import rakeline.shell.look.Look;
import rakeline.shell.look.Words;

/** Controls beside one another, in as many lines as they need. */
final class Lines extends JPanel implements Heights.Flowing {
    private final transient Look look;

    Lines(Look look) {
        super(null);
        this.look = look;
        setOpaque(false);
    }

    /** Adds a control behind its label, the two together. */
    void labelled(String words, JComponent control, String name) {
        JLabel label = Words.line(words, look.softText(), look.soft());
        label.setLabelFor(control);
        control.setName(name);
        control.getAccessibleContext().setAccessibleName(words);
        JPanel both = new JPanel(new MigLayout("insets 0", "[]" + look.space(1) + "[]"));
        both.setOpaque(false);
        both.add(label);
        both.add(control, "wmax " + look.px(260));
        add(both);
    }

    private int gap() {
        return look.space(3);
    }

    private List<Component> shown() {
        return Arrays.stream(getComponents()).filter(Component::isVisible).toList();
    }

    @Override
    public int heightFor(int width) {
        return place(width, false);
    }

    @Override
    public void doLayout() {
        place(getWidth(), true);
    }

    private int lineHeight() {
        return shown().stream()
                .mapToInt(component -> component.getPreferredSize().height)
                .max()
                .orElse(0);
    }

    private int place(int width, boolean sets) {
        int start = look.space(4);
        int line = lineHeight();
        int x = start;
        int y = look.space(1);
        for (Component component : shown()) {
            Dimension size = component.getPreferredSize();
            if (x > start && x + size.width > width - start) {
                x = start;
                y += line + look.space(1);
            }
            if (sets) {
                component.setBounds(x, y + (line - size.height) / 2, size.width, size.height);
            }
            x += size.width + gap();
        }
        return line == 0 ? 0 : y + line + look.space(1);
    }

    @Override
    public Dimension getPreferredSize() {
        int width = getWidth() > 0 ? getWidth() : look.px(960);
        return new Dimension(width, heightFor(width));
    }

    @Override
    public Dimension getMinimumSize() {
        return new Dimension(0, heightFor(Math.max(getWidth(), 1)));
    }
}
