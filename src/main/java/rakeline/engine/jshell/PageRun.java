package rakeline.engine.jshell;

import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Stream;
import rakeline.engine.Definition;
import rakeline.engine.Entangled;
import rakeline.engine.Layout;
import rakeline.engine.Outcome;
import rakeline.engine.PageRow;
import rakeline.engine.Planner;
import rakeline.engine.Session;
import rakeline.engine.SnippetSource;
import rakeline.engine.State;
import rakeline.worksheet.Worksheet;

/** A page being run: what is to run, and how each row stands. Belongs to the session's thread. */
final class PageRun {
    private final Rows runner;
    private final Stopper stopper;
    private final Values values;
    private final Consumer<Session.Event> listener;
    private final Outcomes outcomes;
    private final Set<String> pending = new HashSet<>();
    private final Set<String> forced = new HashSet<>();
    private final Set<String> deadly = new HashSet<>();

    /** Classes with static fields that the present worker has loaded, and keeps even when their row is gone. */
    private final Set<String> loaded = new HashSet<>();

    private final Map<String, Set<Stamp>> files = new HashMap<>();
    private final PageReader reader;
    private Layout page = Layout.of(List.of());
    private int done;
    private volatile Optional<PageRow> running = Optional.empty();

    PageRun(Rows runner, Stopper stopper, Values values, Consumer<Session.Event> listener) {
        this.runner = runner;
        this.stopper = stopper;
        this.values = values;
        this.listener = listener;
        this.outcomes = new Outcomes(listener);
        this.reader = new PageReader(runner::read);
    }

    /** The row that runs now; any thread may ask. */
    Optional<PageRow> running() {
        return running;
    }

    List<Outcome> outcomes() {
        return outcomes.all();
    }

    boolean hasWork() {
        return !pending.isEmpty();
    }

    void show(Worksheet worksheet) {
        Layout before = page;
        page = reader.read(worksheet);
        pending.removeIf(id -> !page.has(id));
        files.keySet().removeIf(id -> !page.has(id));
        outcomes.show(page);
        Planner.Changes changes = Planner.changes(before, page, this::changing);
        runner.forget(gone(before));
        plan(changes.toRun(), changes.fromSource());
        plan(guessing(before), Set.of());
        move(values.take(worksheet));
        rack(worksheet.rack());
        plan(leftOver(), Set.of());
    }

    /** Rows that did not compile, where the names that could have been meant are now others. */
    private List<String> guessing(Layout before) {
        Set<String> rows = new HashSet<>();
        for (PageRow row : page.rows()) {
            String id = row.id();
            boolean failed = outcomes.state(id) == State.FAILED && !runner.canRepeat(id);
            if (failed && before.has(id) && !before.namesFor(id).equals(page.namesFor(id))) {
                rows.add(id);
            }
        }
        return Planner.downstream(page, rows, this::changing);
    }

    /** The rack is what {@code bikes()} gives. */
    private void rack(List<String> paths) {
        if (values.rack(paths)) {
            runner.tellRack();
            Set<String> asking = ids(page.rows().stream()
                    .filter(row -> row.source().uses().contains("bikes()"))
                    .toList());
            plan(Planner.downstream(page, asking, this::changing), Set.of());
        }
    }

    void dial(String name, double value) {
        if (values.dial(name, value)) {
            move(Set.of(name));
        }
    }

    void pick(String name, String path) {
        if (values.pick(name, path)) {
            move(Set.of(name));
        }
    }

    /** Runs a row even if it waits, with the rows above that it needs and that are not fresh. */
    void runRow(String id) {
        if (page.has(id)) {
            Set<String> wanted = new LinkedHashSet<>();
            collectStale(id, wanted);
            run(wanted);
        }
    }

    void runFrom(String id) {
        if (page.has(id)) {
            List<PageRow> rows = page.rows();
            run(ids(rows.subList(page.place(id), rows.size())));
        }
    }

    void runAll() {
        runner.startOver();
        deadly.clear();
        run(ids(page.rows()));
    }

    /** Gives up what is still to run; those rows stay out of date. */
    void abandon() {
        pending.clear();
        forced.clear();
    }

    /** Whether a row that has run read a file. */
    boolean readsFiles() {
        return page.rows().stream().anyMatch(row -> !files(row.id()).isEmpty());
    }

