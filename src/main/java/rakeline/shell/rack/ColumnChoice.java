package rakeline.shell.rack;

import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Dimension;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import javax.swing.JButton;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import javax.swing.JTextField;
import javax.swing.RowFilter;
import javax.swing.table.DefaultTableModel;
import javax.swing.table.TableRowSorter;
import net.miginfocom.swing.MigLayout;
import rakeline.shell.look.Ask;
import rakeline.shell.look.Look;
import rakeline.shell.look.TextChange;
import rakeline.shell.look.Words;
import rakeline.study.Vocabulary;

/** Which numbers the rack shows, and in which order: those chosen stand first. */
final class ColumnChoice extends JPanel {
    private static final int SHOWN = 0;
    private static final int LABEL = 1;
    private static final int KEY = 2;

    private final JTable table;
    private final DefaultTableModel lines = new DefaultTableModel(new String[] {"Shown", "Number", "Key"}, 0) {
        @Override
        public Class<?> getColumnClass(int column) {
            return column == SHOWN ? Boolean.class : String.class;
        }

        @Override
        public boolean isCellEditable(int row, int column) {
            return column == SHOWN;
        }
    };

    private ColumnChoice(Look look, List<RackColumn> chosen) {
        super(new BorderLayout(0, look.space(2)));
        table = new JTable(lines);
        table.setName("columns");
        table.getAccessibleContext().setAccessibleName("Numbers to show");
        table.setRowHeight(look.px(24));
        fill(chosen);
        TableRowSorter<DefaultTableModel> sorter = new TableRowSorter<>(lines);
        sorter.setSortable(SHOWN, false);
        sorter.setSortable(LABEL, false);
        sorter.setSortable(KEY, false);
        table.setRowSorter(sorter);
        table.getColumnModel().getColumn(SHOWN).setMaxWidth(look.px(64));
        JScrollPane scroll = new JScrollPane(table);
        scroll.setPreferredSize(new Dimension(look.px(560), look.px(380)));
        add(filter(look, sorter), BorderLayout.NORTH);
        add(scroll, BorderLayout.CENTER);
        add(keys(look), BorderLayout.SOUTH);
    }

    /** The keys chosen, in their order; none where the person went back. */
    static Optional<List<String>> ask(Component over, Look look, List<RackColumn> chosen) {
        ColumnChoice choice = new ColumnChoice(look, chosen);
        int answer = Ask.among(over, choice, "Columns of the rack", 0, "Apply", "Cancel");
        return answer == 0 ? Optional.of(choice.keys()).filter(keys -> !keys.isEmpty()) : Optional.empty();
    }

    private void fill(List<RackColumn> chosen) {
        List<String> first = chosen.stream().map(RackColumn::key).toList();
        Stream.concat(first.stream(), Vocabulary.standard().keys().stream().filter(key -> !first.contains(key)))
                .forEach(key -> lines.addRow(new Object[] {first.contains(key), label(key), key}));
    }

    private static String label(String key) {
        RackColumn column = RackColumn.of(key);
        return column.heading(LengthUnit.MILLIMETRE) + (column.isTyped() ? "" : " (computed)");
    }

    private static JPanel filter(Look look, TableRowSorter<DefaultTableModel> sorter) {
        JTextField field = new JTextField(24);
        field.setName("columns filter");
        field.getAccessibleContext().setAccessibleName("Only those that hold these letters");
        Ask.first(field);
        TextChange.in(field, () -> sorter.setRowFilter(holding(field.getText())));
        JPanel line = new JPanel(new MigLayout("insets 0", "[]" + look.space(2) + "[]"));
        line.add(Words.line("Only those with", look.body(), look.ink()));
        line.add(field);
        return line;
    }

    private static RowFilter<DefaultTableModel, Integer> holding(String letters) {
        String wanted = letters.strip().toLowerCase(Locale.ROOT);
        return new RowFilter<>() {
            @Override
            public boolean include(Entry<? extends DefaultTableModel, ? extends Integer> line) {
                return line.getStringValue(LABEL).toLowerCase(Locale.ROOT).contains(wanted)
                        || line.getStringValue(KEY).toLowerCase(Locale.ROOT).contains(wanted);
            }
        };
    }

    private JPanel keys(Look look) {
        JPanel line = new JPanel(new MigLayout("insets 0", "[]" + look.space(2) + "[]"));
        line.add(key("Further left", -1));
        line.add(key("Further right", 1));
        return line;
    }

    private JButton key(String words, int by) {
        JButton button = new JButton(words);
        button.addActionListener(event -> move(by));
        return button;
    }

    private void move(int by) {
        int seen = table.getSelectedRow();
        if (seen >= 0) {
            int row = table.convertRowIndexToModel(seen);
            int to = Math.max(0, Math.min(lines.getRowCount() - 1, row + by));
            lines.moveRow(row, row, to);
            int now = table.convertRowIndexToView(to);
            table.setRowSelectionInterval(now, now);
        }
    }

    private List<String> keys() {
        List<String> keys = new ArrayList<>();
        for (int row = 0; row < lines.getRowCount(); row++) {
            if (Boolean.TRUE.equals(lines.getValueAt(row, SHOWN))) {
                keys.add((String) lines.getValueAt(row, KEY));
            }
        }
        return keys;
    }
}
