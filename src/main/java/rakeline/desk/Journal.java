package rakeline.desk;

import java.nio.file.Path;
import java.time.Duration;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;
import rakeline.quantity.Refusal;

/**
 * Keeps on the disk, whole and forced, the page that no file has yet, so that a program that is killed loses no edit
 * older than {@link #DELAY} and the time that one writing takes. All of it happens on a thread of its own; edits that
 * come while one is being written are written together.
 */
public final class Journal implements AutoCloseable {
    /** From an edit to the beginning of its writing. */
    public static final Duration DELAY = Duration.ofMillis(300);

    static final String ENDING = ".journal";
    static final String CLAIMED = ".claim";

    private static final Duration RETRY = Duration.ofSeconds(2);

    private final ExecutorService thread = Executors.newSingleThreadExecutor(Journal::named);
    private final AtomicReference<Optional<Draft>> latest = new AtomicReference<>(Optional.empty());
    private final AtomicBoolean due = new AtomicBoolean();
    private final SafeFile disk;
    private final Path file;
    private final Consumer<String> trouble;
    private Optional<Claim> claim = Optional.empty();
    private boolean troubled;

    /**
     * Creates nothing until there is something to keep.
     *
     * @param trouble hears on the journal's thread why nothing can be written, again at each attempt, and the empty
     *     text once it can
     */
    public Journal(SafeFile disk, Places places, Consumer<String> trouble) {
        this.disk = disk;
        this.trouble = trouble;
        file = folder(places).resolve(UUID.randomUUID() + ENDING);
    }

    static Path folder(Places places) {
        return places.state().resolve("journal");
    }

    private static Thread named(Runnable work) {
        Thread thread = new Thread(work, "journal");
        thread.setDaemon(true);
        return thread;
    }

    /** This is how the page stands now. */
    public void keep(Draft draft) {
        put(Optional.of(draft));
    }

    /** Nothing stands that no file has. */
    public void forget() {
        put(Optional.empty());
    }

    private void put(Optional<Draft> draft) {
        Optional<Draft> before = latest.getAndSet(draft);
        if (before.isPresent() || draft.isPresent()) {
            schedule(DELAY);
        }
    }

    private void schedule(Duration delay) {
        if (due.compareAndSet(false, true)) {
            CompletableFuture.delayedExecutor(delay.toMillis(), TimeUnit.MILLISECONDS, thread)
                    .execute(this::catchUp);
        }
    }

    private void catchUp() {
        due.set(false);
        try {
            latest.get().ifPresentOrElse(this::write, () -> disk.delete(file));
            tell("");
        } catch (Refusal refusal) {
            tell(refusal.getMessage());
            schedule(RETRY);
        }
    }

    private void write(Draft draft) {
        claim = claim.or(() -> Claim.on(file.resolveSibling(file.getFileName() + CLAIMED)));
        disk.writeOwn(file, draft.bytes());
    }

    private void tell(String sentence) {
        if (troubled || !sentence.isEmpty()) {
            trouble.accept(sentence);
        }
        troubled = !sentence.isEmpty();
    }

    /** Writes at once what is still to be written, and waits for it; not to be called on the event thread. */
    public void flush() {
        CompletableFuture.runAsync(this::catchUp, thread).join();
    }

    /** Writes what is still to be written and ends; not to be called on the event thread. */
    @Override
    public void close() {
        if (thread.isShutdown()) {
            return;
        }
        flush();
        CompletableFuture.runAsync(() -> claim.ifPresent(Claim::close), thread).join();
        thread.shutdown();
    }
}
