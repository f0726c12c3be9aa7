package rakeline.engine.jshell;

import java.time.Duration;
import java.util.Optional;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.ScheduledFuture;
import java.util.concurrent.TimeUnit;

/**
 * Stops the row that runs, at its time limit or when asked: again and again until it is heard, since a stop that arrives
 * while a snippet is being compiled is lost, and at last by ending the worker.
 */
final class Stopper implements AutoCloseable {
    /** Why a row was stopped. */
    enum Cause {
        TIME_LIMIT,
        ASKED,
        /** Its source is no longer what runs. */
        EDITED
    }

    private static final long AGAIN_MILLIS = 50;
    private static final long PATIENCE_NANOS = Duration.ofSeconds(1).toNanos();

    private final ScheduledExecutorService clock = Executors.newSingleThreadScheduledExecutor(work -> {
        Thread thread = new Thread(work, "row-stopper");
        thread.setDaemon(true);
        return thread;
    });
    private Optional<Worker> guarded = Optional.empty();
    private Optional<Cause> cause = Optional.empty();
    private Optional<ScheduledFuture<?>> next = Optional.empty();
    private long since;
    private boolean inWorker;

    /** A row begins. */
    synchronized void arm(Worker worker, Duration limit) {
        guarded = Optional.of(worker);
        cause = Optional.empty();
        next = Optional.of(clock.schedule(() -> stop(Cause.TIME_LIMIT), limit.toMillis(), TimeUnit.MILLISECONDS));
    }

    /** The row has ended, or its worker has. */
    synchronized void disarm() {
        guarded = Optional.empty();
        next.ifPresent(future -> future.cancel(false));
        next = Optional.empty();
    }

    /** Whether the worker has the row's code in hand; patience with a deaf row begins only then. */
    synchronized void entersWorker() {
        inWorker = true;
        since = System.nanoTime();
    }

    synchronized void leavesWorker() {
        inWorker = false;
    }

    /** Why the row that runs, or the last one, was stopped. */
    synchronized Optional<Cause> cause() {
        return cause;
    }

    /** Stops the row that runs, if one does. */
    synchronized void stop(Cause why) {
        if (guarded.isPresent() && cause.isEmpty()) {
            cause = Optional.of(why);
            since = System.nanoTime();
            clock.execute(this::again);
        }
    }

    @Override
    public void close() {
        clock.shutdownNow();
    }

    private synchronized void again() {
        if (guarded.isEmpty() || cause.isEmpty()) {
            return;
        }
        if (inWorker && System.nanoTime() - since > PATIENCE_NANOS) {
            guarded.get().kill();
            return;
        }
        if (inWorker) {
            guarded.get().interrupt();
        }
        next = Optional.of(clock.schedule(this::again, AGAIN_MILLIS, TimeUnit.MILLISECONDS));
    }
}
