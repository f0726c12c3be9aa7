package rakeline.shell.dials;

import com.formdev.flatlaf.util.UIScale;
import java.awt.BorderLayout;
import java.util.List;
import java.util.Locale;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.KeyStroke;
import rakeline.engine.Control;
import rakeline.shell.look.Look;
import rakeline.shell.look.Numerals;
import rakeline.shell.look.Words;
import rakeline.shell.page.Bench;

/** A dial to be read from the back of a room: its name and value in one line, its slider beneath. */
final class WideDial extends JPanel implements ControlView {
    /** The slider moves by Up and Down alone. */
    private static final List<String> LEFT_TO_THE_SHEET =
            List.of("LEFT", "RIGHT", "PAGE_UP", "PAGE_DOWN", "HOME", "END");

    private final transient Bench bench;
    private final JLabel name;
    private final JLabel value;
    private final DialSlider slider;
    private transient Control.Dial dial;

    WideDial(Look look, Bench bench, Control.Dial first) {
        super(new BorderLayout(look.space(2), 0));
        this.bench = bench;
        dial = first;
        name = Words.line("", look.body(), look.ink());
        value = Words.line("", look.strong(), look.ink());
        slider = new DialSlider(look, this::move, bench::pause);
        slider.setName("large slider " + first.name());
        slider.putClientProperty("FlatLaf.style", style(look));
        LEFT_TO_THE_SHEET.forEach(key -> slider.getInputMap().put(KeyStroke.getKeyStroke(key), "left to the sheet"));
        value.setName("large value " + first.name());
        setOpaque(false);
        add(name, BorderLayout.CENTER);
        add(value, BorderLayout.EAST);
        add(slider, BorderLayout.SOUTH);
        show(first);
    }

    private static String style(Look look) {
        double unit = look.scale() / UIScale.getUserScaleFactor();
        return String.format(
                Locale.ROOT,
                "thumbSize: %1$d,%1$d; trackWidth: %2$d; focusWidth: %2$d; trackColor: %3$s; trackValueColor: %4$s; "
                        + "thumbColor: %5$s; thumbBorderColor: %4$s",
                Math.round(11 * unit),
                Math.round(2.5 * unit),
                Look.hex(look.edge()),
                look.hexAccent(),
                look.hexCard());
    }

    @Override
    public boolean shows(Control control) {
        return control instanceof Control.Dial other && other.name().equals(dial.name());
    }

    @Override
    public void show(Control control) {
        dial = (Control.Dial) control;
        name.setText(dial.label());
        value.setText(words(dial.value()));
        slider.show(dial);
        slider.getAccessibleContext().setAccessibleName(dial.label());
        slider.getAccessibleContext().setAccessibleDescription(words(dial.value()));
    }

    private String words(double number) {
        return Numerals.withUnit(Numerals.show(number, dial.decimals()), dial.unit());
    }

    private void move(double moved) {
        if (moved != dial.value()) {
            bench.dial(dial.name(), moved, dial.label() + " " + words(moved));
        }
    }
}
