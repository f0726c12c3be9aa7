package rakeline.study;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.IntConsumer;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Threads that share a piece of work, the caller's among them. Each part of the work writes to a place of its own, so
 * that the result is the same with any number of threads. None is left running, however the work ends.
 */
public final class Crew {
    /** The most parts that a thread takes at a time: enough that taking them costs nothing. */
    private static final int AT_A_TIME = 16;

    private static final int TURNS = 8;

    /** Work that the caller has done in so long is not worth a thread. */
    private static final long ALONE_NANOS = 500_000;

    private final int threads;

    private Crew(int threads) {
        this.threads = threads;
    }

    /** As many threads as there are cores. */
    public static Crew onAllCores() {
        return of(Runtime.getRuntime().availableProcessors());
    }

    /** So many threads, at least one. */
    public static Crew of(int threads) {
        return new Crew(Math.max(1, threads));
    }

    /**
     * Does the parts 0 to count − 1, each once.
     *
     * @throws CancellationException where the progress does not go on, or the caller's thread is interrupted
     */
    void each(int count, IntConsumer part, Progress progress) {
        int atATime = Math.max(1, Math.min(AT_A_TIME, count / (threads * TURNS)));
        Job job = new Job(count, atATime, part);
        List<Thread> helpers = new ArrayList<>();
        try {
            if (job.isMoreThan(ALONE_NANOS, progress)) {
                IntStream.range(1, threads).forEach(i -> helpers.add(helper(job)));
                helpers.forEach(Thread::start);
            }
            job.work(progress);
        } finally {
            job.stopUnlessAllIsTaken();
            helpers.forEach(Crew::join);
        }
        job.rethrow();
        job.check(progress);
    }

    /** The results of the parts 0 to count − 1, in order; none may be null. */
    <T> List<T> map(int count, IntFunction<T> part, Progress progress) {
        List<AtomicReference<T>> results =
                Stream.generate(AtomicReference<T>::new).limit(count).toList();
        each(count, i -> results.get(i).set(part.apply(i)), progress);
        return results.stream().map(AtomicReference::get).toList();
    }

    private static Thread helper(Job job) {
        Thread thread = new Thread(job::help, "study");
        thread.setDaemon(true);
        return thread;
    }

    private static void join(Thread helper) {
        boolean interrupted = false;
        while (helper.isAlive()) {
            try {
                helper.join();
            } catch (InterruptedException e) {
                // the helper ends after the part in its hands; the interruption is passed on below
                interrupted = true;
            }
        }
        if (interrupted) {
            Thread.currentThread().interrupt();
        }
    }

    /** One piece of work, shared. */
    private static final class Job {
        private final int count;
        private final int atATime;
        private final IntConsumer part;
        private final AtomicInteger next = new AtomicInteger();
        private final AtomicInteger done = new AtomicInteger();
        private final AtomicBoolean stopped = new AtomicBoolean();
        private final AtomicReference<Throwable> failure = new AtomicReference<>();

        Job(int count, int atATime, IntConsumer part) {
            this.count = count;
            this.atATime = atATime;
            this.part = part;
        }

        /** Works for so long, and tells whether more is left. */
        boolean isMoreThan(long nanos, Progress progress) {
            long began = System.nanoTime();
            boolean more = next.get() < count;
            while (more && System.nanoTime() - began < nanos) {
                more = takesSome();
                check(progress);
            }
            return more;
        }

        /** The caller's share of the work. */
        void work(Progress progress) {
            while (takesSome()) {
                check(progress);
            }
        }

        void help() {
            try {
                boolean more = true;
                while (more) {
                    more = takesSome();
                }
            } catch (RuntimeException | Error e) {
                failure.compareAndSet(null, e);
                stopped.set(true);
            }
        }

        private boolean takesSome() {
            int from = next.getAndAdd(atATime);
            int to = Math.min(count, from + atATime);
            for (int i = from; i < to && !stopped.get(); i++) {
                part.accept(i);
                done.incrementAndGet();
            }
            return to < count && from < count && !stopped.get();
        }

        /** What the helpers have in hand they finish, unless the work ends before its time. */
        void stopUnlessAllIsTaken() {
            if (next.get() < count) {
                stopped.set(true);
            }
        }

        void check(Progress progress) {
            progress.check(count == 0 ? 1 : (double) done.get() / count);
        }

        void rethrow() {
            if (failure.get() instanceof Error error) {
                throw error;
            }
            if (failure.get() instanceof RuntimeException exception) {
                throw exception;
            }
        }
    }
}
