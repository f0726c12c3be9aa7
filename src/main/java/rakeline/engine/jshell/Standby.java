package rakeline.engine.jshell;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;

/** Hands out workers, and keeps the next one waiting, rehearsed, where that is wanted. */
final class Standby implements AutoCloseable {
    /** Starts a worker. */
    private interface Start {
        Worker worker() throws IOException;
    }

    private final WorkerLauncher launcher;
    private final boolean keepsOne;
    private Optional<CompletableFuture<Worker>> next;
    private boolean closed;

    Standby(WorkerLauncher launcher, boolean keepsOne) {
        this.launcher = launcher;
        this.keepsOne = keepsOne;
        this.next = Optional.of(inBackground(launcher::start));
    }

    /** A worker that has run nothing. */
    Worker take() {
        CompletableFuture<Worker> taken = takeNext();
        try {
            Worker worker = taken.join();
            return worker.isAlive() ? worker : take();
        } catch (CompletionException e) {
            throw new IllegalStateException(
                    "No worker can be started: " + e.getCause().getMessage() + ".", e);
        }
    }

    /** Makes sure that a worker is waiting, from now on, where that is wanted. */
    synchronized void replenish() {
        if (keepsOne && next.isEmpty() && !closed) {
            next = Optional.of(inBackground(this::rehearsed));
        }
    }

    @Override
    public synchronized void close() {
        closed = true;
        next.ifPresent(Standby::closeWhenStarted);
        next = Optional.empty();
    }

    private static void closeWhenStarted(CompletableFuture<Worker> future) {
        CompletableFuture<Void> closed = future.thenAccept(Worker::close);
        closed.exceptionally(failure -> null); // a worker that did not start needs no closing
    }

    private synchronized CompletableFuture<Worker> takeNext() {
        if (closed) {
            throw new IllegalStateException("The session is closed.");
        }
        CompletableFuture<Worker> taken = next.orElseGet(() -> inBackground(launcher::start));
        next = Optional.empty();
        return taken;
    }

    private static CompletableFuture<Worker> inBackground(Start start) {
        CompletableFuture<Worker> started = new CompletableFuture<>();
        Thread starter = new Thread(() -> complete(started, start), "worker-start");
        starter.setDaemon(true);
        starter.start();
        return started;
    }

    private static void complete(CompletableFuture<Worker> started, Start start) {
        try {
            started.complete(start.worker());
        } catch (IOException e) {
            started.completeExceptionally(new UncheckedIOException(e));
        } catch (RuntimeException e) {
            started.completeExceptionally(e);
        }
    }

    private Worker rehearsed() throws IOException {
        Worker worker = launcher.start();
        try {
            worker.rehearse();
        } catch (Worker.Lost e) {
            throw new IOException("it " + e.getMessage(), e);
        }
        return worker;
    }
}
