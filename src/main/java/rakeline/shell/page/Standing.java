package rakeline.shell.page;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import rakeline.engine.Control;
import rakeline.engine.Outcome;
import rakeline.engine.Result;
import rakeline.engine.State;

/**
 * How a row stands in the window. While a row runs again, its last result and its dials stay in sight, and the dials stay
 * too while it cannot run; its state says that they are of before.
 */
public record Standing(
        String name,
        State state,
        String message,
        String printed,
        Optional<Result> result,
        List<Control> controls,
        List<String> follows,
        Map<String, Double> numbers) {
    /** A row that has not been run. */
    public static final Standing UNTRIED =
            new Standing("", State.OUT_OF_DATE, "", "", Optional.empty(), List.of(), List.of(), Map.of());

    public Standing {
        controls = List.copyOf(controls);
        follows = List.copyOf(follows);
        numbers = Map.copyOf(numbers);
    }

    /** How the row stands once an outcome has come. */
    public Standing after(Outcome outcome) {
        return switch (outcome.state()) {
            case RUNNING, OUT_OF_DATE -> keeping(outcome);
            case WAITING, NOT_RUN ->
                new Standing(
                        nameOf(outcome),
                        outcome.state(),
                        outcome.message(),
                        "",
                        Optional.empty(),
                        controlsOf(outcome),
                        outcome.follows(),
                        Map.of());
            default ->
                new Standing(
                        nameOf(outcome),
                        outcome.state(),
                        outcome.message(),
                        outcome.printed(),
                        outcome.result(),
                        outcome.controls(),
                        outcome.follows(),
                        outcome.numbers());
        };
    }

    private Standing keeping(Outcome outcome) {
        return new Standing(
                nameOf(outcome), outcome.state(), "", printed, result, controlsOf(outcome), outcome.follows(), numbers);
    }

    private List<Control> controlsOf(Outcome outcome) {
        return outcome.controls().isEmpty() ? controls : outcome.controls();
    }

    private String nameOf(Outcome outcome) {
        return outcome.name().isEmpty() ? name : outcome.name();
    }

    Standing in(State other) {
        return new Standing(name, other, message, printed, result, controls, follows, numbers);
    }

    /** The same as an outcome of a row. */
    Outcome of(String id) {
        return new Outcome(id, name, state, message, printed, result, controls, follows, numbers);
    }
}
