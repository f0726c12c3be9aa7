package rakeline.shell.rack;

import java.awt.Component;
import java.awt.event.ActionEvent;
import java.awt.event.KeyEvent;
import java.awt.event.MouseEvent;
import java.util.ArrayList;
import java.util.EventObject;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.AbstractAction;
import javax.swing.JTable;
import javax.swing.KeyStroke;
import javax.swing.ListSelectionModel;
import javax.swing.SwingUtilities;
import rakeline.shell.look.Look;

/** Bikes as rows, numbers as columns. Keys move from cell to cell, typing replaces what stands in one. */
final class RackTable extends JTable {
    private final transient Look look;
    private final transient RackStore store;
    private final transient RackGrid grid;
    private final CellView cells;
    private final HeadView heads;
    private transient List<RackColumn> shown = List.of();
    private int bikes = -1;

    /**
     * @param said hears why a number cannot stand in a cell
     */
    RackTable(Look look, RackStore store, RackGrid grid, Consumer<String> said) {
        super(grid);
        this.look = look;
        this.store = store;
        this.grid = grid;
        cells = new CellView(look, grid);
        heads = new HeadView(look, store);
        setName("rack");
        getAccessibleContext().setAccessibleName("Rack, bikes as rows");
        setDefaultRenderer(RackCell.class, cells);
        setDefaultEditor(RackCell.class, new CellWriter(look, store, grid, said));
        getTableHeader().setDefaultRenderer(heads);
        getTableHeader().setReorderingAllowed(false);
        getTableHeader().setBackground(look.paper());
        setAutoResizeMode(AUTO_RESIZE_OFF);
        setSelectionMode(ListSelectionModel.MULTIPLE_INTERVAL_SELECTION);
        setCellSelectionEnabled(false);
        setRowSelectionAllowed(true);
        setSurrendersFocusOnKeystroke(true);
        setRowHeight(CellView.height(look, this));
        setShowVerticalLines(false);
        setShowHorizontalLines(true);
        setIntercellSpacing(new java.awt.Dimension(0, 1));
        setGridColor(look.hairline());
        setBackground(look.paper());
        setFillsViewportHeight(true);
        getActionMap().put("cancel", new TakeBack());
    }

    /** Takes back what is typed in the open cell; where none is open, the key goes on. */
    private final class TakeBack extends AbstractAction {
        @Override
        public void actionPerformed(ActionEvent event) {
            getCellEditor().cancelCellEditing();
        }

        @Override
        public boolean isEnabled() {
            return isEditing();
        }
    }

    /** Shows the rack as it stands; a cell that is typed in stays open. */
    void refresh() {
        if (!shown.equals(store.state().columns())) {
            shown = store.state().columns();
            bikes = grid.getRowCount();
            grid.fireTableStructureChanged();
        } else if (bikes != grid.getRowCount()) {
            follow();
        }
        if (!isEditing()) {
            fit();
        }
        repaint();
        getTableHeader().repaint();
    }

    /** What comes to others on the table is at hand, so that what is typed next is the new bike's. */
    private void follow() {
        int before = bikes;
        bikes = grid.getRowCount();
        boolean came = before > 0 && bikes > before && isShowing();
        int row = came ? bikes - 1 : Math.min(getSelectedRow(), bikes - 1);
        int column = came ? Math.max(0, getSelectedColumn()) : getSelectedColumn();
        grid.fireTableDataChanged();
        if (row >= 0 && column >= 0) {
            changeSelection(row, column, false, false);
        }
    }

    /** Gives every column its width; a column that changes would close the cell that is typed in. */
    private void fit() {
        for (int i = 0; i < getColumnCount(); i++) {
            int wanted = heads.wanted(grid.column(i));
            for (int row = 0; row < getRowCount(); row++) {
                wanted = Math.max(wanted, cells.wanted(grid.getValueAt(row, i)));
            }
            getColumnModel().getColumn(i).setPreferredWidth(Math.max(look.px(64), wanted));
        }
    }

    /** What is typed opens a cell; a key that does something else in the window does not. */
    @Override
    protected boolean processKeyBinding(KeyStroke stroke, KeyEvent event, int condition, boolean pressed) {
        boolean other = event.isControlDown() || event.isAltDown() || event.isMetaDown();
        putClientProperty("JTable.autoStartsEdit", !other && isOfText(event));
        return super.processKeyBinding(stroke, event, condition, pressed);
    }

    /** Whether a key brings a letter; where the platform tells that only once it is typed, its code says as much. */
    private static boolean isOfText(KeyEvent event) {
        char letter = event.getKeyChar();
        boolean isTold = letter != KeyEvent.CHAR_UNDEFINED && letter != 0;
        int code = event.getKeyCode();
        return isTold ? letter >= ' ' : code >= ' ' && code < KeyEvent.VK_DELETE && !event.isActionKey();
    }

    /** Typing replaces what stands there, after a double click as well; F2 goes on with it. */
    @Override
    public boolean editCellAt(int row, int column, EventObject event) {
        boolean opened = super.editCellAt(row, column, event);
        if (opened && getEditorComponent() instanceof javax.swing.JTextField field) {
            boolean replaces = event instanceof KeyEvent key && key.getKeyCode() != KeyEvent.VK_F2;
            if (replaces || event == null) {
                field.selectAll();
            } else if (event instanceof MouseEvent) {
                SwingUtilities.invokeLater(() -> {
                    field.requestFocusInWindow();
                    field.selectAll();
                });
            }
        }
        return opened;
    }

    @Override
    public String getToolTipText(MouseEvent event) {
        int row = rowAtPoint(event.getPoint());
        int column = columnAtPoint(event.getPoint());
        return row < 0 || column < 0 ? null : grid.spoken(row, column);
    }

    /** The bikes that are selected, in the order of the rows. */
    List<RackBike> selected() {
        List<RackBike> rows = new ArrayList<>();
        for (int index : getSelectedRows()) {
            if (index < grid.getRowCount()) {
                rows.add(grid.row(index));
            }
        }
        return rows;
    }

    @Override
    public void removeEditor() {
        super.removeEditor();
        fit();
    }

    @Override
    public Component prepareEditor(javax.swing.table.TableCellEditor editor, int row, int column) {
        Component component = super.prepareEditor(editor, row, column);
        component.setBackground(look.card());
        return component;
    }
}
