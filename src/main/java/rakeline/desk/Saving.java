package rakeline.desk;

import java.nio.file.Path;
import java.time.Instant;
import java.util.Optional;
import java.util.function.Supplier;
import rakeline.quantity.Refusal;
import rakeline.worksheet.Worksheet;
import rakeline.worksheet.WorksheetFile;

/** Saves pages: what a save replaces is kept among the backups, and what others have written is not overwritten unasked. */
public final class Saving {
    private final SafeFile disk;
    private final Backups backups;
    private final Supplier<Instant> clock;

    public Saving(SafeFile disk, Backups backups, Supplier<Instant> clock) {
        this.disk = disk;
        this.backups = backups;
        this.clock = clock;
    }

    /** How a save went. */
    public sealed interface Outcome {}

    /**
     * It stands in its file.
     *
     * @param said one sentence where what it replaced could not be kept; else empty
     */
    public record Saved(PageFile stored, String said) implements Outcome {}

    /** Nothing was written, since another program has changed the file. */
    public record Changed(Theirs theirs) implements Outcome {}

    /**
     * What another program has made of a file.
     *
     * @param page none where it is no worksheet any more
     * @param said why it is none; else empty
     */
    public record Theirs(Path file, Stamp stamp, Optional<PageFile> page, String said) {}

    /** Writes a later version of a page, unless its file was changed meanwhile. */
    public Outcome save(PageFile stored, Worksheet page) {
        Optional<Theirs> theirs = theirs(stored);
        return theirs.isPresent() ? new Changed(theirs.get()) : overwrite(stored.file(), page);
    }

    /** Writes a page, whatever stands in the file; that is kept among the backups. */
    public Saved overwrite(Path file, Worksheet page) {
        byte[] bytes = WorksheetFile.write(page);
        String said = keepBefore(file, Stamp.of(bytes));
        return new Saved(new PageFile(file, page, disk.write(file, bytes)), said);
    }

    private String keepBefore(Path file, Stamp next) {
        try {
            if (disk.isChanged(file, next)) {
                backups.keep(Optional.of(file), disk.read(file, WorksheetFile.LIMIT_BYTES), clock.get());
            }
            return "";
        } catch (Refusal refusal) {
            return "The version before is not kept: " + refusal.getMessage();
        }
    }

    /** What another program has made of a page's file since it was read or written here; none where nothing. */
    public Optional<Theirs> theirs(PageFile stored) {
        if (!stored.isChanged(disk)) {
            return Optional.empty();
        }
        byte[] bytes = disk.read(stored.file(), SafeFile.LARGEST_COMPARED);
        return Optional.of(theirs(stored.file(), bytes));
    }

    private static Theirs theirs(Path file, byte[] bytes) {
        Stamp stamp = Stamp.of(bytes);
        try {
            Worksheet page = WorksheetFile.read(bytes, file.toString());
            return new Theirs(file, stamp, Optional.of(new PageFile(file, page, stamp)), "");
        } catch (Refusal refusal) {
            return new Theirs(file, stamp, Optional.empty(), refusal.getMessage());
        }
    }
}
