package rakeline.shell;

import java.awt.Dimension;
import java.awt.datatransfer.Transferable;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import javax.swing.JFrame;
import javax.swing.WindowConstants;
import rakeline.desk.Bounds;
import rakeline.desk.Preferences;
import rakeline.desk.Preferences.Theme;
import rakeline.desk.Recents;
import rakeline.shell.look.Look;
import rakeline.shell.page.Bench;
import rakeline.shell.page.PageModel;
import rakeline.worksheet.Worksheet;

/** The one window: a page on a bench, its menus and keys, its look. To be used on the event thread. */
public final class Window {
    private final JFrame frame = new JFrame("Rakeline");
    private final Bench bench;
    private final Taste taste;
    private final Remembered<Recents> recents;
    private final Remembered<Bounds> place;
    private final Background background;
    private final Filing filing;
    private final Rescue rescue;
    private final HandoutMaker handouts;
    private Face face;
    private List<BundledPages.Entry> bundled = List.of();
    private List<Deed> deeds = List.of();

    Window(
            Bench bench,
            Taste taste,
            Remembered<Recents> recents,
            Remembered<Bounds> place,
            Background background,
            Vault vault) {
        this.bench = bench;
        this.taste = taste;
        this.recents = recents;
        this.place = place;
        this.background = background;
        Questions questions = questions();
        filing = new Filing(bench, vault, background, questions, this::used);
        rescue = new Rescue(bench, vault, background, questions, filing);
        handouts = new HandoutMaker(bench, vault, questions, taste::look);
        frame.setDefaultCloseOperation(WindowConstants.DO_NOTHING_ON_CLOSE);
        frame.setMinimumSize(new Dimension(800, 560));
        frame.addWindowListener(new WindowAdapter() {
            @Override
            public void windowOpened(WindowEvent event) {
                face.ledger().requestFocusInWindow();
            }

            @Override
            public void windowClosing(WindowEvent event) {
                close();
            }
        });
        frame.addWindowFocusListener(new WindowAdapter() {
            @Override
            public void windowGainedFocus(WindowEvent event) {
                filing.lookAround();
            }
        });
        rebuild();
        background.run(BundledPages::list, this::shelve, bench::notice);
    }

    private Questions questions() {
        return new Questions(() -> frame.getContentPane(), taste::look);
    }

    /** The frame that the page stands in. */
    public JFrame frame() {
        return frame;
    }

    /** Opens a file, after asking about changes that are not saved. */
    public void open(Path file) {
        filing.open(file);
    }

    void openWelcome() {
        filing.openBundled(BundledPages.WELCOME);
    }

    /** Closes the window and ends what runs, unless the person goes back to what is not saved. */
    public void close() {
        filing.whenSettled(this::end);
    }

    private void end() {
        bench.close();
        background.run(this::endJournal, ended -> {}, bench::notice);
        place.change(before -> Stage.of(frame, before), this::leave, refused -> leave());
    }

    private boolean endJournal() {
        rescue.end();
        return true;
    }

    private void leave() {
        background.close();
        handouts.close();
        frame.dispose();
    }

    /** Asks about pages that were not saved when a program ended. */
    void recover() {
        rescue.offer();
    }

    /** Shows the window where it stood last. */
    void appear() {
        Stage.set(frame, place.now());
    }

    Bench bench() {
        return bench;
    }

    Filing filing() {
        return filing;
    }

    private void shelve(List<BundledPages.Entry> pages) {
        bundled = pages;
        face.shelf().put(bundled, recents.now().files());
    }

    private void used(Path file) {
        recents.change(before -> before.opened(file), bench::notice);
        face.shelf().put(bundled, recents.now().files());
    }

    /** Builds all views anew, in the look that is preferred now. */
    private void rebuild() {
        Look look = taste.look();
        rakeline.shell.look.Theme.install(look);
        bench.unwatchAll();
        face = new Face(look, bench, this::take);
        face.shelf().put(bundled, recents.now().files());
        deeds = deeds();
        bench.watch(filing);
        bench.watch(rescue);
        bench.watch(handouts);
        bench.watch(this::showTitle);
        frame.setJMenuBar(MenuLine.of(deeds, look));
        frame.setContentPane(face);
        face.ledger().leaveText();
        frame.revalidate();
        frame.repaint();
    }

