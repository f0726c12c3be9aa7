package rakeline.engine;

import java.util.List;
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
 */
public record Outcome(
        String id,
        String name,
        State state,
        String message,
        String printed,
        Optional<Result> result,
        List<Control> controls,
        List<String> follows) {
    public Outcome {
        controls = List.copyOf(controls);
        follows = List.copyOf(follows);
    }

    /** The same, called so and following these. */
    public Outcome placed(String newName, List<String> following) {
        return new Outcome(id, newName, state, message, printed, result, controls, following);
    }
}
