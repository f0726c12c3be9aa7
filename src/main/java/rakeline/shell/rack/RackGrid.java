package rakeline.shell.rack;

import javax.swing.table.AbstractTableModel;

/** The rack's cells as a table asks for them. */
final class RackGrid extends AbstractTableModel {
    private final transient RackDesk desk;

    RackGrid(RackDesk desk) {
        this.desk = desk;
    }

    RackRow row(int index) {
        return desk.model().rows().get(index);
    }

    RackColumn column(int index) {
        return desk.model().columns().get(index);
    }

    @Override
    public int getRowCount() {
        return desk.model().rows().size();
    }

    @Override
    public int getColumnCount() {
        return desk.model().columns().size();
    }

    @Override
    public String getColumnName(int index) {
        return column(index).heading(desk.model().lengths());
    }

    @Override
    public Class<?> getColumnClass(int index) {
        return RackCell.class;
    }

    @Override
    public RackCell getValueAt(int row, int index) {
        return RackCell.of(
                row(row), column(index), desk.reading(row(row)), desk.model().lengths());
    }

    @Override
    public boolean isCellEditable(int row, int index) {
        return column(index).isTyped() && !row(row).isUnread();
    }

    /** What a cell says to who does not see it. */
    String spoken(int row, int index) {
        return RackWords.spoken(
                row(row), column(index), desk.reading(row(row)), desk.model().lengths());
    }

    /** What is to be known of a cell. */
    String told(int row, int index) {
        return RackWords.cell(
                row(row), column(index), desk.reading(row(row)), desk.model().lengths());
    }
}
