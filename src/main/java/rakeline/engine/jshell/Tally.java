package rakeline.engine.jshell;

import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import rakeline.engine.Control;
import rakeline.engine.Result;
import rakeline.engine.State;
import rakeline.quantity.Decimals;

/** Gathers what a row's calls bring, until one of them ends the row. */
final class Tally {
    private final WorkerControl control;
    private final Stopper stopper;
    private final Failures failures;
    private final Duration limit;
    private final Printed printed;
    private final List<Control> controls = new ArrayList<>();
    private final List<String> notices = new ArrayList<>();
    private final Set<String> assigned;
    private final Map<String, Double> numbers = new LinkedHashMap<>();
    private Optional<Result> result = Optional.empty();
    private Optional<Run> ended = Optional.empty();

    /** @param assigned variables that the row assigns after they were declared */
    Tally(
            WorkerControl control,
            Stopper stopper,
            Failures failures,
            Duration limit,
            Printed printed,
            Set<String> assigned) {
        this.assigned = Set.copyOf(assigned);
        this.printed = printed;
        this.control = control;
        this.stopper = stopper;
        this.failures = failures;
        this.limit = limit;
    }

    /**
     * Takes what came of a call, or of none; false: the row has ended.
     *
     * @param isResult whether its value is the row's result
     */
    boolean take(Optional<Answer> answer, boolean isResult) {
        if (stopper.cause().isPresent()) {
            return stopped(stopper.cause().get());
        }
        if (control.lost().isPresent()) {
            String how = control.lost().get().getMessage();
            return end(State.FAILED, "This row " + how + ".", Optional.of(how));
        }
        if (answer.isPresent() && answer.get() instanceof Answer.Threw threw) {
            threw.control().ifPresent(controls::add);
            return threw.isOfBrokenClass() ? metBrokenClass() : fail(failures.sentence(threw));
        }
        answer.ifPresent(done -> keep(done, isResult));
        return true;
    }

    /** Takes what a variable was declared with, where that is a number that it keeps. */
    void note(String variable, Optional<Answer> answer) {
        if (answer.isPresent()
                && answer.get() instanceof Answer.Done done
                && !Double.isNaN(done.number())
                && !assigned.contains(variable)) {
            numbers.put(variable, done.number());
        }
    }

    /** Ends the row with a failure; false, as from {@link #take}. */
    boolean fail(String message) {
        return end(State.FAILED, message, Optional.empty());
    }

    boolean hasEnded() {
        return ended.isPresent();
    }

    /** How the row stands, now that nothing more is asked of it. */
    Run run() {
        if (printed.threads().left() > 0 && control.lost().isEmpty()) {
            control.awaitThreads(printed);
        }
        if (ended.isEmpty() && printed.threads().isTooMany()) {
            String left = "left " + printed.threads().left() + " threads running";
            end(
                    State.FAILED,
                    "This row " + left + "; at most " + RowThreads.Running.MOST
                            + " may run on when a row ends, so its worker was ended.",
                    Optional.of(left));
        }
        return ended.orElseGet(() -> Run.fresh(notice(), printed, result, controls, numbers));
    }

    private String notice() {
        int left = printed.threads().left();
        String running = left == 1 ? "This row left a thread running." : "This row left " + left + " threads running.";
        return String.join(
                "\n",
                left == 0
                        ? notices
                        : Stream.concat(notices.stream(), Stream.of(running)).toList());
    }

    private boolean end(State state, String message, Optional<String> lost) {
        ended = Optional.of(Run.ended(state, message, printed, controls, lost));
        return false;
    }

    private void keep(Answer answer, boolean isResult) {
        if (answer instanceof Answer.Done done) {
            result = isResult ? done.result() : Optional.empty();
            done.control().ifPresent(controls::add);
            if (!done.notice().isEmpty()) {
                notices.add(done.notice());
            }
        }
    }

    private boolean metBrokenClass() {
        String how = "met a class that something before it had broken off";
        return end(State.FAILED, "This row " + how + "; run it once more.", Optional.of(how));
    }

    private boolean stopped(Stopper.Cause cause) {
        String sentence = cause == Stopper.Cause.TIME_LIMIT
                ? "This row was stopped at its time limit of " + Decimals.shortest(limit.toMillis() / 1000.0) + " s"
                : "This row was stopped";
        Optional<String> lost = control.lost().map(Worker.Lost::getMessage);
        String more = lost.map(how -> "; it " + how).orElse("");
        return end(State.STOPPED, sentence + more + ".", lost);
    }
}
