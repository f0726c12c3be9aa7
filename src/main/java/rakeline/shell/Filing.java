package rakeline.shell;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import rakeline.desk.Difference;
import rakeline.desk.PageFile;
import rakeline.desk.SafeFile;
import rakeline.desk.Saving;
import rakeline.desk.Stamp;
import rakeline.desk.Trust;
import rakeline.shell.page.Background;
import rakeline.shell.page.Bench;
import rakeline.shell.page.Origin;
import rakeline.shell.page.PageModel;
import rakeline.worksheet.Row;
import rakeline.worksheet.Worksheet;
import rakeline.worksheet.WorksheetFile;

/**
 * Opening and saving pages. Files are read and written off the event thread; nothing unsaved is dropped unasked, nothing
 * that another program wrote is overwritten unasked, and code from elsewhere does not run.
 */
final class Filing implements Bench.View {
    private final Bench bench;
    private final Vault vault;
    private final Background background;
    private final Questions questions;
    private final Consumer<Path> used;
    private final Remembered<Trust> trust;
    private Optional<PageFile> trusted = Optional.empty();
    private Optional<Stamp> asked = Optional.empty();

    /**
     * @param used hears of each file that was opened or saved
     */
    Filing(Bench bench, Vault vault, Background background, Questions questions, Consumer<Path> used) {
        this.bench = bench;
        this.vault = vault;
        this.background = background;
        this.questions = questions;
        this.used = used;
        trust = new Remembered<>(vault.trust(), background, Trust.none());
        trust.recall(bench::noticeWhenOpened);
    }

    /** Remembers what was allowed to run, once it stands in a file. */
    @Override
    public void show(PageModel now) {
        if (now.allowed() && now.isSaved() && now.origin() instanceof Origin.OnDisk onDisk) {
            remember(onDisk.stored());
        }
    }

    private void remember(PageFile stored) {
        boolean known = trusted.filter(before -> before.equals(stored)).isPresent();
        trusted = Optional.of(stored);
        if (!known && !trust.now().isIn(stored.page())) {
            trust.change(before -> before.with(stored.page()), bench::notice);
        }
    }

    /** True where this code was let run. */
    boolean isTrusted(Worksheet page) {
        return trust.now().isIn(page);
    }

    /**
     * Opens a page with one empty row.
     *
     * @param then called once it is there
     */
    void openNew(Runnable then) {
        Worksheet page = Worksheet.empty("Untitled").insert(0, Row.Snippet.of("r1", ""));
        whenSettled(() -> {
            bench.open(page, new Origin.New(), true);
            then.run();
        });
    }

    void openBundled(String name) {
        whenSettled(() -> background.run(
                () -> BundledPages.read(name),
                page -> bench.open(page, new Origin.Bundled(name), true),
                bench::notice));
    }

    void open() {
        questions.fileToOpen(folder()).ifPresent(this::open);
    }

    void open(Path file) {
        Path whole = file.toAbsolutePath().normalize();
        whenSettled(() -> background.run(() -> PageFile.open(disk(), whole), this::opened, bench::notice));
    }

    private void opened(PageFile stored) {
        asked = Optional.empty();
        bench.open(stored.page(), new Origin.OnDisk(stored), isTrusted(stored.page()));
        used.accept(stored.file());
    }

    private SafeFile disk() {
        return vault.disk();
    }

    void save() {
        save(() -> {});
    }

    private void save(Runnable then) {
        bench.commit();
        if (bench.model().origin() instanceof Origin.OnDisk onDisk) {
            Worksheet page = bench.model().page();
            Worksheet whole = bench.model().choosing(page);
            background.run(
                    () -> vault.saving().save(onDisk.stored(), whole),
                    outcome -> take(outcome, page, then),
                    bench::notice);
        } else {
            saveAs(then);
        }
    }

    private void take(Saving.Outcome outcome, Worksheet page, Runnable then) {
        if (outcome instanceof Saving.Saved saved) {
            saved(saved, page, then);
        } else if (outcome instanceof Saving.Changed changed) {
            ask(changed.theirs(), then);
        }
    }

