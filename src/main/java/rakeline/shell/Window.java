package rakeline.shell;

import java.awt.Component;
import java.awt.Dimension;
import java.awt.KeyboardFocusManager;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import java.beans.PropertyChangeEvent;
import java.beans.PropertyChangeListener;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import javax.swing.JFrame;
import javax.swing.SwingUtilities;
import javax.swing.WindowConstants;
import rakeline.desk.Bounds;
import rakeline.desk.Memory;
import rakeline.desk.RackView;
import rakeline.desk.Recents;
import rakeline.shell.dials.DialHandles;
import rakeline.shell.figures.FigureView;
import rakeline.shell.figures.Handles;
import rakeline.shell.ledger.CodeHelp;
import rakeline.shell.look.Emblem;
import rakeline.shell.look.Look;
import rakeline.shell.look.Theme;
import rakeline.shell.page.Background;
import rakeline.shell.page.Bench;
import rakeline.shell.page.PageModel;
import rakeline.shell.rack.RackStore;
import rakeline.shell.show.Show;

/** The one window: a page on a bench, its menus and keys, its look. To be used on the event thread. */
public final class Window {
    private static final Set<String> ON_EMPTY_PAGE = Set.of(
            "Add a note below", "Add a snippet below", "Run the row", "Rack", "Title…", "Open…", "Keys", "First steps");

