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
import rakeline.engine.PageRow;
import rakeline.engine.Session;
import rakeline.engine.State;

/**
 * Puts another worker in the place of one that is lost, or that is no longer as a fresh run would have it, and brings
 * the values of the rows that have run back without compiling.
 */
final class Succession {
    private final Rows runner;
    private final Stopper stopper;
    private final Standing standing;
    private final Plan plan;
    private final FilesRead files;
    private final Consumer<Session.Event> listener;

    /** Rows that ended the worker. */
    private final Set<String> deadly = new HashSet<>();

    /** Classes with static fields that the present worker has loaded, and keeps even when their row is gone. */
    private final Set<String> loaded = new HashSet<>();

    /** How many threads each row's last run has left running in the present worker. */
    private final Map<String, Integer> threads = new HashMap<>();

    Succession(
            Rows runner,
            Stopper stopper,
            Standing standing,
            Plan plan,
            FilesRead files,
            Consumer<Session.Event> listener) {
        this.runner = runner;
        this.stopper = stopper;
        this.standing = standing;
        this.plan = plan;
        this.files = files;
        this.listener = listener;
    }

    /** All begins anew, in a worker that has run nothing. */
    void startOver() {
        runner.startOver();
        deadly.clear();
        forgetWorker();
    }

    /** A row is about to run. */
    void begins(PageRow row) {
        stateful(row).forEach(loaded::add);
    }

    /** A row has run: says so, and puts another worker in place where the row has spoilt this one. */
    void hasRun(PageRow row, Run run) {
        note(row.id(), run);
        deadly.remove(row.id());
        String called = "Row " + standing.page().called(row.id()).replaceFirst("^row ", "");
        Optional<String> lost = run.lost();
        if (lost.isPresent()) {
            deadly.add(row.id());
            replaceWorker(called + " " + lost.get() + "; another took over.");
        } else if (run.state() == State.STOPPED && standing.isTied(row.id())) {
            replaceWorker(
                    called + " was stopped while it could change values of other rows; another worker took over.");
        } else if (run.state() == State.STOPPED && run.threads().left() > 0) {
            replaceWorker(called + " was stopped and had left threads running; another worker took over.");
        } else if (abandoned(run) > RowThreads.Running.MOST) {
            replaceWorker(
                    called + " ran again and again and left threads running each time; another worker took over.");
        }
    }

    /** A worker has ended; if it was the one in force, another takes over. */
    void workerEnded(Worker worker) {
        if (runner.uses(worker)) {
            replaceWorker("The worker ended while no row was running; another took over.");
        }
    }

    /** Static fields of a class are what they were at first only in a worker that has not loaded it. */
    boolean keepsState(PageRow row) {
        return stateful(row).anyMatch(loaded::contains);
    }

    /** Puts another worker in place, as often as rows come out otherwise in it than they stood. */
    void renewWorker() {
        boolean whole = false;
        while (!whole) {
            runner.replaceWorker();
            forgetWorker();
            whole = replayAll();
        }
    }

    private void replaceWorker(String sentence) {
        renewWorker();
        listener.accept(new Session.Event.Replaced(sentence));
    }

    private void forgetWorker() {
        loaded.clear();
        threads.clear();
    }

    private void note(String id, Run run) {
        files.put(id, run.files());
        threads.put(id, run.threads().left());
    }

    /** Threads that no row's last run has left, but one before it, or a row that is gone. */
    private int abandoned(Run latest) {
        threads.keySet().removeIf(id -> !standing.page().has(id));
        return latest.threads().all()
                - threads.values().stream().mapToInt(Integer::intValue).sum();
    }

    private static Stream<String> stateful(PageRow row) {
        return row.source().defines().stream().filter(Definition::keepsState).map(Definition::name);
    }

    /** Brings back the values of the rows that have run; false: one of them came out otherwise in this worker. */
    private boolean replayAll() {
        for (PageRow row : standing.page().rows()) {
            if (isToReplay(row.id()) && !replay(row)) {
                return false;
            }
        }
        return true;
    }

    private boolean isToReplay(String id) {
        State state = standing.state(id);
        boolean ran = state == State.FRESH || (state == State.FAILED && !deadly.contains(id));
        boolean stands =
                standing.page().refusal(id).isEmpty() && standing.missing(id).isEmpty();
        return ran && stands && runner.isKnown(id) && !plan.holds(id);
    }

    private boolean replay(PageRow row) {
        State before = standing.state(row.id());
        begins(row);
        Run run = runner.replay(row, standing.page());
        note(row.id(), run);
        if (stopper.hasGivenWay(run)) {
            giveWay(row);
            return true;
        }
        boolean isNews = standing.outcomes().bring(row.id(), run);
        return (!isNews && run.lost().isEmpty()) || cameOutOtherwise(row, run, before);
    }

    /** Its source is no longer what was brought back: it runs again as it is now. */
    private void giveWay(PageRow row) {
        plan.rerun(standing.downstream(Set.of(row.id())));
    }

    /** What follows from a row that came out otherwise is to run; whether the row itself stands all the same. */
    private boolean cameOutOtherwise(PageRow row, Run run, State before) {
        Set<String> affected = new LinkedHashSet<>(standing.downstream(Set.of(row.id())));
        boolean standsAlone = run.state() == before && run.lost().isEmpty() && !standing.isTied(row.id());
        if (run.lost().isPresent() || run.state() == State.STOPPED || standsAlone) {
            affected.remove(row.id());
        }
        run.lost().ifPresent(how -> deadly.add(row.id()));
        affected.removeIf(this::wasBrokenOff);
        plan.rerun(List.copyOf(affected));
        return standsAlone;
    }

    /** A row that ended its worker or was stopped is not run again because of what that did to others: it would not end. */
    private boolean wasBrokenOff(String id) {
        return standing.is(id, State.STOPPED) || (standing.is(id, State.FAILED) && deadly.contains(id));
    }
}
