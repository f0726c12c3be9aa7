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
 * @param trouble why it cannot, in one sentence; empty where it can
 * @param lister lists another of its kind, for a path that is stored and not offered
 * @param <T> a bike, a rider, a stock of parts
 */
public record Listed<T>(
        String path, String name, Optional<T> read, String trouble, Function<String, Listed<T>> lister) {
    /**
     * The thing itself.
     *
     * @throws Refusal that says why its file cannot be read
     */
    public T item() {
        return read.orElseThrow(() -> new Refusal(trouble));
    }

    /** Whether its file can be read. */
    public boolean isRead() {
        return read.isPresent();
    }

    /** What another path names. */
    Listed<T> another(String otherPath) {
        return lister.apply(otherPath);
    }

    @Override
    public String toString() {
        return trouble.isEmpty() ? name + " (" + path + ")" : trouble;
    }

    /** What paths name; what cannot be read says so, so that one broken file hides no other. */
    static <T> List<Listed<T>> of(List<String> paths, Function<String, T> reader, Function<T, String> name) {
        return paths.stream().map(path -> listed(path, reader, name)).toList();
    }

    private static <T> Listed<T> listed(String path, Function<String, T> reader, Function<T, String> name) {
        Function<String, Listed<T>> lister = other -> listed(other, reader, name);
        try {
            T item = reader.apply(path);
            return new Listed<>(path, name.apply(item), Optional.of(item), "", lister);
        } catch (Refusal refusal) {
            return new Listed<>(path, path, Optional.empty(), refusal.getMessage(), lister);
        }
    }
}
