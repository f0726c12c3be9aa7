package rakeline.shell.dials;

import java.awt.BorderLayout;
import javax.swing.DefaultComboBoxModel;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import javax.swing.JPanel;
import rakeline.engine.Control;
import rakeline.shell.look.Look;
import rakeline.shell.look.Words;
import rakeline.shell.page.Bench;

/** One picker: its name and a choice box. */
final class PickerView extends JPanel implements ControlView {
    private final JLabel name;
    private final JComboBox<String> box = new JComboBox<>();
    private transient Control.Picker picker;
    private boolean showing;

    PickerView(Look look, Bench bench, Control.Picker first) {
        super(new BorderLayout(0, look.space(1)));
        picker = first;
        name = Words.line("", look.body(), look.ink());
        name.setLabelFor(box);
        box.setName("picker " + first.name());
        box.setFont(look.strong());
        setOpaque(false);
        add(name, BorderLayout.NORTH);
        add(box, BorderLayout.CENTER);
        box.addActionListener(event -> choose(bench));
        fill();
        show(first);
    }

    private void choose(Bench bench) {
        int index = box.getSelectedIndex();
        if (!showing && index >= 0 && !picker.paths().get(index).equals(picker.chosen())) {
            bench.pick(
                    picker.name(),
                    picker.paths().get(index),
                    picker.label() + " " + picker.labels().get(index));
        }
    }

    @Override
    public boolean shows(Control control) {
        return control instanceof Control.Picker other && other.name().equals(picker.name());
    }

    @Override
    public void show(Control control) {
        Control.Picker next = (Control.Picker) control;
        boolean sameItems = next.labels().equals(picker.labels());
        picker = next;
        if (!sameItems) {
            fill();
        }
        showing = true;
        box.setSelectedIndex(picker.paths().indexOf(picker.chosen()));
        showing = false;
        name.setText(picker.label());
        box.getAccessibleContext().setAccessibleName(picker.label());
    }

    private void fill() {
        showing = true;
        box.setModel(new DefaultComboBoxModel<>(picker.labels().toArray(String[]::new)));
        showing = false;
    }
}
