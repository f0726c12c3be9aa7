package rakeline.prelude;

import java.util.List;
import rakeline.quantity.Refusal;

/**
 * What a row asks for when it says {@code pick(…)}: a choice among items, each with the path that files store.
 *
 * @param troubles why other files cannot be offered, a sentence each
 */
public record PickRequest(String label, List<String> paths, List<String> labels, List<String> troubles) {
    public PickRequest {
        paths = List.copyOf(paths);
        labels = List.copyOf(labels);
        troubles = List.copyOf(troubles);
        if (paths.isEmpty()) {
            throw new Refusal(
                    ("the picker \"" + label + "\" has nothing to choose from. " + String.join(" ", troubles)).strip());
        }
    }
}
