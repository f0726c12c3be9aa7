package rakeline.engine.jshell;

import java.time.Duration;
import java.util.Optional;
import java.util.concurrent.Future;
import java.util.concurrent.ScheduledThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.function.Predicate;
import rakeline.engine.PageRow;
import rakeline.engine.State;

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

    /** What runs a row. */
    interface Target {
        /**
         * Throws a stop into the row's code; not heard where none runs, or where it is blocked.
         *
         * @throws RuntimeException where the worker is not as it should be; it is asked again, and ended at last
         */
        void interrupt();

        void kill();
    }

    /** One run of a row. What is scheduled for it does nothing once it is over, whatever runs then. */
    private static final class Guarded {
        private final PageRow row;
        private final Target target;
        private Optional<Future<?>> limit = Optional.empty();
        private Optional<Future<?>> next = Optional.empty();

        private Guarded(PageRow row, Target target) {
            this.row = row;
            this.target = target;
        }

        private void end() {
            limit.ifPresent(future -> future.cancel(false));
            next.ifPresent(future -> future.cancel(false));
        }
    }

    private static final long AGAIN_MILLIS = 50;
    private static final long PATIENCE_NANOS = Duration.ofSeconds(1).toNanos();

    private final ScheduledThreadPoolExecutor clock = new ScheduledThreadPoolExecutor(1, work -> {
        Thread thread = new Thread(work, "row-stopper");
        thread.setDaemon(true);
        return thread;
    });
    private Optional<Guarded> guarded = Optional.empty();
    private Optional<Cause> cause = Optional.empty();
    private long since;
    private boolean inWorker;

    Stopper() {
        clock.setRemoveOnCancelPolicy(true);
    }

    /** A row begins. */
    synchronized void arm(PageRow row, Target target, Duration limit) {
        disarm();
        Guarded begun = new Guarded(row, target);
        begun.limit = Optional.of(
                clock.schedule(() -> stop(begun, Cause.TIME_LIMIT), limit.toMillis(), TimeUnit.MILLISECONDS));
        guarded = Optional.of(begun);
        cause = Optional.empty();
    }

    /** The row has ended, or its worker has. */
    synchronized void disarm() {
        guarded.ifPresent(Guarded::end);
        guarded = Optional.empty();
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

    /** Whether a run was broken off because another version of its row is to run. */
    synchronized boolean hasGivenWay(Run run) {
        return run.state() == State.STOPPED && cause.equals(Optional.of(Cause.EDITED));
    }

    /** Stops the row that runs, if one does. */
    void stop(Cause why) {
        stop(why, row -> true);
    }

    /** Stops the row that runs, if one does and it is such a row. */
    synchronized void stop(Cause why, Predicate<PageRow> which) {
        guarded.filter(run -> which.test(run.row)).ifPresent(run -> stop(run, why));
    }

    @Override
    public void close() {
        clock.shutdownNow();
    }

    private synchronized void stop(Guarded run, Cause why) {
        if (isRunning(run) && cause.isEmpty()) {
            cause = Optional.of(why);
            since = System.nanoTime();
            clock.execute(() -> again(run));
        }
    }

    private synchronized void again(Guarded run) {
        if (!isRunning(run)) {
            return;
        }
        if (inWorker && System.nanoTime() - since > PATIENCE_NANOS) {
            run.target.kill();
            return;
        }
        run.next = Optional.of(clock.schedule(() -> again(run), AGAIN_MILLIS, TimeUnit.MILLISECONDS));
        if (inWorker) {
            run.target.interrupt();
        }
    }

    private boolean isRunning(Guarded run) {
        return guarded.isPresent() && guarded.get() == run;
    }
}
