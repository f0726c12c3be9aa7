package rakeline.shell.dials;

import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Dimension;
import java.util.List;
import java.util.Optional;
import javax.swing.InputMap;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.ScrollPaneConstants;
import javax.swing.SwingUtilities;
import rakeline.engine.Control;
import rakeline.shell.look.Look;
import rakeline.shell.page.Bench;
import rakeline.shell.page.PageModel;

/** The dials and pickers of the page, in sight above it: one line of them, then a second, then they scroll. */
public final class DialStrip extends JPanel implements Bench.View {
    private static final int NARROWEST = 216;
    private static final int NARROWEST_LARGE = 136;

    private final transient Look look;
    private final transient Bench bench;
    private final boolean large;
    private final StripLines lines;

    private DialStrip(Look look, Bench bench, boolean large) {
        super(new BorderLayout());
        this.look = look;
        this.bench = bench;
        this.large = large;
        lines = new StripLines(look, large ? NARROWEST_LARGE : NARROWEST);
        JScrollPane scroll = new JScrollPane(
                lines,
                ScrollPaneConstants.VERTICAL_SCROLLBAR_AS_NEEDED,
                ScrollPaneConstants.HORIZONTAL_SCROLLBAR_NEVER);
        scroll.setBorder(null);
        scroll.setOpaque(false);
        scroll.getViewport().setOpaque(false);
        scroll.getVerticalScrollBar().setUnitIncrement(look.space(4));
        if (large) {
            scroll.setInputMap(WHEN_ANCESTOR_OF_FOCUSED_COMPONENT, new InputMap());
        }
        setBackground(look.wash());
        setBorder(look.line(0, 0, 1, 0));
        getAccessibleContext().setAccessibleName("Dials");
        add(scroll, BorderLayout.CENTER);
    }

    /** The strip above a page. */
    public static DialStrip above(Look look, Bench bench) {
        return new DialStrip(look, bench, false);
    }

    /** The strip beneath a figure that is shown to many. */
    public static DialStrip large(Look look, Bench bench) {
        return new DialStrip(look, bench, true);
    }

    /** The first dial or picker that takes keys; none where the page has none. */
    public Optional<Component> first() {
        return lines.firstToFocus();
    }

    /** Has at most so many lines in sight, of two. */
    public void inSight(int count) {
        lines.inSight(count);
    }

    @Override
    public void show(PageModel now) {
        List<Control> controls = now.controls();
        setVisible(!controls.isEmpty());
        if (isSame(controls)) {
            for (int i = 0; i < controls.size(); i++) {
                view(i).show(controls.get(i));
            }
        } else {
            rebuild(controls);
        }
    }

    private boolean isSame(List<Control> controls) {
        boolean same = controls.size() == lines.getComponentCount();
        for (int i = 0; same && i < controls.size(); i++) {
            same = view(i).shows(controls.get(i));
        }
        return same;
    }

    private ControlView view(int index) {
        return (ControlView) lines.getComponent(index);
    }

    private void rebuild(List<Control> controls) {
        lines.removeAll();
        controls.stream().map(this::viewOf).forEach(lines::add);
        lines.followKeys();
        revalidate();
        repaint();
    }

    private Component viewOf(Control control) {
        if (control instanceof Control.Dial dial) {
            return large ? new WideDial(look, bench, dial) : new DialView(look, bench, dial);
        }
        return new PickerView(look, bench, (Control.Picker) control);
    }

    /** In another width there may be another number of lines, which whatever it stands in has to learn. */
    @Override
    public void setBounds(int x, int y, int width, int height) {
        boolean other = width != getWidth();
        super.setBounds(x, y, width, height);
        if (other && height != getPreferredSize().height) {
            SwingUtilities.invokeLater(this::revalidate);
        }
    }

    @Override
    public Dimension getPreferredSize() {
        return new Dimension(super.getPreferredSize().width, lines.heightInSight(getWidth()) + 1);
    }
}
