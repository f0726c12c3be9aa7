package rakeline.shell.rack;

import java.awt.Component;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.awt.event.MouseEvent;
import java.util.EventObject;
import java.util.function.Consumer;
import javax.swing.AbstractCellEditor;
import javax.swing.JTable;
import javax.swing.JTextField;
import javax.swing.SwingConstants;
import javax.swing.table.TableCellEditor;
import rakeline.quantity.Refusal;
import rakeline.shell.look.Look;
import rakeline.shell.look.TextChange;

/**
 * The field that a number is typed in. What can stand there counts as it is typed; what cannot keeps the field open when
 * it is left, with one sentence that says what is accepted.
 */
final class CellWriter extends AbstractCellEditor implements TableCellEditor {
    private final transient RackStore store;
    private final transient RackGrid grid;
    private final transient Consumer<String> said;
    private final JTextField field = new Wide();
    private String opened = "";
    private String id = "";
    private transient RackColumn column = RackColumn.of(RackChoices.USUAL.get(0));
    private boolean filling;

    /** As wide as its cell, and wider where what is typed asks for it. */
    private static final class Wide extends JTextField {
        @Override
        public void setBounds(int x, int y, int width, int height) {
            super.setBounds(x, y, Math.max(width, getPreferredSize().width), height);
        }
    }

    /**
     * @param said hears the sentence, and the empty text where there is none
     */
    CellWriter(Look look, RackStore store, RackGrid grid, Consumer<String> said) {
        this.store = store;
        this.grid = grid;
        this.said = said;
        field.setName("rack cell");
        field.setFont(look.strong());
        field.setHorizontalAlignment(SwingConstants.RIGHT);
        TextChange.in(field, this::typed);
        field.addFocusListener(new FocusAdapter() {
            @Override
            public void focusLost(FocusEvent event) {
                if (!event.isTemporary() && field.getParent() != null) {
                    stopCellEditing();
                }
            }
        });
    }

    JTextField field() {
        return field;
    }

    @Override
    public Component getTableCellEditorComponent(
            JTable table, Object value, boolean isSelected, int atRow, int atColumn) {
        RackBike row = grid.row(atRow);
        id = row.id();
        column = grid.column(atColumn);
        opened = store.state()
                .open(id, column.key())
                .map(RackState.OpenCell::text)
                .orElseGet(() -> store.state().shown(row, column));
        filling = true;
        field.setText(opened);
        filling = false;
        field.putClientProperty("JComponent.outline", null);
        field.getAccessibleContext().setAccessibleName(row.name() + ", " + grid.getColumnName(atColumn));
        return field;
    }

    /** A click selects, a second one opens. */
    @Override
    public boolean isCellEditable(EventObject event) {
        return !(event instanceof MouseEvent click) || click.getClickCount() >= 2;
    }

    @Override
    public Object getCellEditorValue() {
        return field.getText();
    }

    /** The measures follow at once where it can stand; whoever types a number digit by digit is not told of each. */
    private void typed() {
        if (!filling) {
            tell();
            try {
                check();
            } catch (Refusal notYet) {
                field.putClientProperty("JComponent.outline", "warning");
            }
        }
    }

    private void tell() {
        store.tell(new RackEvent.Typed(id, column.key(), field.getText()));
    }

    private void check() {
        store.state()
                .bike(id)
                .ifPresent(bike -> bike.draft()
                        .typed(column, field.getText(), store.state().lengths()));
        field.putClientProperty("JComponent.outline", null);
        said.accept("");
    }

    @Override
    public boolean stopCellEditing() {
        try {
            check();
        } catch (Refusal refusal) {
            field.putClientProperty("JComponent.outline", "error");
            said.accept(refusal.getMessage());
            return false;
        }
        tell();
        store.tell(new RackEvent.Left(id, column.key()));
        return super.stopCellEditing();
    }

    /** Back to the number that stands there. */
    @Override
    public void cancelCellEditing() {
        store.tell(new RackEvent.Cancelled(id, column.key()));
        said.accept("");
        super.cancelCellEditing();
    }
}
