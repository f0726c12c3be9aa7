package rakeline.shell.page;

import java.nio.file.Path;
import java.util.Optional;
import rakeline.desk.PageFile;

/** Where a page comes from. */
public sealed interface Origin {
    /** Begun in this window, not saved yet. */
    record New() implements Origin {}

    /**
     * Bundled with the program, read only.
     *
     * @param name as in {@code worksheets/welcome.rakeline}
     */
    record Bundled(String name) implements Origin {}

    /** A file as it was last read or written here. */
    record OnDisk(PageFile stored) implements Origin {
        @Override
        public Optional<Path> path() {
            return Optional.of(stored.file());
        }
    }

    default Optional<Path> path() {
        return Optional.empty();
    }

    /** The folder whose files the page's rows may read. */
    default Optional<Path> folder() {
        return path().map(file -> file.toAbsolutePath().getParent());
    }
}
