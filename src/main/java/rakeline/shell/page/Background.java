package rakeline.shell.page;

import java.util.concurrent.CancellationException;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javax.swing.SwingUtilities;
import rakeline.quantity.Refusal;

/** Work that may take a while, off the event thread, one piece after the other; what comes of it is told on the event thread. */
public final class Background {
    private final ExecutorService thread;

    /** @param name of the thread that does it */
    public Background(String name) {
        thread = Executors.newSingleThreadExecutor(work -> named(work, name));
    }

    private static Thread named(Runnable work, String name) {
        Thread thread = new Thread(work, name);
        thread.setDaemon(true);
        return thread;
    }

    /**
     * Does some work, after what was begun before. Of work that was called off nothing is told. A failure that is not
     * expected goes on to whoever takes those of this thread.
     *
     * @param done takes its outcome
     * @param refused takes the one sentence that says why there is none, whatever the failure
     */
    public <T> void run(Supplier<T> work, Consumer<T> done, Consumer<String> refused) {
        thread.execute(() -> answer(work, done, refused));
    }

    private static <T> void answer(Supplier<T> work, Consumer<T> done, Consumer<String> refused) {
        try {
            T outcome = work.get();
            SwingUtilities.invokeLater(() -> done.accept(outcome));
        } catch (Refusal refusal) {
            SwingUtilities.invokeLater(() -> refused.accept(refusal.getMessage()));
        } catch (CancellationException calledOff) {
            // whoever called it off has said so
        } catch (RuntimeException | Error failure) {
            String kind = failure.getClass().getSimpleName();
            SwingUtilities.invokeLater(() -> refused.accept(
                    "This could not be done, because something in Rakeline itself went wrong (" + kind + ")."));
            throw failure;
        }
    }

    /** Waits until all that was begun has ended; off the event thread. */
    public void await() {
        CompletableFuture.runAsync(() -> {}, thread).join();
    }

    public boolean isClosed() {
        return thread.isShutdown();
    }

    /** Lets what was begun end, and takes no more. */
    public void close() {
        thread.shutdown();
    }
}
