package rakeline.engine.jshell;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import rakeline.engine.Entangled;
import rakeline.engine.Layout;
import rakeline.engine.Outcome;
import rakeline.engine.PageRow;
import rakeline.engine.Planner;
import rakeline.engine.RunOrder;
import rakeline.engine.Session;
import rakeline.engine.State;
import rakeline.worksheet.Worksheet;

/** A page being run: takes what is asked, and runs what is to run, row by row. Belongs to the session's thread. */
final class PageRun {
    private final Rows runner;
    private final Stopper stopper;
    private final Values values;
    private final Consumer<Session.Event> listener;
    private final PageReader reader;
    private final Standing standing;
    private final Agenda agenda = new Agenda();
    private final FilesRead files = new FilesRead();
    private final LibraryNames library = new LibraryNames();
    private final Plan plan;
    private final Succession succession;
    private Set<String> sight = Set.of();

    PageRun(Rows runner, Stopper stopper, Values values, Consumer<Session.Event> listener) {
        this.runner = runner;
        this.stopper = stopper;
        this.values = values;
        this.listener = listener;
        this.reader = new PageReader(runner::read);
        this.standing = new Standing(runner, listener);
        this.plan = new Plan(runner, standing, agenda);
        this.succession = new Succession(runner, stopper, standing, plan, files, listener);
    }

    List<Outcome> outcomes() {
        return standing.all();
    }

    boolean hasWork() {
        return !agenda.isEmpty();
    }

    void show(Worksheet worksheet) {
        Layout before = standing.page();
        Planner.Changes changes = standing.show(reader.read(worksheet));
        agenda.keep(standing.page());
        files.keep(standing.page());
        runner.forget(standing.gone(before));
        plan(changes.toRun(), changes.fromSource());
        plan(standing.guessing(before));
        move(values.take(worksheet));
        rack(worksheet.rack());
        plan(standing.leftOver().stream().filter(id -> !agenda.has(id)).toList());
        standing.reword();
    }

    /** The rack is what {@code bikes()} gives. */
    private void rack(List<String> paths) {
        if (values.rack(paths)) {
            runner.tellRack();
            plan(standing.using("bikes()"));
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

    private void move(Set<String> names) {
        runner.tell(names);
        plan(standing.following(names));
    }

    /** Runs a row even if it waits, with the rows above that it needs and that are not fresh. */
    void runRow(String id) {
        if (standing.page().has(id)) {
            run(standing.withStaleNeeds(id));
        }
    }

    void runFrom(String id) {
        if (standing.page().has(id)) {
            List<PageRow> rows = standing.page().rows();
            run(ids(rows.subList(standing.page().place(id), rows.size())));
        }
    }

    void runAll() {
        succession.startOver();
        run(ids(standing.page().rows()));
    }

    private void run(Set<String> ids) {
        agenda.force(ids);
        plan(standing.downstream(ids));
    }

    /** Gives up what is still to run; those rows stay out of date. */
    void abandon() {
        agenda.clear();
    }

    /** Whether a row that has run read a file. */
    boolean readsFiles() {
        return !files.isEmpty();
    }

    /** Rows that read a file which has changed since run again, with what follows from them. */
    void checkFiles() {
        Set<String> outdated = files.outdated();
        outdated.removeIf(agenda::has);
        outdated.forEach(files::forget);
        plan(standing.downstream(outdated));
    }

    void workerEnded(Worker worker) {
        succession.workerEnded(worker);
    }

    private void plan(List<String> ids) {
        plan(ids, Set.of());
    }

    private void plan(List<String> ids, Set<String> rewritten) {
        plan.rerun(ids, rewritten);
    }

    /** From now on these rows are in sight, and run before others where nothing comes out otherwise for it. */
    void look(Set<String> ids) {
        sight = Set.copyOf(ids);
    }

    private RunOrder order() {
        Layout page = standing.page();
        return new RunOrder(page, () -> Entangled.of(page, runner::changing), runner::canRepeat, library::has);
    }

    /** Deals with the next of the rows that are to run, or puts a worker in place in which it can. */
    void runNext() {
        PageRow row = agenda.next(order(), sight);
        if (succession.keepsState(row)) {
            succession.renewWorker();
        } else {
            agenda.take(row);
            deal(row);
            listener.accept(agenda.oneDone());
        }
    }

    private void deal(PageRow row) {
        if (holdsBack(row, agenda.takeForced(row.id()))) {
            withdrawImports(row);
        } else {
            run(row);
        }
    }

    /** Whether the row does not run, which is said then. */
    private boolean holdsBack(PageRow row, boolean isForced) {
        Optional<String> refusal = standing.page().refusal(row.id());
        Optional<String> missing = standing.missing(row.id());
        if (refusal.isPresent()) {
            standing.outcomes().set(row.id(), State.FAILED, refusal.get());
        } else if (row.row().waits() && !isForced) {
            boolean hasRun = standing.is(row.id(), State.OUT_OF_DATE);
            standing.outcomes().set(row.id(), hasRun ? State.OUT_OF_DATE : State.WAITING);
        } else if (missing.isPresent()) {
            standing.outcomes().set(row.id(), State.NOT_RUN, missing.get());
        } else {
            return false;
        }
        return true;
    }

    /** A row does not run: an import that it gave is in force no more for the rows below it. */
    private void withdrawImports(PageRow row) {
        if (row.source().hasImport() && runner.isKnown(row.id())) {
            Set<String> below = standing.page().below(row.id());
            runner.forget(List.of(row.id()));
            plan(standing.downstream(below), below);
        }
    }

    private void run(PageRow row) {
        runner.begin(row);
        standing.outcomes().set(row.id(), State.RUNNING);
        succession.begins(row);
        Run run = attempt(row);
        if (stopper.hasGivenWay(run)) {
            agenda.add(Set.of(row.id()));
        } else {
            standing.outcomes().set(row.id(), run);
        }
        succession.hasRun(row, run);
    }

    private Run attempt(PageRow row) {
        try {
            return runner.run(row, standing.page());
        } catch (IllegalStateException e) {
            return Run.broken("Rakeline could not run this row.\n" + e);
        }
    }

    private static Set<String> ids(List<PageRow> rows) {
        Set<String> ids = new LinkedHashSet<>();
        rows.forEach(row -> ids.add(row.id()));
        return ids;
    }
}
