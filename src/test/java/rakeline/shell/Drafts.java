package rakeline.shell;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import rakeline.desk.Draft;
import rakeline.desk.Journal;
import rakeline.desk.Places;
import rakeline.desk.SafeFile;
import rakeline.worksheet.Worksheet;

/** Journals as killed programs leave them. */
final class Drafts {
    private Drafts() {}

    /** Leaves a page unsaved: the journal of a program, copied while it is at work. */
    static void left(Path home, Worksheet page, Path file) {
        Path folder = Places.in(home).state().resolve("journal");
        try (Journal journal = new Journal(SafeFile.onDisk(), Places.in(home), trouble -> {})) {
            journal.keep(new Draft(page, Optional.of(file), true, Instant.EPOCH));
            journal.flush();
            for (Path kept : journals(folder)) {
                Files.copy(kept, kept.resolveSibling("left.journal"));
            }
            journal.forget();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static List<Path> journals(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(file -> file.toString().endsWith(".journal")).toList();
        }
    }
}
