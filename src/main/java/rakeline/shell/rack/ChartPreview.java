package rakeline.shell.rack;

import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JOptionPane;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import javax.swing.SwingUtilities;
import net.miginfocom.swing.MigLayout;
import rakeline.catalogue.chart.ChartFile;
import rakeline.catalogue.chart.ChartImport;
import rakeline.figure.BikesTable;
import rakeline.geometry.Bike;
import rakeline.geometry.Inputs;
import rakeline.geometry.Setting;
import rakeline.quantity.Input;
import rakeline.quantity.Refusal;
import rakeline.shell.figures.FigureView;
import rakeline.shell.look.Ask;
import rakeline.shell.look.Look;
import rakeline.shell.look.Pile;
import rakeline.shell.look.TextChange;
import rakeline.shell.look.Words;

/** What was understood of a chart, before anything is kept of it; what the chart lacks can be said here for every size. */
final class ChartPreview extends JPanel {
    private static final String PUT = "Put them on the rack";
    private static final Set<Input> SOLVED = Set.of(Inputs.STACK, Inputs.REACH, Inputs.BB_DROP);

    /** Units that read badly behind "in". */
    private static final Map<String, String> SPELT = Map.of("in", "inches", "°", "degrees");

    private final transient Look look;
    private final byte[] bytes;
    private final String file;
    private final JTextField series = new JTextField(12);
    private final transient Map<RackColumn, JTextField> fields = new LinkedHashMap<>();
    private final Pile found;
    private transient ChartImport chart;

    private ChartPreview(Look look, byte[] bytes, String file, ChartImport first) {
        super(new BorderLayout(0, look.space(3)));
        this.look = look;
        this.bytes = bytes.clone();
        this.file = file;
        chart = first;
        found = new Pile(look.space(2));
        found.setOpaque(true);
        found.setBackground(look.paper());
        found.setBorder(look.room(2, 3, 2, 3));
        lacking(first).forEach(column -> fields.put(column, new JTextField(6)));
        add(head(), BorderLayout.NORTH);
        JScrollPane scroll = new JScrollPane(found);
        scroll.setPreferredSize(new Dimension(look.px(720), look.px(360)));
        scroll.getVerticalScrollBar().setUnitIncrement(look.space(8));
        add(scroll, BorderLayout.CENTER);
        show(first);
        addHierarchyListener(event -> offer());
    }

    /**
     * The bikes of a chart; none where the person went back.
     *
     * @param bytes of the file, or of what was pasted
     * @throws Refusal where it is no chart
     */
    static Optional<List<Bike>> ask(Component over, Look look, byte[] bytes, String file) {
        ChartPreview preview = new ChartPreview(look, bytes, file, read(bytes, file, "", Map.of()));
        preview.fields.values().stream().findFirst().ifPresent(Ask::first);
        boolean taken = Ask.among(over, preview, "What was understood", 0, PUT, "Cancel") == 0;
        return taken ? Optional.of(preview.chart.bikes()) : Optional.empty();
    }

    private static ChartImport read(byte[] bytes, String file, String series, Map<Input, Double> set) {
        int dot = file.lastIndexOf('.');
        return ChartFile.read(
                bytes, file, new ChartImport.Wanted(dot > 0 ? file.substring(0, dot) : file, series, set));
    }

    /** The numbers without which there is no bicycle and which no heading says. */
    private static List<RackColumn> lacking(ChartImport chart) {
        Set<Input> said = chart.understood().stream()
                .map(ChartImport.Understood::key)
                .filter(Setting.keys()::contains)
                .flatMap(key -> Setting.of(key).inputs().stream())
                .collect(Collectors.toSet());
        return Inputs.all().stream()
                .filter(input -> Bike.NEEDED_GROUPS.contains(input.group()))
                .filter(input -> input.presence() instanceof Input.Presence.Required)
                .filter(input -> !said.contains(input) && !SOLVED.contains(input))
                .map(input -> input.key().replaceFirst("^wheels\\.(front|rear)\\.", "wheels.both."))
                .distinct()
                .map(RackColumn::of)
                .toList();
    }

    private JPanel head() {
        JPanel head = new JPanel(new MigLayout("insets 0, wrap 4", "[][]" + look.space(6) + "[][]"));
        line(head, "Put before each size", series);
        fields.forEach(
                (column, field) -> line(head, column.heading(LengthUnit.MILLIMETRE) + ", for every size", field));
        return head;
    }

    private void line(JPanel head, String words, JTextField field) {
        JLabel label = Words.line(words, look.body(), look.ink());
        label.setLabelFor(field);
        field.setName("chart " + words);
        field.getAccessibleContext().setAccessibleName(words);
        TextChange.in(field, this::again);
        head.add(label);
        head.add(field);
    }

    private void again() {
        try {
            Map<Input, Double> set = new LinkedHashMap<>();
            fields.forEach((column, field) -> Typed.read(field.getText(), column, LengthUnit.MILLIMETRE)
                    .ifPresent(typed -> column.setting().inputs().forEach(input -> set.put(input, typed.value()))));
            show(read(bytes, file, series.getText().strip(), set));
        } catch (Refusal refusal) {
            found.removeAll();
            say(refusal.getMessage(), true);
            found.revalidate();
            found.repaint();
        }
    }

    private void show(ChartImport now) {
        chart = now;
        found.removeAll();
        now.doubts().forEach(doubt -> say(doubt.sentence(), true));
        if (!now.isWhole()) {
            say(
                    now.bikes().isEmpty()
                            ? "No size can be put on the rack while a cell of each is doubtful or a number is missing."
                            : "On the rack go "
                                    + String.join(
                                            ", ",
                                            now.bikes().stream().map(Bike::name).toList())
                                    + "; the others stay away.",
                    true);
        }
        if (!now.bikes().isEmpty()) {
            FigureView table = new FigureView(look);
            table.show(Labels.in(BikesTable.sideBySide(now.bikes())));
            found.add(table);
        }
        Stream.concat(now.understood().stream().map(ChartPreview::words), now.notes().stream())
                .forEach(words -> say(words, false));
        offer();
        now.leftOut().forEach(heading -> say("Left out: " + heading.sentence(), false));
        found.revalidate();
        found.repaint();
    }

    /** What puts the sizes on the rack can be pressed as long as there is one. */
    private void offer() {
        if (SwingUtilities.getAncestorOfClass(JOptionPane.class, this) instanceof JOptionPane asked) {
            enable(asked, chart.bikes().isEmpty());
        }
    }

    private static void enable(Container in, boolean isEmpty) {
        for (Component part : in.getComponents()) {
            if (part instanceof JButton button && PUT.equals(button.getText())) {
                button.setEnabled(!isEmpty);
            } else if (part instanceof Container inner) {
                enable(inner, isEmpty);
            }
        }
    }

    private static String words(ChartImport.Understood heading) {
        return heading.place() + " \"" + heading.heading() + "\" is " + heading.key()
                + (heading.unit().isEmpty() ? "" : ", in " + SPELT.getOrDefault(heading.unit(), heading.unit())) + ".";
    }

    /** In labels; the keys that files have for them are in sight for who points at it. */
    private void say(String sentence, boolean doubtful) {
        JTextArea words = Words.paragraph(Labels.in(sentence), look.softText(), doubtful ? look.caution() : look.ink());
        List<String> keys = Labels.keysIn(sentence);
        words.setToolTipText(keys.isEmpty() ? null : "In files: " + String.join(", ", keys));
        found.add(words);
    }
}
