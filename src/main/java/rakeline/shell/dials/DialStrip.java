package rakeline.shell.dials;

import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Dimension;
import java.util.List;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.ScrollPaneConstants;
import rakeline.engine.Control;
import rakeline.shell.look.Look;
import rakeline.shell.page.Bench;
import rakeline.shell.page.PageModel;

/** The dials and pickers of the page, in sight above it: one line of them, then a second, then they scroll. */
public final class DialStrip extends JPanel implements Bench.View {
    private final transient Look look;
    private final transient Bench bench;
    private final StripLines lines;
    private final JScrollPane scroll;

    public DialStrip(Look look, Bench bench) {
        super(new BorderLayout());
        this.look = look;
        this.bench = bench;
        lines = new StripLines(look);
        scroll = new JScrollPane(
                lines,
                ScrollPaneConstants.VERTICAL_SCROLLBAR_AS_NEEDED,
                ScrollPaneConstants.HORIZONTAL_SCROLLBAR_NEVER);
        scroll.setBorder(null);
        scroll.setOpaque(false);
        scroll.getViewport().setOpaque(false);
        scroll.getVerticalScrollBar().setUnitIncrement(look.space(4));
        setBackground(look.wash());
        setBorder(look.line(0, 0, 1, 0));
        getAccessibleContext().setAccessibleName("Dials");
        add(scroll, BorderLayout.CENTER);
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
        revalidate();
        repaint();
    }

    private Component viewOf(Control control) {
        return control instanceof Control.Dial dial
                ? new DialView(look, bench, dial)
                : new PickerView(look, bench, (Control.Picker) control);
    }

    @Override
    public Dimension getPreferredSize() {
        return new Dimension(super.getPreferredSize().width, lines.heightInSight(getWidth()) + 1);
    }
}
