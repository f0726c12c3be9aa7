package rakeline.engine.jshell;

import java.util.Arrays;
import java.util.Set;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.ForkJoinWorkerThread;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** In the worker: the threads that rows start and leave running. */
final class RowThreads {
    /** The most that may run at once, whichever rows started them. */
    static final int AT_ONCE = 1000;

    private static final long WATCH_MILLIS = 100;
    private static final int GRACE_LOOKS = 40;
    private static final long GRACE_MILLIS = 5;

    private final ThreadGroup group = new ThreadGroup("rows");
    private volatile Set<Thread> earlier = Set.of();
    private int busyEarlier;

    /** The thread that runs rows; what it starts belongs to its group. */
    RowThread start(Runnable work) {
        RowThread thread = new RowThread(group, work);
        thread.start();
        return thread;
    }

    /** A row begins: what runs now was started by rows before it. */
    void beginRow() {
        boolean none = group.activeCount() <= 1;
        earlier = none ? Set.of() : others().collect(Collectors.toUnmodifiableSet());
        busyEarlier = busy();
    }

    /** Whether a thread was started before the row that now runs. */
    boolean isEarlier(Thread thread) {
        return earlier.contains(thread);
    }

    /** What the present row has left running by now. */
    Running now() {
        if (group.activeCount() <= 1 && busy() == 0) {
            return Running.NONE;
        }
        Set<Thread> all = others().collect(Collectors.toSet());
        int started = (int) all.stream().filter(thread -> !isEarlier(thread)).count();
        int busy = busy();
        return new Running(started + Math.max(0, busy - busyEarlier), all.size() + busy);
    }

    /** The same, with a moment's grace for threads that are just coming to their end. */
    Running settled() {
        Running now = now();
        for (int i = 0; i < GRACE_LOOKS && now.left() > 0; i++) {
            await();
            now = now();
        }
        return now;
    }

    /** Ends the process once more threads run at once than may, or the one that runs rows no more: its host would wait. */
    void watch(RowThread rows) {
        while (rows.isAlive() && group.activeCount() <= AT_ONCE) {
            await(WATCH_MILLIS);
        }
        Runtime.getRuntime().halt(rows.isAlive() ? Ending.TOO_MANY_THREADS : Ending.NO_ROWS);
    }

    private static void await() {
        await(GRACE_MILLIS);
    }

    private static void await(long millis) {
        try {
            Thread.sleep(millis);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    /** Threads of Java's common pool come and go by themselves, and count while they are busy. */
    private static int busy() {
        ForkJoinPool pool = ForkJoinPool.commonPool();
        return pool.isQuiescent() ? 0 : pool.getActiveThreadCount();
    }

    private Stream<Thread> others() {
        Thread[] threads = new Thread[group.activeCount() + AT_ONCE];
        int count = group.enumerate(threads);
        return Arrays.stream(threads, 0, count)
                .filter(thread -> thread.isAlive() && !(thread instanceof RowThread) && !isOfCommonPool(thread));
    }

    private static boolean isOfCommonPool(Thread thread) {
        return thread instanceof ForkJoinWorkerThread worker && worker.getPool() == ForkJoinPool.commonPool();
    }

    /**
     * Threads that run on.
     *
     * @param left those that the present row has started
     * @param all those of any row
     */
    record Running(int left, int all) {
        static final Running NONE = new Running(0, 0);

        /** The most that may run on when a row ends. */
        static final int MOST = 64;

        boolean isTooMany() {
            return left > MOST;
        }
    }
}
