package rakeline.prelude;

import java.util.List;
import rakeline.quantity.Refusal;

/** What a row asks for when it says {@code pick(…)}: a choice among items, each with the path that files store. */
public record PickRequest(String label, List<String> paths, List<String> labels) {
    public PickRequest {
        paths = List.copyOf(paths);
        labels = List.copyOf(labels);
        if (paths.isEmpty()) {
            throw new Refusal("the picker \"" + label + "\" has nothing to choose from.");
        }
    }
}
