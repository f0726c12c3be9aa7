package rakeline.shell.rack;

import javax.swing.table.AbstractTableModel;

/** The rack's cells as a table asks for them. */
final class RackGrid extends AbstractTableModel {
    private final transient RackStore store;

    RackGrid(RackStore store) {
        this.store = store;
    }

    RackBike row(int index) {
        return store.rows().get(index);
    }

    RackColumn column(int index) {
        return store.state().columns().get(index);
    }

    @Override
    public int getRowCount() {
        return store.rows().size();
    }

    @Override
    public int getColumnCount() {
        return store.state().columns().size();
    }

    @Override
    public String getColumnName(int index) {
        return column(index).heading(store.state().lengths());
    }

    @Override
    public Class<?> getColumnClass(int index) {
        return RackCell.class;
    }

    @Override
    public RackCell getValueAt(int row, int index) {
        return RackCell.of(
                row(row), column(index), store.reading(row(row)), store.state().lengths());
    }

    @Override
    public boolean isCellEditable(int row, int index) {
        return column(index).isTyped() && !row(row).isUnread();
    }

    /** What a cell says to who does not see it. */
    String spoken(int row, int index) {
        return RackWords.spoken(
                row(row), column(index), store.reading(row(row)), store.state().lengths());
    }

    /** What is to be known of a cell. */
    String told(int row, int index) {
        return RackWords.cell(
                row(row), column(index), store.reading(row(row)), store.state().lengths());
    }
}