    private void showTitle(PageModel now) {
        frame.setTitle((now.history().isSaved() ? "" : "• ") + now.page().title() + " – Rakeline");
    }

    private void take(Shelf.Item item) {
        if (item instanceof Shelf.Item.Bundled page) {
            filing.openBundled(page.entry().name());
        } else if (item instanceof Shelf.Item.Recent file) {
            filing.open(file.file());
        }
    }

    private List<Deed> deeds() {
        List<Deed> all = new ArrayList<>(onFiles());
        all.addAll(new Deeds(bench)
                .onRows(() -> face.ledger().editSelected(), () -> face.ledger().leaveText()));
        all.addAll(onWindow());
        return List.copyOf(all);
    }

    private List<Deed> onFiles() {
        return List.of(
                Deed.of("Page", "New page", "ctrl N", filing::openNew),
                Deed.of("Page", "Open…", "ctrl O", filing::open),
                Deed.of("Page", "Save", "ctrl S", filing::save),
                Deed.of("Page", "Save as…", "ctrl shift S", filing::saveAs),
                Deed.of("Page", "Earlier versions…", null, rescue::chooseVersion),
                Deed.of("Page", "Title…", null, this::retitle),
                Deed.of("Page", "Handout…", null, handouts::askForFile),
                Deed.of("Page", "Print…", "ctrl P", handouts::print),
                Deed.of("Page", "Give the handout up", null, handouts::giveUp).when(handouts::isPending),
                Deed.of("Page", "Copy the row's figure as a picture", "ctrl shift C", this::copyFigure)
                        .when(() -> face.ledger().selectedFigure().isPresent()),
                Deed.of("Page", "Close", "ctrl Q", this::close));
    }

    private List<Deed> onWindow() {
        return List.of(
                Deed.of("View", "Write", "ctrl 1", () -> bench.view(Worksheet.View.WRITE)),
                Deed.of("View", "Read", "ctrl 2", () -> bench.view(Worksheet.View.READ)),
                Deed.of("View", "Shelf", "F7", () -> face.toggleShelf()),
                Deed.of("View", "Drawing", "shift F7", () -> face.toggleDrawing()),
                Deed.of("View", "Wider text", "alt RIGHT", () -> face.ledger().divide(0.05)),
                Deed.of("View", "Narrower text", "alt LEFT", () -> face.ledger().divide(-0.05)),
                Deed.of("View", "Larger type", "ctrl EQUALS", () -> prefer(Taste.larger(1))),
                Deed.of("View", "Larger type, the other key", "ctrl PLUS", () -> prefer(Taste.larger(1))),
                Deed.of("View", "Smaller type", "ctrl MINUS", () -> prefer(Taste.larger(-1))),
                Deed.of("View", "Usual type", "ctrl 0", () -> prefer(Taste.larger(-100))),
                Deed.of("View", "Light", null, () -> prefer(before -> before.withTheme(Theme.LIGHT))),
                Deed.of("View", "Dark", null, () -> prefer(before -> before.withTheme(Theme.DARK))),
                Deed.of("View", "High contrast", null, () -> prefer(before -> before.withTheme(Theme.CONTRAST))),
                Deed.of("Help", "Inputs and measures", null, handouts::openKeys),
                Deed.of("Help", "Keys", "F1", () -> KeyList.show(face, deeds, taste.look())));
    }

    private void prefer(UnaryOperator<Preferences> change) {
        taste.change(change, bench::notice);
        rebuild();
    }

    private void retitle() {
        questions()
                .title(bench.model().page().title())
                .ifPresent(title -> bench.act("title changed", page -> page.withTitle(title)));
    }

    private void copyFigure() {
        face.ledger().selectedFigure().ifPresent(figure -> {
            Transferable picture = new Picture(figure.picture());
            frame.getToolkit().getSystemClipboard().setContents(picture, null);
            bench.say("figure copied");
        });
    }

    /** The files opened last. */
    Recents recents() {
        return recents.now();
    }
}
