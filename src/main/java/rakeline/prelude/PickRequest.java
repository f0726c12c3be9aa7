package rakeline.prelude;

import java.util.List;
import java.util.stream.Stream;
import rakeline.quantity.Refusal;

/**
 * What a row asks for when it says {@code pick(…)}: a choice among things, each with the path that files store.
 *
 * @param listed what is offered, files that cannot be read among it
 * @param <T> a bike, a rider, a stock of parts
 */
public record PickRequest<T>(String label, List<Listed<T>> listed) {
    /** @throws Refusal where nothing is offered */
    public PickRequest {
        listed = List.copyOf(listed);
        if (listed.isEmpty()) {
            throw new Refusal("the picker \"" + label + "\" has nothing to choose from.");
        }
    }

    /** What a path names, whether it is offered or not; the first where the path is empty. */
    public Listed<T> at(String path) {
        return path.isEmpty()
                ? listed.get(0)
                : listed.stream()
                        .filter(one -> one.path().equals(path))
                        .findFirst()
                        .orElseGet(() -> listed.get(0).another(path));
    }

    /** Whether it is among what is offered. */
    public boolean offers(Listed<T> chosen) {
        return listed.contains(chosen);
    }

    /** What a person can choose: all that can be read, and what is chosen already. */
    public List<Listed<T>> choices(Listed<T> chosen) {
        return Stream.concat(
                        listed.stream().filter(one -> one.equals(chosen) || one.isRead()),
                        offers(chosen) ? Stream.empty() : Stream.of(chosen))
                .toList();
    }
}
