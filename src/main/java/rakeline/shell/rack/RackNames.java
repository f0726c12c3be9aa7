package rakeline.shell.rack;

import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import javax.swing.AbstractListModel;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.ListCellRenderer;
import rakeline.shell.look.Look;
import rakeline.shell.look.Words;

/** The names of the bikes beside their numbers, each with how it stands in words; they stay in sight. */
final class RackNames extends JList<RackBike> {
    private final transient Look look;
    private final transient RackStore store;

    /** The names as the rack has them now. */
    private static final class Rows extends AbstractListModel<RackBike> {
        private final transient RackStore store;
        private int size;

        Rows(RackStore store) {
            this.store = store;
        }

        @Override
        public int getSize() {
            return store.rows().size();
        }

        @Override
        public RackBike getElementAt(int index) {
            return store.rows().get(index);
        }

        void changed() {
            int now = getSize();
            fireContentsChanged(this, 0, Math.max(size, now));
            size = now;
        }
    }

    RackNames(Look look, RackStore store, RackTable table, Runnable rename) {
        super(new Rows(store));
        this.look = look;
        this.store = store;
        setName("rack names");
        getAccessibleContext().setAccessibleName("Names of the bikes");
        setSelectionModel(table.getSelectionModel());
        setFixedCellHeight(table.getRowHeight());
        setFixedCellWidth(look.px(200));
        setBackground(look.paper());
        setFocusable(false);
        setCellRenderer(new NameView());
        addMouseListener(new MouseAdapter() {
            @Override
            public void mouseClicked(MouseEvent event) {
                if (event.getClickCount() == 2) {
                    rename.run();
                }
            }
        });
    }

    void refresh() {
        ((Rows) getModel()).changed();
        repaint();
    }

    @Override
    public String getToolTipText(MouseEvent event) {
        int index = locationToIndex(event.getPoint());
        if (index < 0 || index >= getModel().getSize()) {
            return null;
        }
        RackBike row = getModel().getElementAt(index);
        return RackWords.whole(row, store.reading(row), store.state().lengths());
    }

    /** A name over its state. */
    private final class NameView extends JPanel implements ListCellRenderer<RackBike> {
        private final JLabel name = Words.line("", look.strong(), look.ink());
        private final JLabel state = Words.line("", look.small(), look.soft());

        NameView() {
            super(new BorderLayout());
            setBorder(javax.swing.BorderFactory.createCompoundBorder(look.line(0, 0, 1, 0), look.room(1, 2, 0, 2)));
            add(name, BorderLayout.NORTH);
            add(state, BorderLayout.CENTER);
        }

        @Override
        public Component getListCellRendererComponent(
                JList<? extends RackBike> list, RackBike row, int index, boolean isSelected, boolean hasFocus) {
            RackReading reading = store.reading(row);
            name.setText(row.name());
            state.setText(RackWords.state(row, reading));
            state.setForeground(reading.disagreements() > 0 || row.isUnread() ? look.caution() : look.soft());
            setBackground(isSelected ? look.wash() : look.paper());
            getAccessibleContext().setAccessibleName(row.name() + ", " + state.getText());
            return this;
        }
    }
}
