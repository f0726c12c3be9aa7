package rakeline.shell;

import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.event.KeyEvent;
import java.util.Arrays;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;
import javax.swing.BorderFactory;
import javax.swing.ButtonGroup;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JSplitPane;
import javax.swing.JToggleButton;
import javax.swing.KeyStroke;
import javax.swing.ScrollPaneConstants;
import javax.swing.SwingConstants;
import javax.swing.SwingUtilities;
import rakeline.shell.dials.DialStrip;
import rakeline.shell.find.FindBar;
import rakeline.shell.ledger.CodeHelp;
import rakeline.shell.ledger.Ledger;
import rakeline.shell.look.Look;
import rakeline.shell.look.Pile;
import rakeline.shell.page.Bench;
import rakeline.shell.rack.RackPane;
import rakeline.shell.rack.RackStore;

/** All that stands in the window, in one look: where there is room side by side, else with keys and tabs. */
final class Face extends JPanel {
    /** Below this width the shelf folds to a key and the drawing becomes a tab, in pixels at scale 1. */
    private static final int WIDE = 1500;

    /** Below this height one line of dials is in sight instead of two, in pixels at scale 1. */
    private static final int LOW = 540;

    private final transient Look look;
    private final TitleBar title;
    private final Shelf shelf;
    private final Ledger ledger;
    private final FindBar finds;
    private final DialStrip strip;
    private final JScrollPane page;
    private final SidePane side;
    private final RackPane rack;
    private final JSplitPane split;
    private final JSplitPane halves;
    private final JButton rackKey;
    private final JPanel tabs;
    private final JToggleButton pageTab = new JToggleButton("Page");
    private final JToggleButton drawingTab = new JToggleButton("Drawing");
    private final JToggleButton rackTab = new JToggleButton("Rack");
    private boolean shelfOpen;
    private boolean sideOpen = true;
    private boolean rackOpen;
    private boolean wide;

    Face(
            Look look,
            Bench bench,
            CodeHelp help,
            RackStore desk,
            Runnable turnRack,
            Consumer<Shelf.Item> open,
            Runnable showFigure) {
        super(new BorderLayout());
        this.look = look;
        title = new TitleBar(look, bench, this::toggleShelf, showFigure);
        shelf = new Shelf(look, open);
        ledger = new Ledger(look, bench, help);
        finds = new FindBar(look, bench, ledger);
        page = scrolled(ledger, look);
        side = new SidePane(look);
        rack = new RackPane(look, bench, desk);
        rackKey = rackKey(turnRack);
        tabs = tabs();
        split = split();
        halves = halves();
        strip = DialStrip.above(look, bench);
        NoticeBar notice = new NoticeBar(look, bench);
        StatusLine status = new StatusLine(look);
        setBackground(look.paper());
        add(title, BorderLayout.NORTH);
        add(shelf, BorderLayout.WEST);
        add(middle(notice), BorderLayout.CENTER);
        add(status, BorderLayout.SOUTH);
        bench.watch(title);
        bench.watch(shelf);
        bench.watch(strip);
        bench.watch(notice);
        bench.watch(ledger);
        bench.watch(finds);
        bench.watch(side);
        bench.watch(status);
        arrange(true);
    }

    private static JScrollPane scrolled(Ledger ledger, Look look) {
        JScrollPane scroll = new JScrollPane(
                ledger, ScrollPaneConstants.VERTICAL_SCROLLBAR_ALWAYS, ScrollPaneConstants.HORIZONTAL_SCROLLBAR_NEVER);
        scroll.setBorder(null);
        scroll.getViewport().setBackground(look.paper());
        scroll.getVerticalScrollBar().setUnitIncrement(look.space(8));
        return scroll;
    }