    /** Looks whether another program has changed the page's file, and asks once for each change. */
    void lookAround() {
        if (bench.model().origin() instanceof Origin.OnDisk onDisk) {
            background.run(() -> vault.saving().theirs(onDisk.stored()), theirs -> noticed(onDisk, theirs), bench::say);
        }
    }

    private void noticed(Origin.OnDisk as, Optional<Saving.Theirs> theirs) {
        boolean still = bench.model().origin().equals(as);
        theirs.filter(found -> still && !asked.equals(Optional.of(found.stamp())))
                .ifPresent(found -> ask(found, () -> {}));
    }

    private void ask(Saving.Theirs theirs, Runnable then) {
        asked = Optional.of(theirs.stamp());
        bench.commit();
        Worksheet mine = bench.model().page();
        List<Difference> differences = theirs.page()
                .map(stored -> Difference.between(mine, stored.page()))
                .orElse(List.of());
        switch (questions.changed(theirs, differences)) {
            case KEEP_MINE -> saveAs(then);
            case LOAD_THEIRS -> load(theirs, mine, then);
            case OVERWRITE -> write(theirs.file(), mine, then);
            case NOT_NOW -> bench.say("nothing was written; the file holds what another program wrote");
        }
    }

    /** What the window had stays among the earlier versions. */
    private void load(Saving.Theirs theirs, Worksheet mine, Runnable then) {
        boolean saved = bench.model().isSaved();
        background.run(
                () -> {
                    if (!saved) {
                        vault.keep(Optional.of(theirs.file()), mine);
                    }
                    return theirs.page().orElseThrow();
                },
                stored -> {
                    opened(stored);
                    then.run();
                },
                bench::notice);
    }

    void saveAs() {
        saveAs(() -> {});
    }

    private void saveAs(Runnable then) {
        bench.commit();
        Path proposed = bench.model().origin().path().orElseGet(() -> folder().resolve(fileName()));
        questions.fileToSave(proposed).ifPresent(file -> askThenWrite(file, then));
    }

    private void askThenWrite(Path file, Runnable then) {
        Worksheet page = bench.model().page();
        background.run(
                () -> disk().exists(file),
                there -> {
                    if (!there || questions.mayReplace(file)) {
                        write(file, page, then);
                    }
                },
                bench::notice);
    }

    /** Writes the page to a file, with all that its pickers stand at, and goes on from there. */
    void write(Path file, Worksheet page, Runnable then) {
        Optional<Path> before = bench.model().origin().folder();
        Worksheet whole = bench.model().choosing(page);
        background.run(() -> vault.overwrite(file, whole, before), saved -> saved(saved, page, then), bench::notice);
    }

    /** @param page as it stands here, where what nobody has chosen yet need not be stored */
    private void saved(Saving.Saved saved, Worksheet page, Runnable then) {
        PageFile stored = saved.stored();
        bench.saved(new Origin.OnDisk(stored), page, "saved as " + stored.file());
        bench.notice(saved.said());
        used.accept(stored.file());
        then.run();
    }

    /** Goes on once nothing unsaved stands in the way: saved, or not to be saved. */
    void whenSettled(Runnable then) {
        bench.commit();
        if (bench.model().isSaved()) {
            then.run();
            return;
        }
        switch (questions.unsaved(bench.model().page().title())) {
            case SAVE -> save(then);
            case DO_NOT_SAVE -> then.run();
            case GO_BACK -> bench.say("nothing changed");
        }
    }

    private Path folder() {
        return bench.model().origin().folder().orElse(vault.places().worksheets());
    }

    private String fileName() {
        String words =
                bench.model().page().title().replaceAll("[^\\p{L}\\p{N}]+", "-").replaceAll("^-|-$", "");
        return (words.isEmpty() ? "untitled" : words) + WorksheetFile.EXTENSION;
    }
}
