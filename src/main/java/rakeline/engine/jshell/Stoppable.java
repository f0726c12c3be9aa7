package rakeline.engine.jshell;

import java.io.IOException;
import java.util.function.Supplier;

/**
 * Lets a stop fall into a snippet, and nowhere else. The host throws a {@link Halted} into the thread that it finds
 * named here, while the whole process stands still; it may come up a moment later, so that whatever must not be hit
 * waits for one that is under way.
 */
final class Stoppable {
    /** The thread that may be stopped now, else null; the host reads it through the debugger, by this name. */
    private static volatile Thread running;

    /** Whether a stop was thrown; the host sets it through the debugger, by this name, before it throws. */
    private static volatile boolean thrown;

    /** Work that must not be broken off. */
    interface Whole {
        void go() throws IOException;
    }

    private Stoppable() {}

    /** Does work that may be broken off; gives {@code stopped} if it was, be it at its very end. */
    static <T> T run(Supplier<T> work, T stopped) {
        thrown = false;
        try {
            return heard(work, stopped);
        } catch (Halted e) {
            // another stop, which fell where the one before it was being heard
            running = null;
            absorb();
            return stopped;
        }
    }

    private static <T> T heard(Supplier<T> work, T stopped) {
        T result = stopped;
        try {
            running = Thread.currentThread();
            T done = work.get();
            running = null;
            letFall();
            result = done;
        } catch (Halted e) {
            running = null;
            absorb();
        }
        return result;
    }

    /** Does something whole: the host does not stop it half way. */
    static void unstopped(Whole work) throws IOException {
        Thread before = running;
        if (before != Thread.currentThread()) {
            work.go();
            return;
        }
        running = null;
        try {
            letFall();
            work.go();
        } finally {
            running = before;
        }
    }

    /** A stop that was thrown and has not come up yet comes up here, since Java looks for it when a sleep ends. */
    private static void letFall() {
        if (thrown) {
            try {
                Thread.sleep(1);
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            }
        }
    }

    private static void absorb() {
        try {
            letFall();
        } catch (Halted e) {
            // a second one, thrown before the first was heard: the work has been broken off already
            return;
        }
    }
}
