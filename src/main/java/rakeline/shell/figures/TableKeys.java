package rakeline.shell.figures;

import java.awt.FlowLayout;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.JButton;
import javax.swing.JPanel;
import rakeline.figure.Column;
import rakeline.figure.Table;
import rakeline.quantity.Numbers;
import rakeline.shell.look.Look;

/** The keys under a long table: its first lines, all of them, and page by page beyond a thousand. */
public final class TableKeys extends JPanel {
    private static final int FEW = 24;
    private static final int PAGE = 1000;

    private final transient Consumer<Table> shown;
    private final JButton all = new JButton();
    private final JButton earlier = new JButton("Earlier lines");
    private final JButton later = new JButton("Later lines");
    private transient Table table = new Table("", List.of(), "", List.of());
    private boolean few = true;
    private int from;

    /**
     * @param shown takes the part of the table that is to be seen
     */
    public TableKeys(Look look, Consumer<Table> shown) {
        super(new FlowLayout(FlowLayout.LEADING, look.space(2), 0));
        this.shown = shown;
        setOpaque(false);
        all.addActionListener(event -> turn());
        earlier.addActionListener(event -> leaf(-PAGE));
        later.addActionListener(event -> leaf(PAGE));
        add(all);
        add(earlier);
        add(later);
    }

    /** Takes another table, and shows the same part of it as of the one before. */
    public void show(Table next) {
        table = next;
        from = Math.min(from, Math.max(0, next.rows() - 1) / PAGE * PAGE);
        showPart();
    }

    private void turn() {
        few = !few;
        from = 0;
        showPart();
    }

    private void leaf(int by) {
        from += by;
        showPart();
    }

    private void showPart() {
        int rows = table.rows();
        boolean isLong = rows > FEW;
        boolean whole = isLong && !few;
        setVisible(isLong);
        all.setText(few ? "Show all " + rows + " lines" : "Show the first " + FEW + " lines");
        earlier.setVisible(whole && from > 0);
        later.setVisible(whole && from + PAGE < rows);
        shown.accept(slice(table, from, Math.min(rows, from + (isLong && few ? FEW : PAGE))));
    }

    private static Table slice(Table table, int from, int to) {
        boolean whole = from == 0 && to == table.rows();
        List<Column> columns =
                table.columns().stream().map(column -> slice(column, from, to)).toList();
        return whole ? table : new Table(table.title(), columns, table.held(), table.cautions(), table.basis());
    }

    private static Column slice(Column column, int from, int to) {
        Numbers values = column.values().size() == 0
                ? Numbers.none()
                : Numbers.generate(to - from, i -> column.values().at(from + i));
        return new Column(
                column.key(),
                column.label(),
                column.unit(),
                values,
                column.shown().subList(from, to));
    }
}
