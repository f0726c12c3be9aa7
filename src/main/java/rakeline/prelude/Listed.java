package rakeline.prelude;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import rakeline.quantity.Refusal;

/**
 * Something to pick, with the path by which files name it.
 *
 * @param name as it is shown
 * @param read empty where its file cannot be read
 * @param reader reads another of its kind, for a path that is stored and no longer listed
 * @param <T> a bike, a rider, a stock of parts
 */
public record Listed<T>(String path, String name, Optional<T> read, Function<String, T> reader) {
    /**
     * The thing itself.
     *
     * @throws Refusal that says why its file cannot be read
     */
    public T item() {
        return read.orElseGet(() -> reader.apply(path));
    }

    /** What paths name; what cannot be read is listed as well and says so, so that one broken file hides no other. */
    static <T> List<Listed<T>> of(List<String> paths, Function<String, T> reader, Function<T, String> name) {
        return paths.stream()
                .map(path -> read(path, reader)
                        .map(item -> new Listed<>(path, name.apply(item), Optional.of(item), reader))
                        .orElseGet(() -> new Listed<>(path, path + ", not readable", Optional.empty(), reader)))
                .toList();
    }

    private static <T> Optional<T> read(String path, Function<String, T> reader) {
        try {
            return Optional.of(reader.apply(path));
        } catch (Refusal saidWhenPicked) {
            // whoever picks it reads it again and is told why it cannot be
            return Optional.empty();
        }
    }
}
