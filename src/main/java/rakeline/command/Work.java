package rakeline.command;

import java.util.concurrent.Callable;
import rakeline.quantity.Refusal;

/** A command's work and the way it ends: 0 done, 1 a row or check failed, 2 wrong use or unreadable input. */
abstract class Work implements Callable<Integer> {
    static final int DONE = 0;
    static final int FAILED = 1;
    static final int REFUSED = 2;

    private final Console console;

    Work(Console console) {
        this.console = console;
    }

    final Console console() {
        return console;
    }

    /** Does it; a {@link Refusal} becomes one sentence on standard error. */
    abstract int work();

    @Override
    public final Integer call() {
        try {
            return work();
        } catch (Refusal refusal) {
            console.message(refusal.getMessage());
            return REFUSED;
        }
    }
}
