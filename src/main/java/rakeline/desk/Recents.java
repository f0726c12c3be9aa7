package rakeline.desk;

import java.nio.file.Path;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * The files that were opened last.
 *
 * @param files the latest first, at most {@value #MOST}, none twice
 */
public record Recents(List<Path> files) {
    public static final int MOST = 12;

    public Recents {
        files = files.stream().distinct().limit(MOST).toList();
    }

    public static Recents none() {
        return new Recents(List.of());
    }

    /** With this file at the head. */
    public Recents opened(Path file) {
        return new Recents(Stream.concat(Stream.of(file.toAbsolutePath().normalize()), files.stream())
                .toList());
    }

    public Recents without(Path file) {
        return new Recents(files.stream().filter(other -> !other.equals(file)).toList());
    }

    /** The files that are no longer where they were. */
    public List<Path> gone(Predicate<Path> exists) {
        return files.stream().filter(exists.negate()).toList();
    }
}
