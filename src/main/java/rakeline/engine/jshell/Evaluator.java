package rakeline.engine.jshell;

import java.time.Duration;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import jdk.jshell.JShell;
import jdk.jshell.Snippet;
import rakeline.engine.Layout;
import rakeline.engine.PageRow;
import rakeline.engine.RowSource;
import rakeline.prelude.Prelude;

/** Runs rows, from source or again as compiled; owns a JShell, and is used by one thread. */
final class Evaluator implements AutoCloseable {
    private final WorkerControl control;
    private final Stopper stopper;
    private final JShell shell;
    private final SourceReader reader;
    private final Places places;
    private final Aside aside;
    private final Map<String, Recording> recordings = new HashMap<>();
    private final Versions versions = new Versions();
    private final Map<String, Boolean> changing = new HashMap<>();

    Evaluator(Supplier<Worker> worker, Stopper stopper) {
        this.stopper = stopper;
        control = new WorkerControl(worker, stopper);
        shell = Shells.open(control);
        reader = new SourceReader(shell.sourceCodeAnalysis());
        places = new Places(shell.sourceCodeAnalysis(), control::nameOf);
        aside = new Aside(shell, control, places);
        Prelude.IMPORTS.forEach(shell::eval);
    }

    RowSource read(String text) {
        return reader.read(text);
    }

    /** Whether a variable's value can change, as its last run showed; true where that is not known. */
    boolean changing(String variable) {
        return changing.getOrDefault(variable, true);
    }

    Worker worker() {
        return control.worker();
    }

    /** Goes on with another worker, in which nothing has run. */
    void use(Worker another) throws Worker.Lost {
        control.use(another);
    }

    /** Whether the row has been compiled, to its end, against the rows above it as they now are. */
    boolean canRepeat(String id) {
        Recording recording = recordings.get(id);
        return recording != null && recording.complete() && versions.stand(recording.needs());
    }

    /** Whether calls of the row are known, be it only those up to its first failure. */
    boolean isKnown(String id) {
        return recordings.containsKey(id);
    }

    /** Takes the names of rows away, from the last to the first, so that none is compiled again for it. */
    void forget(List<String> idsInPageOrder) {
        for (int i = idsInPageOrder.size() - 1; i >= 0; i--) {
            forget(idsInPageOrder.get(i));
        }
    }

    private void forget(String id) {
        drop(places.remove(id));
        aside.forget(id);
        versions.next(id);
        Recording recording = recordings.remove(id);
        if (recording != null) {
            recording.variables().forEach(this::letGo);
        }
    }

    private void drop(List<Snippet> snippets) {
        for (int i = snippets.size() - 1; i >= 0; i--) {
            if (shell.status(snippets.get(i)).isActive()) {
                shell.drop(snippets.get(i));
            }
        }
    }

    private void letGo(Recording.Variable variable) {
        changing.remove(variable.name());
        control.release(variable);
    }

    /**
     * Compiles and runs a row. One with a body in which a name is not known gives no names: JShell would take such a
     * method along whenever it compiles what it once used, and others of its name would be lost with it.
     */
    Run run(PageRow row, Layout page, Duration limit) {
        Printed printed = new Printed();
        forget(row.id());
        CompileErrors errors = new CompileErrors(row.source(), page.namesFor(row.id()));
        aside.bringBack(page.needs(row.id()));
        RowRun run = new RowRun(row, shell, control, places, errors, tally(row, page, limit, printed), printed);
        Run done = run.go();
        boolean isUntaken = aside.suits(row, page);
        if (run.isIncomplete() || isUntaken) {
            drop(places.of(row.id()));
        }
        if (isUntaken) {
            aside.put(row.id());
        }
        recordings.put(row.id(), run.recording().compiledAgainst(versions.needed(row, page)));
        changing.putAll(run.changing());
        return done;
    }

    /** Runs a row again as it was compiled. */
    Run repeat(PageRow row, Layout page, Duration limit) {
        Printed printed = new Printed();
        Recording recording = recordings.get(row.id());
        Tally tally = tally(row, page, limit, printed);
        control.beginRow();
        int last = recording.calls().size() - 1;
        for (int i = 0; i <= last; i++) {
            boolean wanted = i == last && recording.showsLastCall();
            Worker.Call call = recording.calls().get(i);
            Optional<Answer> answer = control.again(call, wanted, printed);
            recording.declaredBy(call).ifPresent(variable -> tally.note(variable, answer));
            if (!tally.take(answer, wanted)) {
                return tally.run();
            }
        }
        if (recording.rejection().isPresent()) {
            tally.fail(recording.rejection().get());
        } else {
            recording.shown().ifPresent(variable -> tally.take(control.show(variable, printed), true));
        }
        return tally.run();
    }

    private Tally tally(PageRow row, Layout page, Duration limit, Printed printed) {
        return new Tally(
                control,
                stopper,
                new Failures(places, page, row.id()),
                limit,
                printed,
                row.source().assigns());
    }

    /** Tells the worker where dials and pickers stand; one that is gone is told when it is replaced. */
    void tell(Values values, Set<String> names) {
        control.tell(values, names);
    }

    /** Tells the worker the page's rack. */
    void tellRack(Values values) {
        control.tellRack(values);
    }

    /** Closes JShell and ends the worker. */
    @Override
    public void close() {
        shell.close();
        control.closeWorker();
    }
}