    /** Rows that read a file which has changed since run again, with what follows from them. */
    void checkFiles() {
        Set<String> outdated = new LinkedHashSet<>();
        for (PageRow row : page.rows()) {
            if (!pending.contains(row.id()) && files(row.id()).stream().anyMatch(Stamp::isOutdated)) {
                outdated.add(row.id());
                files.remove(row.id());
            }
        }
        plan(Planner.downstream(page, outdated, this::changing), Set.of());
    }

    private Set<Stamp> files(String id) {
        return files.getOrDefault(id, Set.of());
    }

    /** A worker has ended; if it was the one in force, another takes over. */
    void workerEnded(Worker worker) {
        if (runner.uses(worker)) {
            replaceWorker("The worker ended while no row was running; another took over.");
        }
    }

    /** Runs the topmost of the rows that are to run. */
    void runNext() {
        PageRow row = page.rows().stream()
                .filter(each -> pending.contains(each.id()))
                .findFirst()
                .orElseThrow();
        pending.remove(row.id());
        boolean isForced = forced.remove(row.id());
        Optional<String> refusal = page.refusal(row.id());
        Optional<String> missing = missing(row.id());
        if (refusal.isPresent()) {
            outcomes.set(row.id(), State.FAILED, refusal.get());
        } else if (row.row().waits() && !isForced) {
            boolean hasRun = outcomes.has(row.id()) && outcomes.state(row.id()) == State.OUT_OF_DATE;
            outcomes.set(row.id(), hasRun ? State.OUT_OF_DATE : State.WAITING);
        } else if (missing.isPresent()) {
            outcomes.set(row.id(), State.NOT_RUN, missing.get());
        } else {
            run(row);
        }
        done++;
        listener.accept(new Session.Event.Progress(done, done + pending.size()));
        done = pending.isEmpty() ? 0 : done;
    }

    private void run(PageRow row) {
        runner.begin(row);
        running = Optional.of(row);
        outcomes.set(row.id(), State.RUNNING);
        stateful(row).forEach(loaded::add);
        Run run = attempt(row);
        running = Optional.empty();
        files.put(row.id(), run.files());
        boolean edited = stopper.cause().equals(Optional.of(Stopper.Cause.EDITED)) && run.state() == State.STOPPED;
        if (edited) {
            pending.add(row.id());
        } else {
            outcomes.set(row.id(), run);
        }
        recover(row, run);
    }

    private Run attempt(PageRow row) {
        try {
            return runner.run(row, page);
        } catch (IllegalStateException e) {
            return Run.broken("Rakeline could not run this row.\n" + e);
        }
    }

    /** A worker that was lost is replaced; so is one in which a stopped row may have left a change half made. */
    private void recover(PageRow row, Run run) {
        deadly.remove(row.id());
        if (run.lost().isPresent()) {
            deadly.add(row.id());
            replaceWorker("Row " + page.called(row.id()).replaceFirst("^row ", "") + " "
                    + run.lost().get() + "; another took over.");
        } else if (run.state() == State.STOPPED && ties().with(row.id()).size() > 1) {
            replaceWorker("Row " + page.called(row.id()).replaceFirst("^row ", "")
                    + " was stopped while it could change values of other rows; another worker took over.");
        }
    }

    private void replaceWorker(String sentence) {
        renewWorker();
        listener.accept(new Session.Event.Replaced(sentence));
    }

    private void renewWorker() {
        boolean whole = false;
        while (!whole) {
            runner.replaceWorker();
            loaded.clear();
            whole = replayAll();
        }
    }

    /** Brings back the values of the rows that have run; false: one of them came out otherwise in this worker. */
    private boolean replayAll() {
        for (PageRow row : page.rows()) {
            if (isToReplay(row.id()) && !replay(row)) {
                return false;
            }
        }
        return true;
    }

    private boolean replay(PageRow row) {
        State before = outcomes.state(row.id());
        stateful(row).forEach(loaded::add);
        Run run = runner.replay(row, page);
        files.put(row.id(), run.files());
        boolean isNews = outcomes.bring(row.id(), run);
        if (!isNews && run.lost().isEmpty()) {
            return true;
        }
        Set<String> affected = new LinkedHashSet<>(Planner.downstream(page, Set.of(row.id()), this::changing));
        boolean standsAlone = run.state() == before
                && run.lost().isEmpty()
                && ties().with(row.id()).size() == 1;
        if (run.lost().isPresent() || run.state() == State.STOPPED || standsAlone) {
            affected.remove(row.id());
        }
        run.lost().ifPresent(how -> deadly.add(row.id()));
        affected.removeIf(this::wasBrokenOff);
        pending.addAll(affected);
        affected.stream().filter(this::goesOutOfDate).forEach(id -> outcomes.set(id, State.OUT_OF_DATE));
        return standsAlone;
    }

