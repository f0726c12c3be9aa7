package rakeline.command;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicReference;
import picocli.CommandLine.Command;
import rakeline.quantity.Refusal;
import rakeline.study.Progress;

/**
 * A command's work and the way it ends: 0 done, 1 a row or check failed, 2 wrong use or unreadable input, 130 stopped by
 * Ctrl+C.
 */
abstract class Work implements Callable<Integer> {
    static final int DONE = 0;
    static final int FAILED = 1;
    static final int REFUSED = 2;
    static final int STOPPED = 130;

    private final Console console;
    private final List<String> notices = new ArrayList<>();
    private final AtomicReference<ProgressLine> progress = new AtomicReference<>();

    Work(Console console) {
        this.console = console;
    }

    final Console console() {
        return console;
    }

    /** Says a sentence beside what is done; a command that is refused says the refusal alone. */
    final void notice(String sentence) {
        notices.add(sentence);
    }

    /** Whether it opens a window; all else is done without a display, whatever the surroundings say of one. */
    boolean opensWindow() {
        return false;
    }

    /** Does it; a {@link Refusal} becomes one sentence on standard error. */
    abstract int work();

    /** Shows on a terminal how far a long study is, and ends it where someone asks for that. */
    final Progress progress() {
        return progress.get();
    }

    @Override
    public final Integer call() {
        if (opensWindow()) {
            return done();
        }
        System.setProperty("java.awt.headless", "true");
        try (Interruption interruption = new Interruption(this::sayStopped)) {
            progress.set(new ProgressLine(
                    name(), console.messages(), console.watched(), System::nanoTime, interruption::isAsked));
            return done();
        } catch (CancellationException e) {
            // told to stop: what was found so far is nothing to give
            return STOPPED;
        }
    }

    private int done() {
        try {
            int code = work();
            notices.forEach(console::message);
            return code;
        } catch (Refusal refusal) {
            clearLine();
            console.message(refusal.getMessage());
            return REFUSED;
        }
    }

    private void sayStopped() {
        clearLine();
        console.message(name() + " was stopped before it was done; no file is left half written.");
    }

    private void clearLine() {
        if (progress.get() != null) {
            progress.get().clear();
        }
    }

    private String name() {
        return getClass().getAnnotation(Command.class).name();
    }
}