    private final JFrame frame = new JFrame("Rakeline");
    private final Bench bench;
    private final Taste taste;
    private final Remembered<Bounds> place;
    private final Background background;
    private final Library library;
    private final Filing filing;
    private final CodeHelp help;
    private final Rescue rescue;
    private final HandoutMaker handouts;
    private final RackStore rack;
    private final RackDoor door;
    private final LookDeeds looks;
    private final HelpDeeds helps;
    private Face face;
    private Optional<Show> show = Optional.empty();
    private Optional<Component> lastFocus = Optional.empty();
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
        this.taste = taste;
        this.place = place;
        this.background = background;
        Questions questions = questions();
        library = new Library(bench, recents, background, vault, () -> face);
        filing = new Filing(bench, vault, background, questions, library::used);
        rescue = new Rescue(bench, vault, background, questions, filing);
        handouts = new HandoutMaker(bench, vault, questions, taste::look);
        Remembered<RackView> rackView =
                new Remembered<>(Memory.rack(vault.disk(), vault.places()), background, RackView.first());
        rackView.recall(bench::noticeWhenOpened);
        rack = new RackStore(
                bench,
                new RackHost(
                        bench,
                        vault,
                        background,
                        questions,
                        () -> taste.folder(vault.places().worksheets()),
                        rackView));
        door = new RackDoor(bench, rack, rackView, () -> face);
        looks = new LookDeeds(bench, taste, vault, rack, () -> face, this::rebuild);
        helps = new HelpDeeds(help, () -> face, taste::look, this::allDeeds);
        prepare();
        frame.getRootPane().setTransferHandler(new FileDrop(this::open));
        Platform.listen(this::close, looks::ask, helps::about, this::open);
        rebuild();
        door.recall(background);
    }

    /** The part of the face that has the keys; a menu, which takes them for a while, is none. */
    private void followFocus(PropertyChangeEvent event) {
        if (event.getNewValue() instanceof Component part && SwingUtilities.isDescendingFrom(part, face)) {
            lastFocus = Optional.of(part);
        }
    }

    private void prepare() {
        PropertyChangeListener follows = this::followFocus;
        KeyboardFocusManager keys = KeyboardFocusManager.getCurrentKeyboardFocusManager();
        keys.addPropertyChangeListener("permanentFocusOwner", follows);
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

            @Override
            public void windowClosed(WindowEvent event) {
                keys.removePropertyChangeListener("permanentFocusOwner", follows);
            }
        });
        frame.addWindowFocusListener(new WindowAdapter() {
            @Override
            public void windowGainedFocus(WindowEvent event) {
                filing.lookAround();
                rack.lookAround();
            }
        });
    }

    /** Puts what comes with the program on the shelf. */
    void stockShelf() {
        library.find();
    }

    private Questions questions() {
        return new Questions(frame::getContentPane, taste::look);
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

    /** Builds all views anew, in the look that is preferred now; the keys stay in the rack if they are there. */
    private void rebuild() {
        Look look = taste.look();
        Theme.install(look);
        bench.unwatchAll();
        rack.unwatchAll();
        boolean rackOpen = face != null && face.isRackOpen();
        boolean inRack = face != null && face.isInRack(frame.getMostRecentFocusOwner());
        Optional<Face.Stand> stand = Optional.ofNullable(face).map(before -> before.stand(lastFocus));
        face = new Face(look, bench, help, rack, door::turn, this::take, this::showFigure);
        library.show();
        FigureDeeds figures = new FigureDeeds(bench, look, face);
        deeds = deeds(figures);
        watch();
        frame.setJMenuBar(MenuLine.of(deeds, look));
        frame.setContentPane(face);
        FigureView.whenAskedToHold(frame.getRootPane(), figures::hold);
        Handles.in(frame.getRootPane(), new DialHandles(bench));
        face.openRack(rackOpen);
        face.ledger().offer(onEmptyPage());
        frame.validate();
        stand.ifPresentOrElse(face::take, face.ledger()::leaveText);
        SwingUtilities.invokeLater(() -> face.keepKeys(inRack));
        frame.revalidate();
        frame.repaint();
    }

    /** What can be done on a page that holds nothing yet, with its keys. */
    private List<Map.Entry<String, String>> onEmptyPage() {
        return deeds.stream()
                .filter(deed ->
                        ON_EMPTY_PAGE.contains(deed.words()) && deed.key().isPresent())
                .map(deed -> Map.entry(deed.words(), Keys.words(deed.key().get())))
                .toList();
    }

    private void watch() {
        bench.watch(filing);
        bench.watch(rescue);
        bench.watch(handouts);
        bench.watch(rack);
        bench.watch(this::showTitle);
        show.ifPresent(bench::watch);
    }

    private void showTitle(PageModel now) {
        frame.setTitle((now.isSaved() ? "" : "• ") + now.page().title() + " – Rakeline");
    }

    void take(Shelf.Item item) {
        library.take(item, filing);
    }

    /** In the order of the menus. */
    private List<Deed> deeds(FigureDeeds figures) {
        Steps steps = new Steps(bench, rack, () -> face.rack().isAtHand());
        return Stream.of(
                        new FileDeeds(bench, filing, rescue, handouts, questions(), () -> face.write()).all(),
                        figures.all(),
                        onProgram(),
                        new Deeds(bench, steps, () -> face).onPage(),
                        new RackDeeds(door::turn, door::on).all(),
                        new ViewDeeds(bench, face, this::showFigure).all(),
                        looks.all(),
                        helps.all(handouts::openKeys, () -> filing.openBundled(BundledPages.FIRST_STEPS)))
                .flatMap(List::stream)
                .toList();
    }

    private List<Deed> onProgram() {
        return List.of(
                Deed.of("Page", "Preferences…", "ctrl COMMA", looks::ask),
                Deed.of("Page", "Close", "ctrl Q", this::close));
    }

    /** One figure of the page, on the whole screen. */
    private void showFigure() {
        bench.commit();
        show.ifPresentOrElse(
                Show::toFront,
                () -> show = Optional.of(Show.on(
                        frame.getGraphicsConfiguration(), bench, taste.look().palette(), this::shown, this::showKeys)));
    }

    /** The keys of Show, over it. */
    private void showKeys(Component over) {
        KeyList.inShow(over, taste.look());
    }

    private void shown() {
        show = Optional.empty();
        frame.toFront();
        face.ledger().leaveText();
    }

    /** All that can be done here. */
    List<Deed> allDeeds() {
        return deeds;
    }

    /** The files opened last. */
    Recents recents() {
        return library.recents();
    }
}