    /** A row that ended its worker or was stopped is not run again because of what that did to others: it would not end. */
    private boolean wasBrokenOff(String id) {
        return deadly.contains(id) || (outcomes.has(id) && outcomes.state(id) == State.STOPPED);
    }

    private boolean isToReplay(String id) {
        State state = outcomes.state(id);
        boolean ran = state == State.FRESH || (state == State.FAILED && !deadly.contains(id));
        boolean stands = page.refusal(id).isEmpty() && missing(id).isEmpty();
        return ran && stands && runner.isKnown(id) && !pending.contains(id);
    }

    private void run(Set<String> ids) {
        forced.addAll(ids);
        plan(Planner.downstream(page, ids, this::changing), Set.of());
    }

    private void move(Set<String> names) {
        runner.tell(names);
        Set<String> declaring = new HashSet<>();
        for (PageRow row : page.rows()) {
            if (row.source().snippets().stream()
                    .flatMap(snippet -> snippet.control().stream())
                    .map(SnippetSource.Declared::name)
                    .anyMatch(names::contains)) {
                declaring.add(row.id());
            }
        }
        plan(Planner.downstream(page, declaring, this::changing), Set.of());
    }

    /** Notes that rows are to run, in page order; those that cannot run again as compiled lose their names first. */
    private void plan(List<String> ids, Set<String> rewritten) {
        Set<String> stale = new LinkedHashSet<>();
        for (String id : ids) {
            boolean needsStale = page.needs(id).stream().anyMatch(need -> stale.contains(need.rowId()));
            if (rewritten.contains(id) || needsStale || !runner.canRepeat(id)) {
                stale.add(id);
            }
        }
        boolean startsOver = ids.stream().anyMatch(this::keepsState);
        runner.forget(List.copyOf(stale));
        pending.addAll(ids);
        ids.stream().filter(this::goesOutOfDate).forEach(id -> outcomes.set(id, State.OUT_OF_DATE));
        if (startsOver) {
            renewWorker();
        }
    }

    /** Static fields of a class are what they were at first only in a worker that has not loaded it. */
    private boolean keepsState(String id) {
        return stateful(page.row(id)).anyMatch(loaded::contains);
    }

    private static Stream<String> stateful(PageRow row) {
        return row.source().defines().stream().filter(Definition::keepsState).map(Definition::name);
    }

    private boolean goesOutOfDate(String id) {
        boolean stillWaits =
                outcomes.state(id) == State.WAITING && page.row(id).row().waits();
        return outcomes.has(id) && !stillWaits;
    }

    /** Rows that were given up earlier. */
    private List<String> leftOver() {
        return page.rows().stream()
                .map(PageRow::id)
                .filter(id -> outcomes.state(id) == State.OUT_OF_DATE)
                .filter(id -> !page.row(id).row().waits() && !pending.contains(id))
                .toList();
    }

    private List<String> gone(Layout before) {
        return before.rows().stream()
                .map(PageRow::id)
                .filter(id -> !page.has(id))
                .toList();
    }

    private void collectStale(String id, Set<String> wanted) {
        wanted.add(id);
        for (Layout.Need need : page.needs(id)) {
            if (outcomes.state(need.rowId()) != State.FRESH && !wanted.contains(need.rowId())) {
                collectStale(need.rowId(), wanted);
            }
        }
    }

    private Optional<String> missing(String id) {
        return page.needs(id).stream()
                .filter(need -> outcomes.state(need.rowId()) != State.FRESH)
                .findFirst()
                .map(need -> "This row uses " + need.name() + " from " + page.called(need.rowId()) + ", which "
                        + standing(outcomes.state(need.rowId())) + ".");
    }

    private static String standing(State state) {
        return switch (state) {
            case FAILED -> "failed";
            case STOPPED -> "was stopped";
            case WAITING -> "is waiting";
            case NOT_RUN -> "has not run";
            default -> "is " + state.words();
        };
    }

    private boolean changing(String variable) {
        return runner.changing(variable);
    }

    private Entangled ties() {
        return Entangled.of(page, this::changing);
    }

    private static Set<String> ids(List<PageRow> rows) {
        Set<String> ids = new LinkedHashSet<>();
        rows.forEach(row -> ids.add(row.id()));
        return ids;
    }
}
