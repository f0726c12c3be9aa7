package rakeline.command;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import rakeline.quantity.Refusal;

/** A command's work and the way it ends: 0 done, 1 a row or check failed, 2 wrong use or unreadable input. */
abstract class Work implements Callable<Integer> {
    static final int DONE = 0;
    static final int FAILED = 1;
    static final int REFUSED = 2;

    private final Console console;
    private final List<String> notices = new ArrayList<>();

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

    @Override
    public final Integer call() {
        if (!opensWindow()) {
            System.setProperty("java.awt.headless", "true");
        }
        try {
            int code = work();
            notices.forEach(console::message);
            return code;
        } catch (Refusal refusal) {
            console.message(refusal.getMessage());
            return REFUSED;
        }
    }
}
