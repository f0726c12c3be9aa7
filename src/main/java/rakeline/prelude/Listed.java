package rakeline.prelude;

import java.util.List;
import java.util.function.Function;

/**
 * Something to pick, with the path by which files name it.
 *
 * @param name as it is shown
 * @param reader reads another of its kind, for a path that is stored and no longer listed
 * @param <T> a bike, a rider
 */
public record Listed<T>(String path, String name, T item, Function<String, T> reader) {
    /** What paths name, read. */
    static <T> List<Listed<T>> of(List<String> paths, Function<String, T> reader, Function<T, String> name) {
        return paths.stream()
                .map(path -> {
                    T item = reader.apply(path);
                    return new Listed<>(path, name.apply(item), item, reader);
                })
                .toList();
    }
}