    private JPanel middle(NoticeBar notice) {
        Pile above = new Pile(0);
        above.add(notice);
        above.add(strip);
        above.add(finds);
        above.add(tabs);
        JPanel middle = new JPanel(new BorderLayout());
        middle.setOpaque(false);
        middle.add(above, BorderLayout.NORTH);
        middle.add(halves, BorderLayout.CENTER);
        middle.add(rackKey, BorderLayout.SOUTH);
        return middle;
    }

    private JPanel tabs() {
        JPanel line = new JPanel(new java.awt.FlowLayout(java.awt.FlowLayout.LEADING, look.space(1), 0));
        line.setBackground(look.paper());
        line.setBorder(BorderFactory.createCompoundBorder(look.line(0, 0, 1, 0), look.room(0, 3, 0, 3)));
        ButtonGroup group = new ButtonGroup();
        pageTab.setSelected(true);
        for (JToggleButton tab : new JToggleButton[] {pageTab, drawingTab, rackTab}) {
            tab.putClientProperty("JButton.buttonType", "tab");
            tab.putClientProperty(
                    "FlatLaf.style",
                    "tab.underlineColor: " + look.hexAccent()
                            + "; tab.selectedBackground: null; tab.underlineHeight: 2");
            tab.addItemListener(event -> arrange(false));
            group.add(tab);
            line.add(tab);
        }
        return line;
    }

    private JSplitPane split() {
        JSplitPane both = new JSplitPane(JSplitPane.HORIZONTAL_SPLIT, page, side);
        both.getInputMap(JComponent.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT)
                .put(KeyStroke.getKeyStroke(KeyEvent.VK_F8, 0), "left to the page");
        both.setBorder(null);
        both.setResizeWeight(0.66);
        both.setContinuousLayout(true);
        page.setMinimumSize(new Dimension(look.px(400), 0));
        side.setMinimumSize(new Dimension(look.px(240), 0));
        return both;
    }

    private JSplitPane halves() {
        JSplitPane both = new JSplitPane(JSplitPane.VERTICAL_SPLIT, split, rack);
        both.getInputMap(JComponent.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT)
                .put(KeyStroke.getKeyStroke(KeyEvent.VK_F8, 0), "left to the page");
        both.setBorder(null);
        both.setResizeWeight(0.6);
        both.setContinuousLayout(true);
        split.setMinimumSize(new Dimension(0, look.px(160)));
        return both;
    }

    /** Where there is room for the rack beneath the page and it is closed, one line says that it is there. */
    private JButton rackKey(Runnable turnRack) {
        JButton key = new JButton("Rack: the bikes at hand");
        key.setName("rack key");
        key.putClientProperty("JButton.buttonType", "borderless");
        key.setFont(look.softText());
        key.setHorizontalAlignment(SwingConstants.LEADING);
        key.addActionListener(event -> turnRack.run());
        return key;
    }

    RackPane rack() {
        return rack;
    }

    boolean isRackOpen() {
        return wide ? rackOpen : rackTab.isSelected();
    }

    /** Opens the rack beneath the page, or closes it; where it is a tab, goes to it or back. */
    void openRack(boolean open) {
        rackOpen = open;
        if (!wide && open != rackTab.isSelected()) {
            (open ? rackTab : pageTab).setSelected(true);
        }
        arrange(false);
        halves.resetToPreferredSizes();
    }

    Ledger ledger() {
        return ledger;
    }

    FindBar finds() {
        return finds;
    }

    Shelf shelf() {
        return shelf;
    }

    /**
     * What a person has open and is looking at, so that another face shows the same.
     *
     * @param focus the name of the part that has the keys, or none
     */
    record Stand(
            boolean wide,
            boolean shelfOpen,
            boolean sideOpen,
            boolean drawing,
            Ledger.Sight sight,
            Optional<String> focus) {}

    /** @param focused the part that had the keys last, but for menus */
    Stand stand(Optional<Component> focused) {
        Optional<String> focus = focused.map(Component::getName);
        return new Stand(wide, shelfOpen, sideOpen, drawingTab.isSelected(), ledger.sight(focused), focus);
    }

