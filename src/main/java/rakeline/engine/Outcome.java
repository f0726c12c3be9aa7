package rakeline.engine;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * How one row stands after an attempt to run it. The window, the command line and the tests read the same records.
 *
 * @param id of the row
 * @param name what the row defines, or else what it shows
 * @param message one plain sentence on what is wrong, then the Java message if there is one; empty when fresh
 * @param printed what the row printed, bounded
 * @param controls dials and pickers that it declares
 * @param follows the names of the dials and pickers that it follows, its own among them, in page order
 * @param takes the names that it takes from rows above, and which row gives each
 * @param numbers what its variables hold that are plain numbers and are assigned nowhere in it again
 */
public record Outcome(
        String id,
        String name,
        State state,
        String message,
        String printed,
        Optional<Result> result,
        List<Control> controls,
        List<String> follows,
        List<Layout.Need> takes,
        Map<String, Double> numbers) {
    public Outcome {
        controls = List.copyOf(controls);
        follows = List.copyOf(follows);
        takes = List.copyOf(takes);
        numbers = Collections.unmodifiableMap(new LinkedHashMap<>(numbers));
    }

    /** An outcome without numbers that takes nothing from other rows. */
    public Outcome(
            String id,
            String name,
            State state,
            String message,
            String printed,
            Optional<Result> result,
            List<Control> controls,
            List<String> follows) {
        this(id, name, state, message, printed, result, controls, follows, List.of(), Map.of());
    }

    /** A row that has come to nothing, and why. */
    public static Outcome bare(String id, State state, String message) {
        return new Outcome(id, "", state, message, "", Optional.empty(), List.of(), List.of());
    }

    /** The same in another state. */
    public Outcome in(State other) {
        return new Outcome(id, name, other, message, printed, result, controls, follows, takes, numbers);
    }

    /** The same with another message. */
    public Outcome saying(String other) {
        return new Outcome(id, name, state, other, printed, result, controls, follows, takes, numbers);
    }

    /** The same, called so. */
    public Outcome called(String newName) {
        return placed(newName, follows, takes);
    }

    /** The same, called so, following these dials and pickers and taking these names. */
    public Outcome placed(String newName, List<String> following, List<Layout.Need> taking) {
        return new Outcome(id, newName, state, message, printed, result, controls, following, taking, numbers);
    }
}
