package rakeline.engine.jshell;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import rakeline.engine.Outcome;
import rakeline.engine.PageRow;
import rakeline.engine.Session;
import rakeline.worksheet.Row;
import rakeline.worksheet.Worksheet;

/** A session on JShell: one thread takes what it is asked, in turn, and runs rows when nothing more is asked. */
final class JShellSession implements Session {
    private static final long FAREWELL_MILLIS = 5_000;
    private static final long FILES_MILLIS = 500;

    private final List<Consumer<Event>> listeners = new CopyOnWriteArrayList<>();
    private final BlockingQueue<Runnable> asked = new LinkedBlockingQueue<>();
    private final Map<String, Double> movedDials = new ConcurrentHashMap<>();
    private final Map<String, String> movedPicks = new ConcurrentHashMap<>();
    private final List<CompletableFuture<List<Outcome>>> waiting = new ArrayList<>();
    private final CompletableFuture<List<Outcome>> ended = new CompletableFuture<>();
    private final Stopper stopper = new Stopper();
    private final Settings settings;
    private final Standby standby;
    private final Thread thread = new Thread(this::work, "session");
    private volatile Optional<PageRun> run = Optional.empty();
    private volatile boolean closed;
    private volatile Set<String> sight = Set.of();
    private boolean idle = true;
    private boolean onlyDials;

    JShellSession(Settings settings, WorkerLauncher launcher) {
        this.settings = settings;
        this.standby = new Standby(launcher, settings.standby());
        thread.setDaemon(true);
        thread.start();
    }

    @Override
    public void listen(Consumer<Event> listener) {
        listeners.add(listener);
    }

    @Override
    public void show(Worksheet page) {
        ask(run -> run.show(page));
        stopper.stop(Stopper.Cause.EDITED, row -> !holds(page, row));
    }

    @Override
    public void dial(String name, double value) {
        movedDials.put(name, value);
        asked.add(() -> {});
    }

    @Override
    public void pick(String name, String path) {
        movedPicks.put(name, path);
        asked.add(() -> {});
    }

    @Override
    public void look(Set<String> ids) {
        sight = Set.copyOf(ids);
    }

    @Override
    public void runRow(String id) {
        ask(run -> run.runRow(id));
    }

    @Override
    public void runFrom(String id) {
        ask(run -> run.runFrom(id));
    }

    @Override
    public void runAll() {
        ask(PageRun::runAll);
    }

    @Override
    public void stop() {
        ask(PageRun::abandon);
        stopper.stop(Stopper.Cause.ASKED);
    }

    @Override
    public List<Outcome> settle() throws InterruptedException {
        CompletableFuture<List<Outcome>> settled = new CompletableFuture<>();
        asked.add(() -> waiting.add(settled));
        try {
            CompletableFuture.anyOf(settled, ended).get();
            return settled.get();
        } catch (ExecutionException e) {
            throw new IllegalStateException(
                    "The session has ended: " + e.getCause().getMessage(), e);
        }
    }

    @Override
    public void close() {
        closed = true;
        stopper.stop(Stopper.Cause.ASKED);
        asked.add(() -> {});
        standby.close();
        awaitEnd();
    }

    private void awaitEnd() {
        try {
            if (Thread.currentThread() != thread) {
                thread.join(FAREWELL_MILLIS);
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private void ask(Consumer<PageRun> question) {
        asked.add(() -> question.accept(run.orElseThrow()));
    }

    private void work() {
        Values values = new Values();
        try (Stopper stops = stopper;
                RowRunner runner = new RowRunner(standby, stops, values, settings.timeLimit(), this::workerEnded)) {
            run = Optional.of(new PageRun(runner, stops, values, this::say));
            while (!closed) {
                step(run.get());
            }
            giveUp(new IllegalStateException("it was closed"));
        } catch (RuntimeException | Error e) {
            say(new Event.Broken("Rows can run no more, because the engine broke (" + e
                    + "). Save the page and start Rakeline again."));
            giveUp(e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            giveUp(e);
        }
    }

    private void step(PageRun page) throws InterruptedException {
        if (!page.hasWork() && asked.isEmpty() && !hasMoved()) {
            rest(page);
            awaitQuestion(page).ifPresent(Runnable::run);
        }
        for (Runnable next = asked.poll(); next != null; next = asked.poll()) {
            onlyDials = false;
            idle = false;
            next.run();
        }
        if (!page.hasWork() || !onlyDials) {
            takeMoves(page);
        }
        if (page.hasWork() && !closed) {
            idle = false;
            page.look(sight);
            page.runNext();
        }
    }

    /** Waits for what is asked next; looks now and then whether files that rows have read are still as they were. */
    private Optional<Runnable> awaitQuestion(PageRun page) throws InterruptedException {
        if (!page.readsFiles()) {
            return Optional.of(asked.take());
        }
        Optional<Runnable> next = Optional.ofNullable(asked.poll(FILES_MILLIS, TimeUnit.MILLISECONDS));
        if (next.isEmpty()) {
            page.checkFiles();
        }
        return next;
    }

    private void takeMoves(PageRun page) {
        idle &= !hasMoved();
        onlyDials = !page.hasWork();
        for (String name : List.copyOf(movedDials.keySet())) {
            page.dial(name, movedDials.remove(name));
        }
        for (String name : List.copyOf(movedPicks.keySet())) {
            page.pick(name, movedPicks.remove(name));
        }
    }

    private boolean hasMoved() {
        return !movedDials.isEmpty() || !movedPicks.isEmpty();
    }

    private void rest(PageRun page) {
        if (!idle) {
            idle = true;
            say(new Event.Idle());
            standby.replenish();
        }
        waiting.forEach(settled -> settled.complete(page.outcomes()));
        waiting.clear();
    }

    /** Whoever waits is told, and whoever comes to wait later. */
    private void giveUp(Throwable why) {
        ended.completeExceptionally(why);
    }

    private void workerEnded(Worker worker) {
        if (!closed) {
            ask(page -> page.workerEnded(worker));
        }
    }

    private void say(Event event) {
        listeners.forEach(listener -> listener.accept(event));
    }

    private static boolean holds(Worksheet page, PageRow row) {
        return page.rows().stream()
                .anyMatch(each -> each instanceof Row.Snippet snippet
                        && snippet.id().equals(row.id())
                        && snippet.text().equals(row.row().text()));
    }
}
