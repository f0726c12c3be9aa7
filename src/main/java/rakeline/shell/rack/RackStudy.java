package rakeline.shell.rack;

import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javax.swing.SwingUtilities;
import rakeline.quantity.Refusal;

/** Comparisons and matches on a thread of their own, so that no file waits for them. */
final class RackStudy {
    private final ExecutorService thread = Executors.newSingleThreadExecutor(RackStudy::named);

    private static Thread named(Runnable work) {
        Thread thread = new Thread(work, "rack study");
        thread.setDaemon(true);
        return thread;
    }

    /**
     * Does some work, after what was begun before. Of work that was called off nothing is told.
     *
     * @param done takes its outcome, on the event thread
     * @param refused takes the one sentence that says why there is none, on the event thread
     */
    <T> void run(Supplier<T> work, Consumer<T> done, Consumer<String> refused) {
        thread.execute(() -> answer(work, done, refused).ifPresent(SwingUtilities::invokeLater));
    }

    private static <T> Optional<Runnable> answer(Supplier<T> work, Consumer<T> done, Consumer<String> refused) {
        try {
            T outcome = work.get();
            return Optional.of(() -> done.accept(outcome));
        } catch (Refusal refusal) {
            return Optional.of(() -> refused.accept(refusal.getMessage()));
        } catch (CancellationException calledOff) {
            // whoever called it off has said so
            return Optional.empty();
        }
    }

    void close() {
        thread.shutdown();
    }
}
