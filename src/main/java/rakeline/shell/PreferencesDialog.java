package rakeline.shell;

import java.awt.Component;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JFileChooser;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JSpinner;
import javax.swing.JTextField;
import javax.swing.SpinnerNumberModel;
import net.miginfocom.swing.MigLayout;
import rakeline.desk.Preferences;
import rakeline.desk.Preferences.Theme;
import rakeline.shell.look.Ask;
import rakeline.shell.look.Look;
import rakeline.shell.look.Words;
import rakeline.shell.rack.LengthUnit;
import rakeline.worksheet.Row;

/** What can be preferred, in one place. */
final class PreferencesDialog {
    private static final String LATER =
            "Memory, time limit and folder count from the next page on that is opened. Lengths are stored in millimetres"
                    + " whatever is shown.";

    private final Look look;
    private final Path usualFolder;
    private final JComboBox<Choice<Theme>> theme = new JComboBox<>();
    private final JComboBox<Choice<LengthUnit>> lengths = new JComboBox<>();
    private final JSpinner type;
    private final JSpinner memory;
    private final JSpinner limit;
    private final JTextField folder = new JTextField(26);
    private final JCheckBox links = new JCheckBox("Rows may follow links out of the page's folder");

    /**
     * @param usualFolder the Rakeline folder where none is preferred
     * @param lengthsNow the rack's unit
     */
    PreferencesDialog(Look look, Path usualFolder, Preferences now, LengthUnit lengthsNow) {
        this.look = look;
        this.usualFolder = usualFolder;
        offer(theme, now.theme(), Map.of(Theme.LIGHT, "Light", Theme.DARK, "Dark", Theme.CONTRAST, "High contrast"));
        offer(
                lengths,
                lengthsNow,
                Map.of(
                        LengthUnit.MILLIMETRE, "millimetres",
                        LengthUnit.CENTIMETRE, "centimetres",
                        LengthUnit.INCH, "inches"));
        type = spinner(now.typePercent(), Preferences.SMALLEST_TYPE, Preferences.LARGEST_TYPE, 10);
        memory = spinner(now.workerMegabytes(), Preferences.LEAST_MEMORY, Preferences.MOST_MEMORY, 128);
        limit = spinner(now.timeLimitSeconds(), 1, Row.LONGEST_TIME_LIMIT, 5);
        folder.setText(now.folder().orElse(""));
        links.setSelected(now.followsLinks());
        links.setName("preferred links");
        folder.putClientProperty("JTextField.placeholderText", usualFolder.toString());
    }

    /** What was chosen; the unit is the rack's own to keep. */
    record Chosen(Preferences preferences, LengthUnit lengths) {}

    /** Something to choose, in words. */
    private record Choice<T>(T value, String words) {
        @Override
        public String toString() {
            return words;
        }
    }

    private static <T extends Enum<T>> void offer(JComboBox<Choice<T>> box, T now, Map<T, String> words) {
        new TreeMap<>(words).forEach((value, name) -> box.addItem(new Choice<>(value, name)));
        box.setSelectedItem(new Choice<>(now, words.get(now)));
    }

    private static <T> T chosen(JComboBox<Choice<T>> box) {
        return box.getItemAt(box.getSelectedIndex()).value();
    }

    private static JSpinner spinner(int now, int least, int most, int step) {
        return new JSpinner(new SpinnerNumberModel(now, least, most, step));
    }

    /** Lets a person change the preferences; empty where they were left as they are. */
    Optional<Chosen> ask(Component over) {
        int answer = Ask.among(over, lines(), "Preferences", 0, "Apply", "Cancel");
        return answer == 0 ? Optional.of(chosen()) : Optional.empty();
    }

    private JPanel lines() {
        JPanel lines = new JPanel(new MigLayout("insets 0, wrap 2", "[]" + look.space(4) + "[grow]"));
        line(lines, "Theme", "theme", theme, "");
        line(lines, "Type size", "type", type, "%");
        line(lines, "Unit of length", "lengths", lengths, "");
        line(lines, "Memory for rows", "memory", memory, "MB");
        line(lines, "Time limit of a row", "limit", limit, "s");
        line(lines, "Rakeline folder", "folder", folder, "");
        lines.add(chooser(), "skip 1");
        lines.add(links, "span 2");
        JComponent later = Words.paragraph(LATER, look.softText(), look.soft());
        lines.add(later, "span 2, growx, w " + look.px(420) + "!, gaptop " + look.space(2));
        return lines;
    }

    private void line(JPanel lines, String words, String name, JComponent field, String unit) {
        JLabel label = Words.line(words, look.body(), look.ink());
        label.setLabelFor(field);
        field.setName("preferred " + name);
        field.getAccessibleContext().setAccessibleName(unit.isEmpty() ? words : words + ", " + unit);
        lines.add(label);
        lines.add(field, unit.isEmpty() ? "" : "split 2");
        if (!unit.isEmpty()) {
            lines.add(Words.line(unit, look.body(), look.soft()));
        }
    }

    private JButton chooser() {
        JButton choose = new JButton("Choose…");
        choose.addActionListener(event -> {
            JFileChooser chooser = new JFileChooser(usualFolder.toFile());
            chooser.setFileSelectionMode(JFileChooser.DIRECTORIES_ONLY);
            if (chooser.showDialog(choose, "Take it") == JFileChooser.APPROVE_OPTION) {
                folder.setText(chooser.getSelectedFile().toString());
            }
        });
        return choose;
    }

    private Chosen chosen() {
        String path = folder.getText().strip();
        Preferences preferred = new Preferences(
                chosen(theme),
                (Integer) type.getValue(),
                (Integer) memory.getValue(),
                (Integer) limit.getValue(),
                path.isEmpty() ? Optional.empty() : Optional.of(path),
                links.isSelected());
        return new Chosen(preferred, chosen(lengths));
    }
}
