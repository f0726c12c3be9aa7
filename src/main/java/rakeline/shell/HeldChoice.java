package rakeline.shell;

import java.awt.Component;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextField;
import net.miginfocom.swing.MigLayout;
import rakeline.geometry.Setting;
import rakeline.quantity.Quantity;
import rakeline.quantity.Refusal;
import rakeline.shell.look.Ask;
import rakeline.shell.look.Look;
import rakeline.shell.look.Numerals;
import rakeline.shell.look.Words;
import rakeline.shell.page.Bench;
import rakeline.shell.page.HeldSource;
import rakeline.shell.page.HeldSource.Held;
import rakeline.study.Vocabulary;
import rakeline.worksheet.Row;

/** Changes what a row's sweep holds, by rewriting the row as one step where its form is recognised. */
final class HeldChoice {
    private static final String NOTHING = "every other input (default)";

    private final Bench bench;
    private final Look look;

    /** A measure or an input, by its label. */
    private record Named(String key, String words) {
        static Named of(Quantity quantity) {
            return new Named(quantity.key(), quantity.heading());
        }

        @Override
        public String toString() {
            return words;
        }
    }

    HeldChoice(Bench bench, Look look) {
        this.bench = bench;
        this.look = look;
    }

    /** Asks and rewrites, or says why the row cannot be changed so. */
    void ask(Component over, Row row) {
        HeldSource.of(row.text())
                .ifPresentOrElse(
                        source -> ask(over, row, source),
                        () -> bench.notice(
                                "What this row holds cannot be changed here, since its text has not one sweep"
                                        + " of the form sweep(…).over(…).hold(…).by(…); change it in the text."));
    }

    private void ask(Component over, Row row, HeldSource source) {
        JComboBox<Named> measures = box("held measure", measures());
        JComboBox<Named> inputs = box("held by", inputs());
        JTextField value = new JTextField(8);
        value.setName("held value");
        source.now().ifPresent(held -> show(held, measures, inputs, value));
        int answer = Ask.among(over, form(measures, value, inputs), "Hold something else", 0, "Hold", "Cancel");
        if (answer == 0) {
            rewrite(row, source, measures, value.getText(), inputs);
        }
    }

    private JPanel form(JComponent measures, JTextField value, JComponent inputs) {
        JPanel form = new JPanel(new MigLayout("insets 0, wrap 2", "[]" + look.space(3) + "[]"));
        line(form, "Held", measures);
        line(form, "at (empty: as it is now)", value);
        line(form, "by changing", inputs);
        return form;
    }

    private void line(JPanel form, String words, JComponent control) {
        JLabel label = Words.line(words, look.body(), look.ink());
        label.setLabelFor(control);
        control.getAccessibleContext().setAccessibleName(words);
        form.add(label);
        form.add(control, control instanceof JComboBox ? "growx" : "");
    }

    private static JComboBox<Named> box(String name, List<Named> items) {
        JComboBox<Named> box = new JComboBox<>(items.toArray(Named[]::new));
        box.setName(name);
        box.setMaximumRowCount(16);
        return box;
    }

    private static List<Named> measures() {
        List<Named> all = new java.util.ArrayList<>(List.of(new Named("", NOTHING)));
        Vocabulary.standard().measures().values().forEach(measure -> all.add(Named.of(measure.quantity())));
        return all;
    }

    private static List<Named> inputs() {
        return Setting.keys().stream()
                .filter(key -> !key.startsWith("charted."))
                .map(key -> Named.of(Setting.of(key).quantity()))
                .toList();
    }

    private static void show(Held held, JComboBox<Named> measures, JComboBox<Named> inputs, JTextField value) {
        choose(measures, held.measure());
        choose(inputs, held.by());
        value.setText(Double.isNaN(held.value()) ? "" : Numerals.show(held.value()));
    }

    /** By a key in quotes, or by the constant that stands for it. */
    private static void choose(JComboBox<Named> box, String named) {
        String key = named.startsWith("\"")
                ? named.replace("\"", "")
                : Vocabulary.standard().constants().getOrDefault(named, "");
        for (int i = 0; i < box.getItemCount(); i++) {
            if (box.getItemAt(i).key().equals(key)) {
                box.setSelectedIndex(i);
            }
        }
    }

    private void rewrite(Row row, HeldSource source, JComboBox<Named> measures, String value, JComboBox<Named> inputs) {
        Named measure = measures.getItemAt(measures.getSelectedIndex());
        Named by = inputs.getItemAt(inputs.getSelectedIndex());
        try {
            Optional<Held> held = measure.key().isEmpty()
                    ? Optional.empty()
                    : Optional.of(Held.ofKeys(measure.key(), number(measure, value), by.key()));
            bench.act(
                    held.isPresent() ? measure.words() + " held" : "nothing else held",
                    page -> page.withText(row.id(), source.with(held)));
        } catch (Refusal refusal) {
            bench.notice(refusal.getMessage());
        }
    }

    private static double number(Named measure, String typed) {
        if (typed.isBlank()) {
            return Double.NaN;
        }
        OptionalDouble number = Numerals.read(typed);
        return number.orElseThrow(() -> new Refusal(measure.words() + " is to be held at \"" + typed.strip()
                + "\"; accepted is a number, or nothing for what it is now."));
    }
}
