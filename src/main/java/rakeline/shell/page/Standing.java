package rakeline.shell.page;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import rakeline.engine.Control;
import rakeline.engine.Outcome;
import rakeline.engine.State;

/**
 * How a row stands in the window. While a row runs again, its last result and its dials stay in sight, and the dials stay
 * too while it cannot run or fails; its state says that they are of before.
 */
final class Standing {
    private Standing() {}

    /** A row that has not been run. */
    static Outcome untried(String id) {
        return Outcome.bare(id, State.OUT_OF_DATE, "");
    }

    /** How the row stands once an outcome has come. */
    static Outcome after(Outcome before, Outcome told) {
        String name = told.name().isEmpty() ? before.name() : told.name();
        return switch (told.state()) {
            case RUNNING, OUT_OF_DATE ->
                new Outcome(
                        told.id(),
                        name,
                        told.state(),
                        "",
                        before.printed(),
                        before.result(),
                        controls(before, told),
                        told.follows(),
                        told.takes(),
                        before.numbers());
            case WAITING, NOT_RUN ->
                new Outcome(
                        told.id(),
                        name,
                        told.state(),
                        told.message(),
                        "",
                        Optional.empty(),
                        controls(before, told),
                        told.follows(),
                        told.takes(),
                        Map.of());
            case FRESH -> told.called(name);
            case FAILED, STOPPED ->
                new Outcome(
                        told.id(),
                        name,
                        told.state(),
                        told.message(),
                        told.printed(),
                        told.result(),
                        controls(before, told),
                        told.follows(),
                        told.takes(),
                        told.numbers());
        };
    }

    /** Those that it told of, and those of before that it came to no more. */
    private static List<Control> controls(Outcome before, Outcome told) {
        List<String> names = told.controls().stream().map(Control::name).toList();
        Stream<Control> kept = before.controls().stream().filter(control -> !names.contains(control.name()));
        return Stream.concat(told.controls().stream(), kept).toList();
    }
}
