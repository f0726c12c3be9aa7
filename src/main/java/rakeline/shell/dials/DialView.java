package rakeline.shell.dials;

import java.awt.BorderLayout;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.OptionalDouble;
import javax.swing.AbstractAction;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import javax.swing.SwingConstants;
import rakeline.engine.Control;
import rakeline.shell.look.Look;
import rakeline.shell.look.Numerals;
import rakeline.shell.look.Pointed;
import rakeline.shell.look.Words;
import rakeline.shell.page.Bench;

/** One dial: its name, its value in a field between step keys, and its slider between the ends of its range. */
final class DialView extends JPanel implements ControlView {
    private final transient Look look;
    private final transient Bench bench;
    private final JLabel name;
    private final JLabel unit;
    private final JLabel least;
    private final JLabel most;
    private final JTextField field = new DigitField();
    private final DialSlider slider;
    private transient Control.Dial dial;

    DialView(Look look, Bench bench, Control.Dial first) {
        super(new BorderLayout(0, look.space(1)));
        this.look = look;
        this.bench = bench;
        dial = first;
        name = Words.line("", look.body(), look.ink());
        unit = Words.line("", look.body(), look.soft());
        least = Words.line("", look.small(), look.soft());
        most = Words.line("", look.small(), look.soft());
        slider = new DialSlider(look, this::move, bench::pause);
        setOpaque(false);
        setName("dial " + first.name());
        field.setName("field " + first.name());
        name.setName("name " + first.name());
        slider.setName("slider " + first.name());
        add(top(), BorderLayout.NORTH);
        add(bottom(), BorderLayout.CENTER);
        listen();
        Pointed.at(this, () -> dial.key().isEmpty() ? "dials" : dial.key());
        show(first);
    }

    private JPanel top() {
        JPanel keys = row(look.space(1));
        field.setFont(look.strong());
        field.setHorizontalAlignment(SwingConstants.RIGHT);
        keys.add(stepKey("−", -1), BorderLayout.WEST);
        JPanel value = row(look.space(1));
        value.add(field, BorderLayout.CENTER);
        value.add(unit, BorderLayout.EAST);
        keys.add(value, BorderLayout.CENTER);
        keys.add(stepKey("+", 1), BorderLayout.EAST);
        JPanel top = row(look.space(2));
        top.add(name, BorderLayout.CENTER);
        top.add(keys, BorderLayout.EAST);
        return top;
    }

    private JPanel bottom() {
        JPanel bottom = row(look.space(1));
        bottom.add(least, BorderLayout.WEST);
        bottom.add(slider, BorderLayout.CENTER);
        bottom.add(most, BorderLayout.EAST);
        return bottom;
    }

    private static JPanel row(int gap) {
        JPanel row = new JPanel(new BorderLayout(gap, 0));
        row.setOpaque(false);
        return row;
    }

    private JButton stepKey(String sign, int direction) {
        JButton key = new JButton(sign);
        key.putClientProperty("JButton.buttonType", "toolBarButton");
        key.setFont(look.strong());
        key.setMargin(new java.awt.Insets(0, look.px(3), 0, look.px(3)));
        key.getAccessibleContext().setAccessibleName((direction < 0 ? "less " : "more ") + dial.label());
        key.addActionListener(event -> step(direction));
        return key;
    }

    private void listen() {
        field.addActionListener(event -> take());
        field.addFocusListener(new FocusAdapter() {
            @Override
            public void focusLost(FocusEvent event) {
                take();
            }
        });
        bind("UP", () -> step(1));
        bind("DOWN", () -> step(-1));
        bind("ESCAPE", this::showValue);
        MouseAdapter twice = new MouseAdapter() {
            @Override
            public void mouseClicked(MouseEvent event) {
                if (event.getClickCount() == 2) {
                    goBack();
                }
            }
        };
        slider.addMouseListener(twice);
        name.addMouseListener(twice);
    }

    private void bind(String key, Runnable action) {
        field.getInputMap().put(KeyStroke.getKeyStroke(key), key);
        field.getActionMap().put(key, action(action));
    }

    private static AbstractAction action(Runnable work) {
        return new AbstractAction() {
            @Override
            public void actionPerformed(java.awt.event.ActionEvent event) {
                work.run();
            }
        };
    }

    @Override
    public boolean shows(Control control) {
        return control instanceof Control.Dial other && other.name().equals(dial.name());
    }

    @Override
    public void show(Control control) {
        Control.Dial before = dial;
        dial = (Control.Dial) control;
        name.setText(dial.label());
        unit.setText(dial.unit());
        least.setText(Numerals.show(dial.min()));
        most.setText(Numerals.show(dial.max()));
        slider.show(dial);
        describe();
        if (before.value() != dial.value() || !field.hasFocus()) {
            showValue();
        }
    }

    private void describe() {
        String own = Double.isNaN(dial.own()) ? "" : "; the bike's own value is " + words(dial.own());

        field.setColumns(columns());
        field.getAccessibleContext()
                .setAccessibleName(dial.label() + (dial.unit().isEmpty() ? "" : ", " + dial.unit()));
        slider.getAccessibleContext().setAccessibleName(dial.label() + ", slider");
        slider.getAccessibleContext().setAccessibleDescription(words(dial.value()));
        slider.setToolTipText(range() + own + "; double-click to return");
        name.setToolTipText(dial.label() + " (" + dial.name() + ")");
        setBorder(BorderFactory.createEmptyBorder());
    }

    private String range() {
        return Numerals.show(dial.min()) + " to " + Numerals.withUnit(Numerals.show(dial.max()), dial.unit());
    }

    private int columns() {
        int longest = Math.max(
                Numerals.show(dial.min(), dial.decimals()).length(),
                Numerals.show(dial.max(), dial.decimals()).length());
        return Math.max(3, longest);
    }

    private String words(double value) {
        return Numerals.withUnit(Numerals.show(value, dial.decimals()), dial.unit());
    }

    private void showValue() {
        field.setText(Numerals.show(dial.value(), dial.decimals()));
    }

    private void take() {
        String typed = field.getText();
        if (typed.equals(Numerals.show(dial.value(), dial.decimals()))) {
            return;
        }
        OptionalDouble value = Numerals.read(typed);
        boolean accepted = value.isPresent() && value.getAsDouble() >= dial.min() && value.getAsDouble() <= dial.max();
        if (accepted) {
            settle(value.getAsDouble());
        } else {
            refuse(typed);
        }
    }

    private void refuse(String typed) {
        bench.notice(dial.label() + " is \"" + typed.strip() + "\"; accepted is a number from " + range() + ".");
        showValue();
    }

    private void step(int direction) {
        settle(Scale.of(dial).stepped(dial.value(), direction));
    }

    private void goBack() {
        settle(Double.isNaN(dial.own()) ? dial.initial() : dial.own());
    }

    private void settle(double value) {
        move(value);
        bench.pause();
    }

    private void move(double value) {
        if (value != dial.value()) {
            bench.dial(dial.name(), value, dial.label() + " " + words(value));
        }
    }

    /** A field as wide as its columns of digits, not of the widest letter. */
    private static final class DigitField extends JTextField {
        @Override
        protected int getColumnWidth() {
            return getFontMetrics(getFont()).charWidth('0');
        }
    }
}
