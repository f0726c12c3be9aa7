package rakeline.shell.find;

import java.awt.event.ActionEvent;
import java.util.List;
import javax.swing.AbstractAction;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import net.miginfocom.swing.MigLayout;
import rakeline.shell.ledger.Ledger;
import rakeline.shell.look.Look;
import rakeline.shell.look.TextChange;
import rakeline.shell.look.Words;
import rakeline.shell.page.Bench;
import rakeline.shell.page.PageModel;
import rakeline.worksheet.Search;
import rakeline.worksheet.Worksheet;

/** Finds words in all rows of the page, and replaces them. */
public final class FindBar extends JPanel implements Bench.View {
    private static final int COLUMNS = 16;

    private final transient Bench bench;
    private final transient Ledger ledger;
    private final JTextField wanted = new JTextField(COLUMNS);
    private final JTextField other = new JTextField(COLUMNS);
    private final JCheckBox capitals = new JCheckBox("Match case");
    private final JLabel count;
    private int at = -1;

    public FindBar(Look look, Bench bench, Ledger ledger) {
        super(new MigLayout("insets " + look.space(2) + " " + look.space(4) + " " + look.space(2) + " " + look.space(4)
                + ", fillx, hidemode 3, nogrid"));
        this.bench = bench;
        this.ledger = ledger;
        count = Words.line("", look.softText(), look.soft());
        name();
        setBackground(look.wash());
        setBorder(look.line(0, 0, 1, 0));
        setVisible(false);
        capitals.setOpaque(false);
        add(Words.line("Find", look.body(), look.ink()), "sg label");
        add(wanted);
        add(key("Next", () -> step(1)));
        add(key("Previous", () -> step(-1)));
        add(count);
        add(capitals, "wrap");
        add(Words.line("Replace with", look.body(), look.ink()), "sg label");
        add(other);
        add(key("Replace", this::replace));
        add(key("Replace all", this::replaceAll));
        add(key("Close", this::close), "pushx, alignx right");
        listen();
    }

    private void name() {
        setName("find bar");
        wanted.setName("find");
        other.setName("replace by");
        count.setName("found");
        wanted.getAccessibleContext().setAccessibleName("Find");
        other.getAccessibleContext().setAccessibleName("Replace with");
    }

    private static JButton key(String words, Runnable work) {
        JButton key = new JButton(words);
        key.setName(words.toLowerCase(java.util.Locale.ROOT));
        key.addActionListener(event -> work.run());
        return key;
    }

    private void listen() {
        wanted.addActionListener(event -> step(1));
        other.addActionListener(event -> replace());
        capitals.addActionListener(event -> search());
        bind("shift ENTER", () -> step(-1));
        bind("ESCAPE", this::close);
        TextChange.in(wanted, this::search);
    }

    private void bind(String key, Runnable work) {
        getInputMap(JComponent.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT).put(KeyStroke.getKeyStroke(key), key);
        getActionMap().put(key, new AbstractAction() {
            @Override
            public void actionPerformed(ActionEvent event) {
                work.run();
            }
        });
    }

    /** Opens the bar, or goes to its field. */
    public void open() {
        setVisible(true);
        wanted.requestFocusInWindow();
        wanted.selectAll();
        count();
    }

    private void close() {
        setVisible(false);
        at = -1;
        ledger.pointNowhere();
        ledger.leaveText();
    }

    private Search sought() {
        return new Search(wanted.getText(), capitals.isSelected());
    }

    private List<Search.Hit> hits() {
        return sought().in(bench.model().page());
    }

    private void search() {
        at = -1;
        step(1);
    }

    /** To the next place, round the end of the page. */
    public void step(int by) {
        List<Search.Hit> hits = hits();
        if (!hits.isEmpty()) {
            at = Math.floorMod(at < 0 && by < 0 ? -1 : at + by, hits.size());
            ledger.point(hits.get(at));
        } else {
            ledger.pointNowhere();
        }
        count();
    }

    private void count() {
        int found = hits().size();
        String place = at >= 0 && at < found ? at + 1 + " of " + found : found + " found";
        count.setText(wanted.getText().isEmpty() ? "" : found == 0 ? "not on this page" : place);
    }

    private void replace() {
        List<Search.Hit> hits = hits();
        if (at >= 0 && at < hits.size()) {
            Search.Hit hit = hits.get(at);
            bench.act("replaced", page -> Search.replace(page, hit, other.getText()));
            at--;
        }
        step(1);
    }

    private void replaceAll() {
        int found = hits().size();
        Search sought = sought();
        bench.act("replaced in " + found + " places", page -> sought.replaceAll(page, other.getText()));
        at = -1;
        count();
    }

    /** In Read there is no code to find words in. */
    @Override
    public void show(PageModel now) {
        if (isVisible()) {
            setVisible(now.view() == Worksheet.View.WRITE);
            count();
        }
    }
}
