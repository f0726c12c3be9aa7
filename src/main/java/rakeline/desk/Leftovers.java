package rakeline.desk;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.ConcurrentHashMap;
import java.util.logging.Level;
import java.util.logging.Logger;
import java.util.regex.Pattern;

/** The files in which new content is prepared beside the old; a program that is killed in a write leaves one behind. */
final class Leftovers {
    /** No write takes so long: a file of this age is nobody's work any more. */
    static final Duration STALE = Duration.ofMinutes(10);

    private static final Logger LOG = Logger.getLogger(Leftovers.class.getName());
    private static final Pattern OURS =
            Pattern.compile("\\.rakeline-[0-9a-f]{8}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{12}\\.tmp");

    private final FileLayer files;
    private final Clock clock;
    private final Set<Path> cleared = ConcurrentHashMap.newKeySet();

    Leftovers(FileLayer files, Clock clock) {
        this.files = files;
        this.clock = clock;
    }

    /** A name for a new one. */
    static Path beside(Path folder) {
        return folder.resolve(".rakeline-" + UUID.randomUUID() + ".tmp");
    }

    /** Takes stale ones away, once for each folder; one that cannot be taken away is left. */
    void clear(Path folder) {
        if (cleared.add(folder)) {
            try {
                for (Path file : files.list(folder)) {
                    clearStale(file);
                }
            } catch (IOException e) {
                LOG.log(Level.WARNING, "a folder could not be cleared of what a killed program left", e);
            }
        }
    }

    private void clearStale(Path file) throws IOException {
        boolean ours = OURS.matcher(file.getFileName().toString()).matches() && files.isPlain(file);
        Instant oldest = clock.instant().minus(STALE);
        if (ours && files.modified(file).isBefore(oldest)) {
            files.delete(file);
        }
    }
}
