package rakeline.shell.guide;

import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.Window;
import java.util.List;
import java.util.Optional;
import javax.swing.BorderFactory;
import javax.swing.DefaultListModel;
import javax.swing.JComponent;
import javax.swing.JDialog;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JSplitPane;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import javax.swing.ListSelectionModel;
import javax.swing.SwingUtilities;
import rakeline.shell.figures.FigureView;
import rakeline.shell.ledger.CodeHelp;
import rakeline.shell.ledger.NotePane;
import rakeline.shell.look.Fit;
import rakeline.shell.look.Look;
import rakeline.shell.look.TextChange;
import rakeline.shell.look.WideList;

/** The help: a list that can be searched, and beside it what is known of the entry chosen, with its drawing. */
public final class Guide {
    private static final int DRAWING_WIDTH = 420;
    private static final int DRAWING_HEIGHT = 240;

    private final JDialog dialog;
    private final List<Topic> topics;
    private final DefaultListModel<Topic> found = new DefaultListModel<>();
    private final JList<Topic> list = new WideList<>(found);
    private final JTextField search = new JTextField();
    private final NotePane page;
    private final FigureView drawing;
    private final JPanel room = new JPanel(new BorderLayout());

    private Guide(Window over, Look look, CodeHelp help) {
        topics = Topic.all(help);
        dialog = new JDialog(over, "Help");
        dialog.setName("guide");
        page = new NotePane(look);
        drawing = new FigureView(look);
        build(look);
    }

    /** Opens the help over a window, at a topic; an unknown one is searched for. */
    public static Guide open(Component over, Look look, CodeHelp help, String topic) {
        Guide guide = new Guide(SwingUtilities.getWindowAncestor(over), look, help);
        Fit.over(over, guide.dialog, look.px(760), look.px(560));
        guide.go(topic);
        guide.dialog.setVisible(true);
        return guide;
    }

    /** Whether an entry is called so. */
    public boolean knows(String name) {
        return topics.stream().anyMatch(topic -> topic.isCalled(name));
    }

    /** Shows what Java says of a word. */
    public void tell(String word, List<String> lines) {
        if (!lines.isEmpty()) {
            list.clearSelection();
            show(Topic.word(word, lines));
        }
    }

    private void build(Look look) {
        JPanel side = new JPanel(new BorderLayout(0, look.space(2)));
        side.setBorder(look.room(3, 3, 3, 2));
        side.setBackground(look.paper());
        search.setName("search help");
        search.getAccessibleContext().setAccessibleName("Search the help");
        search.putClientProperty("JTextField.placeholderText", "Search");
        list.setName("topics");
        list.setBackground(look.paper());
        list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        list.getAccessibleContext().setAccessibleName("Entries");
        side.add(search, BorderLayout.NORTH);
        side.add(plain(list, look), BorderLayout.CENTER);
        page.setBorder(look.room(4, 5, 4, 5));
        page.setOpaque(true);
        page.setBackground(look.card());
        page.setFocusable(true);
        page.setName("topic");
        JSplitPane both = new JSplitPane(JSplitPane.HORIZONTAL_SPLIT, side, entry(look));
        both.setBorder(null);
        both.setDividerLocation(look.px(270));
        dialog.setContentPane(both);
        listen();
    }

    /** What is known of the chosen entry, and beneath it, always in sight, what it looks like. */
    private JPanel entry(Look look) {
        drawing.setName("topic drawing");
        drawing.setVisible(false);
        drawing.setPreferredSize(new Dimension(look.px(DRAWING_WIDTH), look.px(DRAWING_HEIGHT)));
        room.setVisible(false);
        room.setBorder(BorderFactory.createCompoundBorder(look.line(1, 0, 0, 0), look.room(2, 5, 4, 5)));
        room.setBackground(look.card());
        room.add(drawing, BorderLayout.CENTER);
        JPanel entry = new JPanel(new BorderLayout());
        entry.setBackground(look.card());
        entry.add(plain(page, look), BorderLayout.CENTER);
        entry.add(room, BorderLayout.SOUTH);
        return entry;
    }

    private static JScrollPane plain(JComponent shown, Look look) {
        JScrollPane scroll = new JScrollPane(shown);
        scroll.setBorder(null);
        scroll.getVerticalScrollBar().setUnitIncrement(look.space(8));
        return scroll;
    }

    private void listen() {
        list.addListSelectionListener(
                event -> Optional.ofNullable(list.getSelectedValue()).ifPresent(this::show));
        dialog.getRootPane()
                .registerKeyboardAction(
                        event -> dialog.dispose(), KeyStroke.getKeyStroke("ESCAPE"), JComponent.WHEN_IN_FOCUSED_WINDOW);
        search.addActionListener(event -> list.requestFocusInWindow());
        TextChange.in(search, this::find);
    }

    private void show(Topic topic) {
        page.show(topic.text());
        page.setCaretPosition(0);
        page.getAccessibleContext().setAccessibleName(topic.title());
        topic.drawing().ifPresent(drawing::show);
        drawing.setVisible(topic.drawing().isPresent());
        room.setVisible(topic.drawing().isPresent());
        SwingUtilities.invokeLater(() -> page.scrollRectToVisible(new java.awt.Rectangle(0, 0, 1, 1)));
    }

    private void find() {
        found.clear();
        Topic.find(topics, search.getText()).forEach(found::addElement);
        if (!found.isEmpty()) {
            list.setSelectedIndex(0);
        }
    }

    private void go(String name) {
        Optional<Topic> known =
                topics.stream().filter(topic -> topic.isCalled(name)).findFirst();
        search.setText(known.isPresent() ? "" : name);
        find();
        if (found.isEmpty()) {
            search.setText("");
            find();
        }
        known.ifPresent(topic -> list.setSelectedValue(topic, true));
    }
}
