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
final class RackNames extends JList<RackRow> {
    private final transient Look look;
    private final transient RackDesk desk;

    /** The names as the rack has them now. */
    private static final class Rows extends AbstractListModel<RackRow> {
        private final transient RackDesk desk;
        private int size;

        Rows(RackDesk desk) {
            this.desk = desk;
        }

        @Override
        public int getSize() {
            return desk.model().rows().size();
        }

        @Override
        public RackRow getElementAt(int index) {
            return desk.model().rows().get(index);
        }

        void changed() {
            int now = getSize();
            fireContentsChanged(this, 0, Math.max(size, now));
            size = now;
        }
    }

    RackNames(Look look, RackDesk desk, RackTable table, Runnable rename) {
        super(new Rows(desk));
        this.look = look;
        this.desk = desk;
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
        RackRow row = getModel().getElementAt(index);
        return RackWords.whole(row, desk.reading(row), desk.model().lengths());
    }

    /** A name over its state. */
    private final class NameView extends JPanel implements ListCellRenderer<RackRow> {
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
                JList<? extends RackRow> list, RackRow row, int index, boolean isSelected, boolean hasFocus) {
            RackReading reading = desk.reading(row);
            name.setText(row.name());
            state.setText(RackWords.state(row, reading));
            state.setForeground(reading.disagreements() > 0 || row.isUnread() ? look.caution() : look.soft());
            setBackground(isSelected ? look.wash() : look.paper());
            getAccessibleContext().setAccessibleName(row.name() + ", " + state.getText());
            return this;
        }
    }
}
