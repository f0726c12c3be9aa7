package rakeline.shell;

import java.nio.file.Path;
import java.util.HashSet;
import java.util.Set;
import java.util.function.Consumer;
import rakeline.desk.PageFile;
import rakeline.desk.Places;
import rakeline.desk.SafeFile;
import rakeline.shell.page.Bench;
import rakeline.shell.page.Origin;
import rakeline.shell.page.PageModel;
import rakeline.worksheet.Worksheet;

/** Opening and saving pages. Files are read and written off the event thread; nothing unsaved is dropped unasked. */
final class Filing implements Bench.View {
    private final Bench bench;
    private final SafeFile disk;
    private final Places places;
    private final Background background;
    private final Questions questions;
    private final Consumer<Path> used;
    private final Set<Path> allowed = new HashSet<>();

    /**
     * @param used hears of each file that was opened or saved
     */
    Filing(Bench bench, SafeFile disk, Places places, Background background, Questions questions, Consumer<Path> used) {
        this.bench = bench;
        this.disk = disk;
        this.places = places;
        this.background = background;
        this.questions = questions;
        this.used = used;
    }

    /** Remembers, for as long as the window lives, what was allowed to run. */
    @Override
    public void show(PageModel now) {
        if (now.allowed()) {
            now.origin().path().ifPresent(allowed::add);
        }
    }

    void openNew() {
        whenSettled(() -> bench.open(Worksheet.empty("Untitled"), new Origin.New(), true));
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
        whenSettled(() -> background.run(() -> PageFile.open(disk, whole), this::opened, bench::notice));
    }

    private void opened(PageFile stored) {
        bench.open(stored.page(), new Origin.OnDisk(stored), allowed.contains(stored.file()));
        used.accept(stored.file());
    }

    void save() {
        save(() -> {});
    }

    private void save(Runnable then) {
        bench.commit();
        if (bench.model().origin() instanceof Origin.OnDisk onDisk) {
            Worksheet page = bench.model().page();
            background.run(() -> onDisk.stored().save(disk, page), stored -> saved(stored, then), bench::notice);
        } else {
            saveAs(then);
        }
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
                () -> disk.exists(file),
                there -> {
                    if (!there || questions.mayReplace(file)) {
                        write(file, page, then);
                    }
                },
                bench::notice);
    }

    /** Writes the page to a file and goes on from there. */
    void write(Path file, Worksheet page, Runnable then) {
        background.run(() -> PageFile.create(disk, file, page), stored -> saved(stored, then), bench::notice);
    }

    private void saved(PageFile stored, Runnable then) {
        bench.saved(new Origin.OnDisk(stored), stored.page(), "saved as " + stored.file());
        used.accept(stored.file());
        then.run();
    }

    /** Goes on once nothing unsaved stands in the way: saved, or not to be saved. */
    void whenSettled(Runnable then) {
        bench.commit();
        if (bench.model().history().isSaved()) {
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
        return bench.model().origin().folder().orElse(places.worksheets());
    }

    private String fileName() {
        String words =
                bench.model().page().title().replaceAll("[^\\p{L}\\p{N}]+", "-").replaceAll("^-|-$", "");
        return (words.isEmpty() ? "untitled" : words) + rakeline.worksheet.WorksheetFile.EXTENSION;
    }
}
