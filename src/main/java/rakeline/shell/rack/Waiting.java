package rakeline.shell.rack;

import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicReference;
import javax.swing.JButton;
import javax.swing.JPanel;
import javax.swing.JProgressBar;
import javax.swing.SwingUtilities;
import javax.swing.Timer;
import net.miginfocom.swing.MigLayout;
import rakeline.shell.look.Look;
import rakeline.shell.look.Words;
import rakeline.study.Progress;

/** How far what is computed is, with a key that calls it off; in sight where it takes longer than half a second. */
final class Waiting extends JPanel {
    static final int LONG_MS = 500;
    private static final int WHOLE = 1000;

    private final JProgressBar bar = new JProgressBar(0, WHOLE);
    private final JButton stop = new JButton("Stop comparing");
    private final Timer takesLong = new Timer(LONG_MS, event -> setVisible(true));
    private final transient AtomicReference<AtomicBoolean> goesOn = new AtomicReference<>(new AtomicBoolean());

    /** @param calledOff told when the person calls it off */
    Waiting(Look look, Runnable calledOff) {
        super(new MigLayout(
                "insets " + look.space(1) + " " + look.space(4) + " " + look.space(1) + " " + look.space(4),
                "[]" + look.space(2) + "[]" + look.space(3) + "[]"));
        setOpaque(false);
        takesLong.setRepeats(false);
        add(Words.line("Computing", look.softText(), look.ink()));
        add(bar, "w " + look.px(160) + "!, h " + look.px(4) + "!");
        bar.setName("rack progress");
        bar.getAccessibleContext().setAccessibleName("Progress");
        stop.setName("rack stop");
        stop.addActionListener(event -> {
            end();
            calledOff.run();
        });
        add(stop);
        setVisible(false);
    }

    JButton stopKey() {
        return stop;
    }

    /** Calls off what went on, and follows what is begun now. */
    Progress begin() {
        end();
        AtomicBoolean mine = new AtomicBoolean(true);
        goesOn.set(mine);
        bar.setValue(0);
        takesLong.restart();
        return share -> {
            SwingUtilities.invokeLater(() -> show(mine, share));
            return mine.get();
        };
    }

    private void show(AtomicBoolean whose, double share) {
        if (goesOn.get() == whose) {
            bar.setValue((int) (share * WHOLE));
        }
    }

    /** There is nothing to wait for any more. */
    void end() {
        goesOn.get().set(false);
        takesLong.stop();
        setVisible(false);
    }
}
