package rakeline.engine.jshell;

import java.util.List;
import java.util.Optional;
import rakeline.engine.Control;
import rakeline.engine.Result;
import rakeline.engine.State;

/**
 * What came of running a row once.
 *
 * @param lost how the worker ended, where it did, in words that follow "row …"
 */
record Run(
        State state,
        String message,
        String printed,
        Optional<Result> result,
        List<Control> controls,
        Optional<String> lost) {
    Run {
        controls = List.copyOf(controls);
    }

    static Run broken(String message) {
        return new Run(State.FAILED, message, "", Optional.empty(), List.of(), Optional.empty());
    }
}
