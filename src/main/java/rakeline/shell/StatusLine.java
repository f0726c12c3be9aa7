package rakeline.shell;

import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JProgressBar;
import javax.swing.Timer;
import net.miginfocom.swing.MigLayout;
import rakeline.engine.State;
import rakeline.shell.look.Look;
import rakeline.shell.look.Words;
import rakeline.shell.page.Bench;
import rakeline.shell.page.DialEffect;
import rakeline.shell.page.PageModel;

/** How many rows stand in which state, what changed last, and how far a long run is. */
final class StatusLine extends JPanel implements Bench.View {
    private static final int LONG_MS = 500;
    private static final int SECOND_MS = 1000;

    /** From so many seconds on it is said how long a run has taken, so that one long row does not look as if nothing went on. */
    private static final long SAID_S = 2;

    private final JLabel counts;
    private final JLabel said;
    private final JLabel running;
    private final JProgressBar bar = new JProgressBar();
    private final Timer takesLong = new Timer(LONG_MS, event -> showProgress(true));
    private final Timer goesOn = new Timer(SECOND_MS, event -> showProgress(true));
    private PageModel.Progress progress = new PageModel.Progress(0, 0);
    private long began;

    StatusLine(Look look) {
        super(new MigLayout(
                "insets " + look.space(1) + " " + look.space(4) + " " + look.space(1) + " " + look.space(4)
                        + ", fillx, hidemode 3",
                "[]" + look.space(6) + "[grow, shrinkprio 200]" + look.space(4) + "[]" + look.space(2) + "[]"));
        counts = Words.line("", look.softText(), look.soft());
        said = Words.line("", look.softText(), look.soft());
        running = Words.line("", look.softText(), look.ink());
        counts.setName("counts");
        said.setName("said");
        running.setName("running");
        takesLong.setRepeats(false);
        setBackground(look.paper());
        setBorder(look.line(1, 0, 0, 0));
        add(counts);
        add(said, "growx, wmin 0");
        add(running);
        add(bar, "w " + look.px(120) + "!, h " + look.px(4) + "!");
        bar.getAccessibleContext().setAccessibleName("Progress");
        showProgress(false);
    }

    private void showProgress(boolean shown) {
        running.setText(words(progress, TimeUnit.NANOSECONDS.toSeconds(System.nanoTime() - began)));
        bar.setMaximum(progress.total());
        bar.setValue(progress.done());
        running.setVisible(shown);
        bar.setVisible(shown);
    }

    static String words(PageModel.Progress progress, long seconds) {
        String rows =
                "Running: " + progress.done() + " of " + progress.total() + (progress.total() == 1 ? " row" : " rows");
        return seconds < SAID_S ? rows : rows + ", " + seconds + " s";
    }

    @Override
    public void show(PageModel now) {
        counts.setText(counts(now));
        said.setText(said(now));
        now.progress().ifPresentOrElse(this::advance, this::rest);
    }

    private void advance(PageModel.Progress now) {
        progress = now;
        if (bar.isVisible()) {
            showProgress(true);
        } else if (!takesLong.isRunning()) {
            began = System.nanoTime();
            takesLong.start();
            goesOn.restart();
        }
    }

    private void rest() {
        takesLong.stop();
        goesOn.stop();
        showProgress(false);
    }

    @Override
    public void removeNotify() {
        rest();
        super.removeNotify();
    }

    private static String counts(PageModel now) {
        Map<State, Long> counts = now.counts();
        Stream<String> states = counts.entrySet().stream()
                .map(entry -> entry.getValue() + " " + entry.getKey().words());
        int rows = now.rows().size();
        return Stream.concat(Stream.of(rows + (rows == 1 ? " row" : " rows")), states)
                .collect(Collectors.joining(" · "));
    }

    private static String said(PageModel now) {
        return now.said()
                + now.controls().stream()
                        .filter(control -> now.said().startsWith(control.label() + " "))
                        .findFirst()
                        .flatMap(dial -> DialEffect.of(now, dial))
                        .map(measure -> " → " + measure)
                        .orElse("");
    }
}
