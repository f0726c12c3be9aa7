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
 * @param threads that run on
 * @param numbers what its variables hold that are plain numbers
 * @param lost how the worker ended, where it did, in words that follow "row …"
 */
record Run(
        State state,
        String message,
        String printed,
        Optional<Result> result,
        List<Control> controls,
        Set<Stamp> files,
        RowThreads.Running threads,
        Map<String, Double> numbers,
        Optional<String> lost) {
    Run {
        numbers = Map.copyOf(numbers);
        controls = List.copyOf(controls);
        files = Set.copyOf(files);
    }

    /** A row that ran to its end. */
    static Run fresh(
            String notice,
            Printed beside,
            Optional<Result> result,
            List<Control> controls,
            Map<String, Double> numbers) {
        return new Run(
                State.FRESH,
                notice,
                beside.text(),
                result,
                controls,
                beside.files(),
                beside.threads(),
                numbers,
                Optional.empty());
    }

    /** A row that did not. */
    static Run ended(State state, String message, Printed beside, List<Control> controls, Optional<String> lost) {
        return new Run(
                state,
                message,
                beside.text(),
                Optional.empty(),
                controls,
                beside.files(),
                beside.threads(),
                Map.of(),
                lost);
    }

    static Run broken(String message) {
        return ended(State.FAILED, message, new Printed(), List.of(), Optional.empty());
    }
}
