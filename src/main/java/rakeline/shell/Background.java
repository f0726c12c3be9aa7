package rakeline.shell;

import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javax.swing.SwingUtilities;
import rakeline.quantity.Refusal;

/** Work that may take a while, off the event thread, one piece after the other; what comes of it is told on the event thread. */
final class Background {
    private final ExecutorService thread = Executors.newSingleThreadExecutor(Background::named);

    private static Thread named(Runnable work) {
        Thread thread = new Thread(work, "files");
        thread.setDaemon(true);
        return thread;
    }

    /**
     * Does some work.
     *
     * @param done takes its outcome
     * @param refused takes the one sentence that says why there is none
     */
    <T> void run(Supplier<T> work, Consumer<T> done, Consumer<String> refused) {
        thread.execute(() -> {
            try {
                T outcome = work.get();
                SwingUtilities.invokeLater(() -> done.accept(outcome));
            } catch (Refusal refusal) {
                SwingUtilities.invokeLater(() -> refused.accept(refusal.getMessage()));
            }
        });
    }

    /** Waits until all that was begun has ended; off the event thread. */
    void await() {
        CompletableFuture.runAsync(() -> {}, thread).join();
    }

    boolean isClosed() {
        return thread.isShutdown();
    }

    /** Lets what was begun end, and takes no more. */
    void close() {
        thread.shutdown();
    }
}
