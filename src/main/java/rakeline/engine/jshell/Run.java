package rakeline.engine.jshell;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import rakeline.engine.Control;
import rakeline.engine.Result;
import rakeline.engine.State;

/**
 * What came of running a row once.
 *
 * @param files that it read, or looked for
 * @param lost how the worker ended, where it did, in words that follow "row …"
 */
record Run(
        State state,
        String message,
        String printed,
        Optional<Result> result,
        List<Control> controls,
        Optional<String> lost,
        Set<Stamp> files) {
    Run {
        controls = List.copyOf(controls);
        files = Set.copyOf(files);
    }

    static Run broken(String message) {
        return new Run(State.FAILED, message, "", Optional.empty(), List.of(), Optional.empty(), Set.of());
    }
}
