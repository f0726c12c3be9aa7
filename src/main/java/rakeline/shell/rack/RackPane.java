package rakeline.shell.rack;

import java.awt.BorderLayout;
import java.awt.CardLayout;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.KeyboardFocusManager;
import java.awt.event.ActionEvent;
import java.util.List;
import javax.swing.ButtonGroup;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JPopupMenu;
import javax.swing.JTable;
import javax.swing.JToggleButton;
import javax.swing.SwingUtilities;
import net.miginfocom.swing.MigLayout;
import rakeline.shell.look.Look;
import rakeline.shell.look.Pile;
import rakeline.shell.look.Words;
import rakeline.shell.page.Bench;

/** The rack as it stands in the window: its controls, its table, and bikes side by side. */
public final class RackPane extends JPanel implements RackStore.View {
    private static final String NUMBERS = "numbers";
    private static final String PAIRED = "paired";

    private final transient Look look;
    private final transient RackStore store;
    private final transient RackHand hand;
    private final RackNumbers numbers;
    private final SideBySide paired;
    private final JPanel cards = new JPanel(new CardLayout());
    private final JLabel summary;
    private final transient SeatChoice seat;
    private final JButton bikes = new JButton("Bikes…");
    private final JToggleButton numbersKey = new JToggleButton("Numbers");
    private final JToggleButton pairedKey = new JToggleButton("Side by side");

    public RackPane(Look look, Bench bench, RackStore store) {
        super(new BorderLayout());
        this.look = look;
        this.store = store;
        RackStock stock = new RackStock(bench, store);
        hand = new RackHand(look, store, stock, this);
        numbers = new RackNumbers(look, store, hand::rename);
        paired = new SideBySide(look, store, stock, this::selected, this::reveal);
        seat = new SeatChoice(store);
        summary = Words.line("", look.softText(), look.soft());
        summary.setName("rack summary");
        setBackground(look.paper());
        getAccessibleContext().setAccessibleName("Rack");
        cards.setOpaque(false);
        cards.add(numbers, NUMBERS);
        cards.add(paired, PAIRED);
        add(head(), BorderLayout.NORTH);
        add(cards, BorderLayout.CENTER);
        numbers.table().setTransferHandler(new RackTransfer(hand, numbers.table()));
        setTransferHandler(new RackTransfer(hand, numbers.table()));
        seat.listRiders();
        store.watch(this);
    }

    /** What can be done on the rack. */
    public RackHand hand() {
        return hand;
    }

    private Pile head() {
        Lines line = new Lines(look);
        line.add(Words.line("Rack", look.strong(), look.ink()));
        line.add(summary);
        readyBikes();
        line.add(bikes);
        line.add(key("Columns…", hand::chooseColumns));
        seat.putIn(line);
        line.add(key("Compare", hand::compare));
        line.add(key("Match", hand::match));
        turnKeys(line);
        Pile head = new Pile(0);
        head.add(line);
        return head;
    }

    private JButton key(String words, Runnable work) {
        JButton button = new JButton(words);
        button.setName("rack " + words);
        button.addActionListener(event -> work.run());
        return button;
    }

    private void readyBikes() {
        bikes.setName("rack bikes");
        bikes.addActionListener(event -> {
            JPopupMenu menu = new JPopupMenu();
            hand.onBikes()
                    .forEach(deed -> menu.add(deed.words())
                            .addActionListener(chosen -> deed.work().run()));
            menu.show(bikes, 0, bikes.getHeight());
        });
    }

    private void turnKeys(Lines line) {
        ButtonGroup group = new ButtonGroup();
        JPanel both = new JPanel(new MigLayout("insets 0", "[]0[]"));
        both.setOpaque(false);
        for (JToggleButton key : List.of(numbersKey, pairedKey)) {
            group.add(key);
            key.setName("rack " + key.getText());
            key.addItemListener(event -> turn());
            both.add(key);
        }
        line.add(both);
        numbersKey.setSelected(true);
    }

    private void turn() {
        ((CardLayout) cards.getLayout()).show(cards, numbersKey.isSelected() ? NUMBERS : PAIRED);
        paired.refresh();
    }

    private void reveal() {
        pairedKey.setSelected(true);
        turn();
    }

    @Override
    public void listAgain() {
        seat.listRiders();
        paired.listParts();
    }

    @Override
    public void showRack() {
        seat.refresh();
        numbers.refresh();
        paired.refresh();
        String words = words();
        if (!summary.getText().equals(words)) {
            summary.setText(words);
            revalidate();
        }
    }

    private String words() {
        List<RackBike> rows = store.rows();
        long apart = rows.stream()
                .filter(row -> store.reading(row).disagreements() > 0)
                .count();
        String count = rows.isEmpty() ? "no bike" : RackPages.counted(rows.size());
        return apart == 0 ? count : count + ", charts that disagree: " + apart;
    }

    List<RackBike> selected() {
        return numbers.selected();
    }

    /** The cell that a paste begins at. */
    int[] cell() {
        return new int[] {
            Math.max(0, numbers.table().getSelectedRow()),
            Math.max(0, numbers.table().getSelectedColumn())
        };
    }

    void compare() {
        leave();
        paired.compare();
    }

    void match() {
        leave();
        paired.match();
    }

    /** Ends what is typed in a cell; false where it cannot stand there. */
    public boolean leave() {
        return !numbers.table().isEditing() || numbers.table().getCellEditor().stopCellEditing();
    }

    /** Goes to the table; while that is empty, to where it is filled. */
    public void enter() {
        numbersKey.setSelected(true);
        turn();
        boolean isEmpty = numbers.table().getRowCount() == 0;
        if (!isEmpty && numbers.table().getSelectedRow() < 0) {
            numbers.table().changeSelection(0, 0, false, false);
        }
        (isEmpty ? bikes : numbers.table()).requestFocusInWindow();
    }

    /** Goes to the first number of the last bike, so that what is typed next is that bike's. */
    void enterLast() {
        enter();
        numbers.table().changeSelection(numbers.table().getRowCount() - 1, 0, false, false);
    }

    /** Whether the focus is on it, also while a menu is open. */
    public boolean isAtHand() {
        Component owner = KeyboardFocusManager.getCurrentKeyboardFocusManager().getPermanentFocusOwner();
        return owner != null && SwingUtilities.isDescendingFrom(owner, this);
    }

    /** Cuts, copies, pastes or selects in the table while the focus is here; whether it is. */
    public boolean edit(String action) {
        boolean here = isAtHand();
        if (here) {
            JTable table = numbers.table();
            table.getActionMap()
                    .get(action)
                    .actionPerformed(new ActionEvent(table, ActionEvent.ACTION_PERFORMED, action));
        }
        return here;
    }

    @Override
    public Dimension getMinimumSize() {
        return new Dimension(look.px(320), look.px(90));
    }
}
