package rakeline.engine.jshell;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import rakeline.engine.Control;
import rakeline.engine.Result;
import rakeline.engine.State;

/**
 * What came of running a row once.
 *
 * @param files that it read, or looked for
 * @param numbers what its variables hold that are plain numbers
 * @param lost how the worker ended, where it did, in words that follow "row …"
 */
record Run(
        State state,
        String message,
        String printed,
        Optional<Result> result,
        List<Control> controls,
        Optional<String> lost,
        Set<Stamp> files,
        Map<String, Double> numbers) {
    Run {
        numbers = Map.copyOf(numbers);
        controls = List.copyOf(controls);
        files = Set.copyOf(files);
    }

    /** A run without numbers. */
    Run(
            State state,
            String message,
            String printed,
            Optional<Result> result,
            List<Control> controls,
            Optional<String> lost,
            Set<Stamp> files) {
        this(state, message, printed, result, controls, lost, files, Map.of());
    }

    static Run broken(String message) {
        return new Run(State.FAILED, message, "", Optional.empty(), List.of(), Optional.empty(), Set.of(), Map.of());
    }
}
