package rakeline.shell;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;
import rakeline.engine.Outcome;
import rakeline.engine.Session;
import rakeline.engine.State;
import rakeline.worksheet.Row;
import rakeline.worksheet.Worksheet;

/** A session that understands a handful of lines and computes them on a thread of its own. */
class FakeSession implements Session {
    private final ExecutorService thread = Executors.newSingleThreadExecutor();
    private final AtomicReference<CountDownLatch> gate = new AtomicReference<>(new CountDownLatch(0));
    private final List<String> ran = new ArrayList<>();
    private final Map<String, Outcome> outcomes = new HashMap<>();
    private volatile Consumer<Event> listener = event -> {};
    private Worksheet page = Worksheet.empty("");
    private volatile boolean stopped;

    @Override
    public void listen(Consumer<Event> newListener) {
        listener = newListener;
    }

    /** Lets a row that says {@code slow()} wait until {@link #stop()} or {@link #goOn()}. */
    void hold() {
        gate.set(new CountDownLatch(1));
    }

    void goOn() {
        gate.get().countDown();
    }

    /** The ids of the rows that ran, in order. */
    synchronized List<String> ran() {
        return List.copyOf(ran);
    }

    @Override
    public void show(Worksheet newPage) {
        thread.execute(() -> {
            Worksheet before = page;
            page = newPage;
            Set<String> moved = new LinkedHashSet<>(newPage.dials().keySet());
            moved.removeIf(
                    name -> newPage.dials().get(name).equals(before.dials().get(name)));
            newPage.picks().forEach((name, path) -> {
                if (!path.equals(before.picks().get(name))) {
                    moved.add(name);
                }
            });
            run(row -> !before.row(row.id()).equals(newPage.row(row.id())), moved);
        });
    }

    @Override
    public void dial(String name, double value) {
        thread.execute(() -> {
            page = page.withDial(name, value);
            run(row -> false, Set.of(name));
        });
    }

    @Override
    public void pick(String name, String path) {
        thread.execute(() -> {
            page = page.withPick(name, path);
            run(row -> false, Set.of(name));
        });
    }

    private void run(java.util.function.Predicate<Row> changed, Set<String> moved) {
        Set<String> stale = new LinkedHashSet<>(moved);
        List<Row.Snippet> todo = new ArrayList<>();
        for (Row row : page.rows()) {
            if (row instanceof Row.Snippet snippet && (changed.test(row) || FakeRow.uses(snippet, stale))) {
                todo.add(snippet);
                stale.addAll(FakeRow.defines(snippet));
            }
        }
        runAll(todo, false);
    }

    private void runAll(List<Row.Snippet> todo, boolean asked) {
        int done = 0;
        listener.accept(new Event.Progress(done, todo.size()));
        for (Row.Snippet row : todo) {
            say(FakeRow.inState(row, State.RUNNING));
            say(row.waits() && !asked ? FakeRow.inState(row, State.WAITING) : outcome(row));
            listener.accept(new Event.Progress(++done, todo.size()));
        }
        listener.accept(new Event.Idle());
    }

    private Outcome outcome(Row.Snippet row) {
        synchronized (this) {
            ran.add(row.id());
        }
        if (row.text().contains("slow()")) {
            awaitGate();
        }
        if (stopped) {
            stopped = false;
            return FakeRow.inState(row, State.STOPPED);
        }
        return FakeRow.run(row, page);
    }

    private void awaitGate() {
        try {
            gate.get().await();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private void say(Outcome outcome) {
        outcomes.put(outcome.id(), outcome);
        listener.accept(new Event.Row(outcome));
    }

    private List<Row.Snippet> from(String id) {
        return page.rows().stream()
                .dropWhile(row -> !row.id().equals(id))
                .filter(Row.Snippet.class::isInstance)
                .map(Row.Snippet.class::cast)
                .toList();
    }

    @Override
    public void runRow(String id) {
        thread.execute(() -> runAll(from(id).stream().limit(1).toList(), true));
    }

    @Override
    public void runFrom(String id) {
        thread.execute(() -> runAll(from(id), true));
    }

    @Override
    public void runAll() {
        thread.execute(() -> {
            if (!page.rows().isEmpty()) {
                runAll(from(page.rows().get(0).id()), true);
            }
        });
    }

    @Override
    public void stop() {
        stopped = true;
        goOn();
    }

    @Override
    public List<Outcome> settle() {
        return List.copyOf(outcomes.values());
    }

    @Override
    public void close() {
        goOn();
        thread.shutdown();
    }
}
