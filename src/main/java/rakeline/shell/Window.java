package rakeline.shell;

import java.awt.Component;
import java.awt.Dimension;
import java.awt.KeyboardFocusManager;
import java.awt.MouseInfo;
import java.awt.Point;
import java.awt.PointerInfo;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import javax.swing.JFrame;
import javax.swing.JOptionPane;
import javax.swing.SwingUtilities;
import javax.swing.WindowConstants;
import rakeline.desk.Bounds;
import rakeline.desk.Memory;
import rakeline.desk.Preferences;
import rakeline.desk.Preferences.Theme;
import rakeline.desk.RackView;
import rakeline.desk.Recents;
import rakeline.shell.dials.DialHandles;
import rakeline.shell.figures.FigureView;
import rakeline.shell.figures.Handles;
import rakeline.shell.guide.Guide;
import rakeline.shell.ledger.CodeHelp;
import rakeline.shell.look.Emblem;
import rakeline.shell.look.Look;
import rakeline.shell.look.Pointed;
import rakeline.shell.page.Background;
import rakeline.shell.page.Bench;
import rakeline.shell.page.PageModel;
import rakeline.shell.rack.RackDesk;
import rakeline.shell.rack.RackHand;
import rakeline.shell.show.Show;
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
    private final Vault vault;
    private final CodeHelp help;
    private final Rescue rescue;
    private final HandoutMaker handouts;
    private final Remembered<RackView> rackView;
    private final RackDesk rack;
    private Face face;
    private Optional<Show> show = Optional.empty();
    private List<BundledPages.Entry> bundled = List.of();
    private List<Deed> deeds = List.of();

    Window(
            Bench bench,
            Taste taste,
            Remembered<Recents> recents,
            Remembered<Bounds> place,
            Background background,
            Vault vault,
            CodeHelp help) {
        this.bench = bench;
        this.help = help;
        this.vault = vault;
        this.taste = taste;
        this.recents = recents;
        this.place = place;
        this.background = background;
        Questions questions = questions();
        filing = new Filing(bench, vault, background, questions, this::used);
        rescue = new Rescue(bench, vault, background, questions, filing);
        handouts = new HandoutMaker(bench, vault, questions, taste::look);
        rackView = new Remembered<>(Memory.rack(vault.disk(), vault.places()), background, RackView.first());
        rackView.recall(bench::noticeWhenOpened);
        rack = new RackDesk(
                bench,
                new RackHost(
                        bench,
                        vault,
                        background,
                        questions,
                        () -> taste.folder(vault.places().worksheets()),
                        rackView));
        frame.setDefaultCloseOperation(WindowConstants.DO_NOTHING_ON_CLOSE);
        frame.setMinimumSize(new Dimension(800, 560));
        frame.setIconImages(Emblem.all());
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
                rack.lookAround();
            }
        });
        frame.getRootPane().setTransferHandler(new FileDrop(this::open));
        Platform.listen(this::close, this::askPreferences, this::about, this::open);
        rebuild();
        background.run(rackView::now, this::recallRack, bench::notice);
    }

    /** Finds what comes with the program and puts it on the shelf; what was asked of the background before comes first. */
    void stockShelf() {
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

    private void recallRack(RackView ignored) {
        rack.recall();
        face.openRack(rackView.now().isOpen());
    }

    /** Opens the rack and goes to it, or closes it. */
    private void turnRack() {
        boolean open = !face.isRackOpen();
        face.openRack(open);
        rackView.change(before -> before.opened(open), bench::notice);
        if (open) {
            face.rack().enter();
        } else {
            face.ledger().requestFocusInWindow();
        }
    }

    /** Does something on the rack, which is opened for it. */
    private void onRack(Consumer<RackHand> work) {
        if (!face.isRackOpen()) {
            turnRack();
        }
        work.accept(face.rack().hand());
    }

    /** Closes the window and ends what runs, unless the person goes back to what is not saved. */
    public void close() {
        if (face.rack().leave()) {
            filing.whenSettled(this::end);
        }
    }

    private void end() {
        show.ifPresent(Show::close);
        rack.save();
        rack.close();
        bench.close();
        background.run(this::endJournal, ended -> {}, bench::notice);
        place.change(before -> Stage.of(frame, before), this::leave, refused -> leave());
    }

    /** Writes what is on its way to a file, and no more after that; off the event thread. */
    void letGo() {
        rescue.letGo();
        if (!background.isClosed()) {
            background.await();
        }
    }

    private boolean endJournal() {
        rescue.end();
        return true;
    }

    private void leave() {
        help.close();
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
        rack.unwatchAll();
        boolean rackOpen = face != null && face.isRackOpen();
        face = new Face(look, bench, help, rack, this::turnRack, this::take, this::showFigure);
        face.shelf().put(bundled, recents.now().files());
        FigureDeeds figures = new FigureDeeds(bench, look, face);
        deeds = deeds(figures);
        bench.watch(filing);
        bench.watch(rescue);
        bench.watch(handouts);
        bench.watch(rack);
        bench.watch(this::showTitle);
        show.ifPresent(bench::watch);
        frame.setJMenuBar(MenuLine.of(deeds, look));
        frame.setContentPane(face);
        FigureView.whenAskedToHold(frame.getRootPane(), figures::hold);
        Handles.in(frame.getRootPane(), new DialHandles(bench));
        face.openRack(rackOpen);
        face.ledger().leaveText();
        SwingUtilities.invokeLater(face::keepKeys);
        frame.revalidate();
        frame.repaint();
    }

    private void showTitle(PageModel now) {
        frame.setTitle((now.history().isSaved() ? "" : "• ") + now.page().title() + " – Rakeline");
    }

    void take(Shelf.Item item) {
        if (item instanceof Shelf.Item.Bundled page) {
            filing.openBundled(page.entry().name());
        } else if (item instanceof Shelf.Item.Recent recent) {
            background.run(
                    () -> vault.disk().exists(recent.file()), there -> openRecent(recent.file(), there), bench::notice);
        }
    }

    private void openRecent(Path file, boolean there) {
        MovedFile.Answer answer = there ? MovedFile.Answer.GO_BACK : MovedFile.ask(face, file);
        if (there) {
            filing.open(file);
        } else if (answer == MovedFile.Answer.FIND) {
            filing.open();
        } else if (answer == MovedFile.Answer.FORGET) {
            recents.change(before -> before.without(file), bench::notice);
            face.shelf().put(bundled, recents.now().files());
        }
    }

    private List<Deed> deeds(FigureDeeds figures) {
        RackDeeds onRack = new RackDeeds(this::turnRack, this::onRack);
        return Stream.of(onFiles(), figures.all(), onProgram(), onPage(), onRack.all(), onViews(), onLooks(), onHelp())
                .flatMap(List::stream)
                .toList();
    }

    private List<Deed> onPage() {
        Steps steps = new Steps(bench, rack, () -> face.rack().isAtHand());
        return new Deeds(bench, steps, () -> face).onPage();
    }

    private List<Deed> onFiles() {
        return List.of(
                Deed.of("Page", "New page", "ctrl N", filing::openNew),
                Deed.of("Page", "Open…", "ctrl O", filing::open),
                Deed.of("Page", "Save", "ctrl S", filing::save),
                Deed.of("Page", "Save as…", "ctrl shift S", filing::saveAs),
                Deed.of("Page", "Earlier versions…", "ctrl F9", rescue::chooseVersion),
                Deed.of("Page", "Title…", "ctrl F2", this::retitle),
                Deed.of("Page", "Handout…", "ctrl F10", handouts::askForFile),
                Deed.of("Page", "Print…", "ctrl P", handouts::print),
                Deed.of("Page", "Give the handout up", "ctrl shift F10", handouts::giveUp)
                        .when(handouts::isPending));
    }

    private List<Deed> onProgram() {
        return List.of(
                Deed.of("Page", "Preferences…", "ctrl COMMA", this::askPreferences),
                Deed.of("Page", "Close", "ctrl Q", this::close));
    }

    private List<Deed> onViews() {
        return List.of(
                Deed.of("View", "Write", "ctrl 1", () -> bench.view(Worksheet.View.WRITE)),
                Deed.of("View", "Read", "ctrl 2", () -> bench.view(Worksheet.View.READ)),
                Deed.of("View", "Show", "ctrl 3", this::showFigure),
                Deed.of("View", "Shelf", "F7", () -> face.toggleShelf()),
                Deed.of("View", "Drawing", "shift F7", () -> face.toggleDrawing()),
                Deed.of("View", "Go to the dials", "ctrl D", () -> face.goToDials()),
                Deed.of("View", "Wider text", "alt RIGHT", () -> face.ledger().divide(0.05)),
                Deed.of("View", "Narrower text", "alt LEFT", () -> face.ledger().divide(-0.05)));
    }

    private List<Deed> onLooks() {
        return List.of(
                Deed.of("View", "Larger type", "ctrl EQUALS", () -> prefer(Taste.larger(1))),
                Deed.of("View", "Larger type, the other key", "ctrl PLUS", () -> prefer(Taste.larger(1))),
                Deed.of("View", "Smaller type", "ctrl MINUS", () -> prefer(Taste.larger(-1))),
                Deed.of("View", "Usual type", "ctrl 0", () -> prefer(Taste.larger(-100))),
                Deed.of("View", "Light", "ctrl shift 1", () -> prefer(before -> before.withTheme(Theme.LIGHT))),
                Deed.of("View", "Dark", "ctrl shift 2", () -> prefer(before -> before.withTheme(Theme.DARK))),
                Deed.of(
                        "View",
                        "High contrast",
                        "ctrl shift 3",
                        () -> prefer(before -> before.withTheme(Theme.CONTRAST))));
    }

    private List<Deed> onHelp() {
        return List.of(
                Deed.of("Help", "Keys", "F1", () -> KeyList.show(face, deeds, taste.look())),
                Deed.of("Help", "Help on what has the keys", "shift F1", this::helpOnFocus),
                Deed.of("Help", "Help on what the pointer is at", "ctrl F1", this::helpAtPointer),
                Deed.of("Help", "Inputs and measures", "ctrl shift F2", handouts::openKeys),
                Deed.of("Help", "First steps", "ctrl shift F1", () -> filing.openBundled(BundledPages.FIRST_STEPS)),
                Deed.of("Help", "About Rakeline", "alt F1", this::about));
    }

    private void helpOnFocus() {
        Component focused =
                KeyboardFocusManager.getCurrentKeyboardFocusManager().getPermanentFocusOwner();
        String topic = Pointed.of(focused).orElse("start");
        Guide guide = openGuide(topic);
        if (!guide.knows(topic)) {
            face.ledger().explain(lines -> guide.tell(topic, lines));
        }
    }

    private void helpAtPointer() {
        Point place = Optional.ofNullable(MouseInfo.getPointerInfo())
                .map(PointerInfo::getLocation)
                .orElse(new Point());
        SwingUtilities.convertPointFromScreen(place, face);
        openGuide(Pointed.of(Pointed.deepest(face, place)).orElse("start"));
    }

    private Guide openGuide(String topic) {
        return Guide.open(face, taste.look(), help, topic);
    }

    private void about() {
        JOptionPane.showMessageDialog(face, Mishap.system(), "About Rakeline", JOptionPane.PLAIN_MESSAGE);
    }

    private void askPreferences() {
        new PreferencesDialog(
                        taste.look(),
                        vault.places().worksheets(),
                        taste.preferences(),
                        rack.model().lengths())
                .ask(face)
                .ifPresent(chosen -> {
                    rack.in(chosen.lengths());
                    prefer(before -> chosen.preferences());
                });
    }

    /** One figure of the page, on the whole screen. */
    private void showFigure() {
        bench.commit();
        show.ifPresentOrElse(
                Show::toFront,
                () -> show = Optional.of(Show.on(
                        frame.getGraphicsConfiguration(), bench, taste.look().palette(), this::shown)));
    }

    private void shown() {
        show = Optional.empty();
        frame.toFront();
        face.ledger().leaveText();
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

    /** All that can be done here. */
    List<Deed> allDeeds() {
        return deeds;
    }

    /** The files opened last. */
    Recents recents() {
        return recents.now();
    }
}
