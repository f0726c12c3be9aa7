package rakeline.command;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;

/**
 * Ends a command in good order when its process is told to end, as by Ctrl+C: says so in one sentence, and gives work that
 * is under way the time to stop, so that no file is left half written. The process then ends with 128 and the signal's
 * number, 130 for Ctrl+C.
 */
final class Interruption implements AutoCloseable {
    private static final long PATIENCE_SECONDS = 2;

    private final CountDownLatch ended = new CountDownLatch(1);
    private final Runnable say;
    private final Thread hook = new Thread(this::interrupted, "interruption");
    private volatile boolean isAsked;

    /**
     * Listens until it is closed.
     *
     * @param say the sentence
     */
    Interruption(Runnable say) {
        this.say = say;
        try {
            Runtime.getRuntime().addShutdownHook(hook);
        } catch (IllegalStateException e) {
            // the process is ending already
            isAsked = true;
        }
    }

    /** Whether the process was told to end. */
    boolean isAsked() {
        return isAsked;
    }

    @Override
    public void close() {
        ended.countDown();
        try {
            Runtime.getRuntime().removeShutdownHook(hook);
        } catch (IllegalStateException e) {
            // the process is ending, and the hook with it
            isAsked = true;
        }
    }

    private void interrupted() {
        isAsked = true;
        say.run();
        try {
            ended.await(PATIENCE_SECONDS, TimeUnit.SECONDS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
