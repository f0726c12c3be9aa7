package rakeline.desk;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.logging.Level;
import java.util.logging.Logger;
import rakeline.quantity.Refusal;
import rakeline.worksheet.Worksheet;

/** Finds what programs that did not end by themselves had in their journals. */
public final class Recovery {
    private static final Logger LOG = Logger.getLogger(Recovery.class.getName());

    private Recovery() {}

    /** A page that was not saved, claimed by this program until it is discarded or left. */
    public static final class Found {
        private final SafeFile disk;
        private final Path journal;
        private final Claim claim;
        private final Draft draft;
        private final Optional<PageFile> stored;

        private Found(SafeFile disk, Path journal, Claim claim, Draft draft) {
            this.disk = disk;
            this.journal = journal;
            this.claim = claim;
            this.draft = draft;
            this.stored = draft.file().flatMap(file -> read(disk, file));
        }

        public Draft draft() {
            return draft;
        }

        /** The saved version; none where there never was one or it cannot be read. */
        public Optional<PageFile> stored() {
            return stored;
        }

        /** From the saved version, or from an empty page, to what was not saved. */
        public List<Difference> differences() {
            return Difference.between(before(), draft.page());
        }

        private Worksheet before() {
            return stored.map(PageFile::page)
                    .orElseGet(() -> Worksheet.empty(draft.page().title()));
        }

        /** Removes it for good. */
        public void discard() {
            disk.delete(journal);
            claim.close();
        }

        /** Leaves it for the next start. */
        public void leave() {
            claim.close();
        }
    }

    private static Optional<PageFile> read(SafeFile disk, Path file) {
        try {
            return Optional.of(PageFile.open(disk, file));
        } catch (Refusal refusal) {
            LOG.log(Level.WARNING, "the saved version cannot be read", refusal);
            return Optional.empty();
        }
    }

    /**
     * All that is there, the latest first. What differs in nothing from what was saved is removed; a journal that cannot
     * be read is set aside under another name.
     */
    public static List<Found> find(SafeFile disk, Places places) {
        List<Found> all = new ArrayList<>();
        Path folder = Journal.folder(places);
        for (Path journal : disk.list(folder, Journal.ENDING)) {
            Claim.on(journal.resolveSibling(journal.getFileName() + Journal.CLAIMED))
                    .flatMap(claim -> found(disk, journal, claim))
                    .ifPresent(all::add);
        }
        all.sort(Comparator.comparing((Found found) -> found.draft().at()).reversed());
        return List.copyOf(all);
    }

    private static Optional<Found> found(SafeFile disk, Path journal, Claim claim) {
        try {
            Draft draft = Draft.read(disk.read(journal, Draft.LIMIT_BYTES), journal.toString());
            Found found = new Found(disk, journal, claim, draft);
            if (found.stored.isPresent() && found.differences().isEmpty()) {
                found.discard();
                return Optional.empty();
            }
            return Optional.of(found);
        } catch (Refusal broken) {
            LOG.log(Level.WARNING, "a journal cannot be read", broken);
            disk.setAside(journal);
            claim.close();
            return Optional.empty();
        }
    }
}
