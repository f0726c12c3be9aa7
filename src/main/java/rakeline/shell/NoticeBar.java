package rakeline.shell;

import javax.swing.JButton;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;
import rakeline.shell.look.Look;
import rakeline.shell.look.Words;
import rakeline.shell.page.Bench;
import rakeline.shell.page.PageModel;

/** One sentence above the page until it is put away: why something was refused, or whether this page may run. */
final class NoticeBar extends JPanel implements Bench.View {
    private static final String MAY_IT_RUN =
            "Nothing in this file has run. A worksheet is code and can do what you can do.";

    private final transient Bench bench;
    private final JTextArea words;
    private final JButton run = new JButton("Run it");
    private final JButton leave = new JButton("Leave as is");
    private final JButton close = new JButton("Close");

    NoticeBar(Look look, Bench bench) {
        super(new MigLayout("insets " + look.space(2) + " " + look.space(4) + " " + look.space(2) + " " + look.space(4)
                + ", fillx, hidemode 3, nogrid"));
        this.bench = bench;
        words = Words.paragraph("", look.body(), look.ink());
        setBackground(look.wash());
        setBorder(look.line(0, 0, 1, 0));
        setName("notice");
        words.setName("notice words");
        run.setName("run it");
        add(words, "growx, pushx, wmin 0");
        add(run, "gapleft " + look.space(4));
        add(leave, "gapleft " + look.space(2));
        add(close, "gapleft " + look.space(4));
        run.addActionListener(event -> bench.allow());
        leave.addActionListener(event -> bench.leaveAlone());
        close.addActionListener(event -> bench.notice(""));
    }

    @Override
    public void show(PageModel now) {
        boolean asks = bench.asksToRun();
        boolean tells = !now.notice().isEmpty();
        words.setText(tells ? now.notice() : MAY_IT_RUN);
        run.setVisible(asks && !tells);
        leave.setVisible(asks && !tells);
        close.setVisible(tells);
        setVisible(tells || asks);
    }
}