    /** Shows what another face showed; to be called once this one is laid out. */
    void take(Stand before) {
        if (wide == before.wide()) {
            shelfOpen = before.shelfOpen();
        }
        sideOpen = before.sideOpen();
        if (before.drawing()) {
            drawingTab.setSelected(true);
        }
        arrange(false);
        validate();
        ledger.look(before.sight());
        if (!ledger.typeOn(before.sight())) {
            before.focus().flatMap(this::named).ifPresentOrElse(Component::requestFocusInWindow, ledger::leaveText);
        }
        SwingUtilities.invokeLater(() -> ledger.look(before.sight()));
    }

    private Optional<Component> named(String name) {
        return parts(this).filter(part -> name.equals(part.getName())).findFirst();
    }

    private static Stream<Component> parts(Container whole) {
        return Arrays.stream(whole.getComponents())
                .flatMap(part -> Stream.concat(
                        Stream.of(part), part instanceof Container inner ? parts(inner) : Stream.empty()));
    }

    /** Lets the author type in the selected row, also where something else stood in the page's place. */
    void write() {
        if (!wide) {
            pageTab.setSelected(true);
        }
        ledger.editSelected();
    }

    /** Opens the shelf and goes to it, or closes it. */
    void toggleShelf() {
        shelfOpen = !shelfOpen;
        arrange(false);
        if (shelfOpen) {
            shelf.enter();
        } else {
            ledger.leaveText();
        }
    }

    /** Goes to the first dial or picker. */
    void goToDials() {
        strip.first().ifPresent(Component::requestFocusInWindow);
    }

    /** Whether a part of the window, or none, stands in the rack. */
    boolean isInRack(Component part) {
        return part != null && SwingUtilities.isDescendingFrom(part, rack);
    }

    /**
     * Where the rack is in sight in the page's place, the keys are its.
     *
     * @param inRack whether they are its also beneath the page
     */
    void keepKeys(boolean inRack) {
        if (rack.isShowing() && (inRack || !page.isShowing())) {
            rack.enter();
        }
    }

    /** Shows or hides the drawing beside the page; where it is a tab, goes to it or back. */
    void toggleDrawing() {
        if (wide) {
            sideOpen = !sideOpen;
        } else {
            (drawingTab.isSelected() ? pageTab : drawingTab).setSelected(true);
        }
        arrange(false);
        if (side.isVisible()) {
            side.enter();
        } else {
            ledger.leaveText();
        }
    }

    @Override
    public void setBounds(int x, int y, int width, int height) {
        super.setBounds(x, y, width, height);
        arrange(false);
    }

    private void arrange(boolean anew) {
        boolean nowWide = getWidth() >= look.px(WIDE);
        boolean turned = nowWide != wide || anew;
        wide = nowWide;
        shelfOpen = turned ? wide : shelfOpen;
        shelf.setVisible(shelfOpen);
        title.showShelfKey(!wide, shelfOpen);
        tabs.setVisible(!wide);
        arrangeSplit(turned);
        strip.inSight(getHeight() < look.px(LOW) ? 1 : 2);
        ledger.setWide(wide);
        revalidate();
    }

    private void arrangeSplit(boolean turned) {
        boolean sideShown = wide ? sideOpen : drawingTab.isSelected();
        boolean appears = sideShown && !side.isVisible();
        page.setVisible(wide || pageTab.isSelected());
        side.setVisible(sideShown);
        arrangeRack();
        split.setDividerSize(wide && sideOpen ? look.px(5) : 0);
        if (wide && (turned || appears)) {
            split.resetToPreferredSizes();
        }
    }

    private void arrangeRack() {
        boolean shown = isRackOpen();
        split.setVisible(wide || !rackTab.isSelected());
        rack.setVisible(shown);
        rackKey.setVisible(wide && !rackOpen);
        halves.setDividerSize(wide && rackOpen ? look.px(5) : 0);
    }
}
