package rakeline.shell;

import java.nio.file.Path;
import java.util.List;
import java.util.function.Supplier;
import rakeline.desk.Recents;
import rakeline.shell.page.Background;
import rakeline.shell.page.Bench;

/** What stands on the shelf: the pages that come with the program, and the files opened last. */
final class Library {
    private final Bench bench;
    private final Remembered<Recents> recents;
    private final Background background;
    private final Vault vault;
    private final Supplier<Face> face;
    private List<BundledPages.Entry> bundled = List.of();

    Library(Bench bench, Remembered<Recents> recents, Background background, Vault vault, Supplier<Face> face) {
        this.bench = bench;
        this.recents = recents;
        this.background = background;
        this.vault = vault;
        this.face = face;
    }

    /** Finds what comes with the program; what was asked of the background before comes first. */
    void find() {
        background.run(BundledPages::list, this::shelve, bench::notice);
    }

    private void shelve(List<BundledPages.Entry> pages) {
        bundled = pages;
        show();
    }

    /** Puts all of it on the shelf. */
    void show() {
        face.get().shelf().put(bundled, recents.now().files());
    }

    /** Puts a file first among those opened last. */
    void used(Path file) {
        recents.change(before -> before.opened(file), bench::notice);
        show();
    }

    /** Opens something from the shelf. */
    void take(Shelf.Item item, Filing filing) {
        if (item instanceof Shelf.Item.Bundled page) {
            filing.openBundled(page.entry().name());
        } else if (item instanceof Shelf.Item.Recent recent) {
            background.run(
                    () -> vault.disk().exists(recent.file()),
                    there -> openRecent(recent.file(), there, filing),
                    bench::notice);
        }
    }

    private void openRecent(Path file, boolean there, Filing filing) {
        MovedFile.Answer answer = there ? MovedFile.Answer.GO_BACK : MovedFile.ask(face.get(), file);
        if (there) {
            filing.open(file);
        } else if (answer == MovedFile.Answer.FIND) {
            filing.open();
        } else if (answer == MovedFile.Answer.FORGET) {
            recents.change(before -> before.without(file), bench::notice);
            show();
        }
    }

    /** The files opened last. */
    Recents recents() {
        return recents.now();
    }
}
