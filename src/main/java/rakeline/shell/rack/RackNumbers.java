package rakeline.shell.rack;

import java.awt.BorderLayout;
import java.awt.Color;
import java.util.List;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import rakeline.shell.look.Look;
import rakeline.shell.look.Words;

/** The table of the rack, and beneath it what is to be known of the cell at hand. */
final class RackNumbers extends JPanel {
    private static final String HINT = "Type in a cell; what is typed is written to the bike's file when you leave the"
            + " cell. 20 in, 51.5 cm and 544 ± 3 are understood too.";

    private final transient Look look;
    private final transient RackStore store;
    private final transient RackGrid grid;
    private final RackTable table;
    private final RackNames names;
    private final JTextArea told;
    private final JTextArea none;
    private final JScrollPane scroll;
    private String refused = "";

    RackNumbers(Look look, RackStore store, Runnable rename) {
        super(new BorderLayout());
        this.look = look;
        this.store = store;
        grid = new RackGrid(store);
        table = new RackTable(look, store, grid, this::refuse);
        names = new RackNames(look, store, table, rename);
        told = Words.paragraph("", look.softText(), look.soft());
        told.setName("rack told");
        told.setRows(2);
        told.setBorder(look.room(1, 4, 1, 4));
        none = Words.paragraph(
                "No bike at hand yet. Add bikes that come with the program or your own files, begin a new one, paste a"
                        + " chart from a spreadsheet, or import it.",
                look.body(),
                look.soft());
        none.setName("rack none");
        none.setBorder(look.room(4, 4, 4, 4));
        setBackground(look.paper());
        scroll = new JScrollPane(table);
        scroll.setBorder(look.line(1, 0, 1, 0));
        scroll.setRowHeaderView(names);
        scroll.setCorner(JScrollPane.UPPER_LEADING_CORNER, corner());
        scroll.getViewport().setBackground(look.paper());
        scroll.getRowHeader().setBackground(look.paper());
        add(scroll, BorderLayout.CENTER);
        add(told, BorderLayout.SOUTH);
        table.getSelectionModel().addListSelectionListener(event -> tell());
        table.getColumnModel().getSelectionModel().addListSelectionListener(event -> tell());
        refresh();
    }

    private JPanel corner() {
        JPanel corner = new JPanel(new BorderLayout());
        corner.setBackground(look.paper());
        corner.setBorder(javax.swing.BorderFactory.createCompoundBorder(look.line(0, 0, 1, 0), look.room(1, 2, 1, 2)));
        JLabel words = Words.line("Bike", look.softStrong(), look.ink());
        corner.add(words, BorderLayout.SOUTH);
        return corner;
    }

    RackTable table() {
        return table;
    }

    /** The bikes that are selected. */
    List<RackBike> selected() {
        return table.selected();
    }

    void refresh() {
        table.refresh();
        names.refresh();
        boolean empty = store.rows().isEmpty();
        if (empty != (none.getParent() != null)) {
            remove(empty ? scroll : none);
            add(empty ? none : scroll, BorderLayout.CENTER);
            revalidate();
            repaint();
        }
        tell();
    }

    private void refuse(String sentence) {
        refused = sentence;
        tell();
    }

    private void tell() {
        int row = table.getSelectedRow();
        int column = table.getSelectedColumn();
        boolean pointed = row >= 0 && row < grid.getRowCount() && column >= 0 && column < grid.getColumnCount();
        String words = refused.isEmpty() && pointed ? grid.told(row, column) : refused;
        words = words.isEmpty() && !store.rows().isEmpty() ? HINT : words;
        put(words, refused.isEmpty() ? look.ink() : look.caution());
    }

    private void put(String words, Color colour) {
        told.setForeground(colour);
        if (!told.getText().equals(words)) {
            told.setText(words);
            told.getAccessibleContext().setAccessibleDescription(words);
            revalidate();
        }
    }
}
