package rakeline.shell;

import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import rakeline.catalogue.Roots;
import rakeline.desk.Backups;
import rakeline.desk.Kept;
import rakeline.desk.Memory;
import rakeline.desk.Places;
import rakeline.desk.SafeFile;
import rakeline.desk.Saving;
import rakeline.desk.Trust;
import rakeline.worksheet.Worksheet;
import rakeline.worksheet.WorksheetFile;

/** Where the window keeps what is worked on: the disk, the state folder, the versions before. Off the event thread. */
record Vault(SafeFile disk, Places places, Backups backups, Saving saving) {
    static Vault in(SafeFile disk, Places places) {
        Backups backups = new Backups(disk, places);
        return new Vault(disk, places, backups, new Saving(disk, backups, Clock.systemUTC()::instant));
    }

    Kept<Trust> trust() {
        return Memory.trust(disk, places);
    }

    /** Keeps a page among the earlier versions of a file. */
    void keep(Optional<Path> of, Worksheet page) {
        backups.keep(of, WorksheetFile.write(page), Clock.systemUTC().instant());
    }

    /**
     * Writes a page, whatever stands in the file, and says which of its files are not found from there.
     *
     * @param before the folder that they were found from
     */
    Saving.Saved overwrite(Path file, Worksheet page, Optional<Path> before) {
        Saving.Saved saved = saving.overwrite(file, page);
        List<String> lost = Reach.lost(
                page, roots(before), roots(Optional.of(file.toAbsolutePath().getParent())));
        String said = lost.isEmpty()
                ? ""
                : "From where the page is now, these are not found: " + String.join(", ", lost) + ".";
        return new Saving.Saved(
                saved.stored(), Stream.of(saved.said(), said).reduce("", (a, b) -> (a + " " + b).strip()));
    }

    Roots roots(Optional<Path> folder) {
        return new Roots(
                Stream.concat(folder.stream(), Stream.of(places.worksheets())).toList());
    }
}
