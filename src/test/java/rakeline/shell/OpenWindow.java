package rakeline.shell;

import java.awt.Component;
import java.awt.Container;
import java.awt.KeyboardFocusManager;
import java.awt.Toolkit;
import java.awt.event.KeyEvent;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.BooleanSupplier;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.swing.AbstractButton;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.SwingUtilities;
import org.assertj.swing.core.BasicRobot;
import org.assertj.swing.core.Robot;
import org.assertj.swing.edt.GuiActionRunner;
import org.assertj.swing.fixture.FrameFixture;
import org.assertj.swing.fixture.JTextComponentFixture;
import org.assertj.swing.timing.Condition;
import org.assertj.swing.timing.Pause;
import org.assertj.swing.timing.Timeout;
import rakeline.desk.Memory;
import rakeline.desk.Places;
import rakeline.desk.Preferences;
import rakeline.desk.SafeFile;
import rakeline.engine.Session;
import rakeline.shell.ledger.Ledger;
import rakeline.shell.page.Origin;
import rakeline.shell.page.PageModel;
import rakeline.worksheet.Worksheet;

/** A window on the screen with sessions that a test steers; closed with the test. */
final class OpenWindow implements AutoCloseable {
    private static final Timeout PATIENCE = Timeout.timeout(15_000);

    private final List<FakeSession> sessions = new CopyOnWriteArrayList<>();
    private final Robot robot = BasicRobot.robotWithNewAwtHierarchy();
    private final Window window;
    private final FrameFixture frame;

    private OpenWindow(
            Path home,
            Preferences preferences,
            int width,
            int height,
            Optional<Function<Session.Settings, Session>> real) {
        Places places = Places.in(home);
        SafeFile disk = SafeFile.onDisk();
        Memory.preferences(disk, places).keep(preferences);
        robot.settings().delayBetweenEvents(10);
        robot.settings().eventPostingDelay(20);
        window = GuiActionRunner.execute(() -> Shell.build(
                real.orElse(settings -> session()),
                places,
                Memory.preferences(disk, places).recall(),
                Memory.recents(disk, places).recall(),
                Memory.bounds(disk, places).recall()));
        GuiActionRunner.execute(() -> {
            window.stockShelf();
            window.frame().setBounds(0, 0, width, height);
            window.frame().setVisible(true);
        });
        frame = new FrameFixture(robot, window.frame());
    }

    private FakeSession session() {
        FakeSession session = new FakeSession();
        sessions.add(session);
        return session;
    }

    /** A light window of a size, in pixels. */
    static OpenWindow sized(Path home, int width, int height) {
        return new OpenWindow(home, Preferences.standard(), width, height, Optional.empty());
    }

    /** A window whose rows run in sessions of another kind. */
    static OpenWindow running(Path home, int width, int height, Function<Session.Settings, Session> sessions) {
        return new OpenWindow(home, Preferences.standard(), width, height, Optional.of(sessions));
    }

    /** A window with preferences. */
    static OpenWindow preferring(Path home, Preferences preferences, int width, int height) {
        return new OpenWindow(home, preferences, width, height, Optional.empty());
    }

    /** A page that is run, once it has run. */
    OpenWindow with(Worksheet page) {
        run(() -> window.bench().open(page, new Origin.New(), true));
        settle();
        return this;
    }

    Window window() {
        return window;
    }

    FrameFixture frame() {
        return frame;
    }

    Robot robot() {
        return robot;
    }

    FakeSession session(int number) {
        return sessions.get(number);
    }

    int sessions() {
        return sessions.size();
    }

    void run(Runnable work) {
        GuiActionRunner.execute(work::run);
    }

    PageModel model() {
        return GuiActionRunner.execute(() -> window.bench().model());
    }

    /** Waits until something has come true. */
    void await(String what, BooleanSupplier true_) {
        Pause.pause(
                new Condition(what) {
                    @Override
                    public boolean test() {
                        return GuiActionRunner.execute(() -> true_.getAsBoolean());
                    }
                },
                PATIENCE);
    }

    /** Waits until nothing is left to do on the event thread, seen a hundred times in a row. */
    void awaitRest() {
        Pause.pause(
                new Condition("the event thread is at rest") {
                    private int calm;

                    @Override
                    public boolean test() {
                        boolean rests = Toolkit.getDefaultToolkit()
                                        .getSystemEventQueue()
                                        .peekEvent()
                                == null;
                        calm = rests ? calm + 1 : 0;
                        return calm == 100;
                    }
                },
                PATIENCE);
    }

    /** Waits until every snippet has been tried and nothing runs. */
    void settle() {
        await("the page has run", () -> {
            PageModel now = window.bench().model();
            return !now.isRunning()
                    && now.standings().size()
                            == now.counts().values().stream().mapToLong(n -> n).sum();
        });
        robot.waitForIdle();
    }

    /** Does what a menu says. */
    void choose(String... path) {
        press(frame.menuItemWithPath(path).target());
    }

    /** Presses a button as its key does, wherever the pointer is; what it opens may stay open. */
    void press(AbstractButton button) {
        SwingUtilities.invokeLater(button::doClick);
        robot.waitForIdle();
    }

    /** Presses a key for whatever has the keys in Java, whichever window the display gives them to. */
    void press(int key) {
        run(() -> {
            Component owner =
                    KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
            for (int what : List.of(KeyEvent.KEY_PRESSED, KeyEvent.KEY_RELEASED)) {
                owner.dispatchEvent(
                        new KeyEvent(owner, what, System.currentTimeMillis(), 0, key, KeyEvent.CHAR_UNDEFINED));
            }
        });
    }

    /** Chooses what is called so, wherever the pointer is. */
    void choose(JComboBox<?> box, String words) {
        await(words + " is offered", () -> place(box, words) >= 0);
        run(() -> box.setSelectedIndex(place(box, words)));
        robot.waitForIdle();
    }

    private static int place(JComboBox<?> box, String words) {
        return IntStream.range(0, box.getItemCount())
                .filter(i -> shown(box, i).equals(words))
                .findFirst()
                .orElse(-1);
    }

    private static <T> String shown(JComboBox<T> box, int place) {
        T item = box.getItemAt(place);
        Component cell = box.getRenderer().getListCellRendererComponent(new JList<>(), item, place, false, false);
        return cell instanceof JLabel label ? label.getText() : String.valueOf(item);
    }

    /** Types into a field, letter by letter, until all of it has arrived. */
    void write(JTextComponentFixture field, String words) {
        field.enterText(words);
        await("it is typed", () -> field.text().endsWith(words));
    }

    void select(String row) {
        run(() -> window.bench().select(row));
        robot.waitForIdle();
    }

    String label(String name) {
        return frame.label(name).text();
    }

    /** The name and the state of a row, as in its margin. */
    String gutter(String row) {
        return GuiActionRunner.execute(() -> {
            Component gutter = all(window.frame())
                    .filter(component -> ("gutter " + row).equals(component.getName()))
                    .findFirst()
                    .orElseThrow();
            return String.join(
                    " ",
                    all((Container) gutter)
                            .filter(JLabel.class::isInstance)
                            .map(component -> ((JLabel) component).getText().strip())
                            .toList());
        });
    }

    List<Component> shown() {
        return GuiActionRunner.execute(
                () -> all(window.frame()).filter(Component::isShowing).toList());
    }

    Ledger ledger() {
        return (Ledger)
                shown().stream().filter(Ledger.class::isInstance).findFirst().orElseThrow();
    }

    static Stream<Component> all(Container root) {
        List<Component> all = new ArrayList<>();
        for (Component component : root.getComponents()) {
            all.add(component);
            if (component instanceof Container inner) {
                all.addAll(all(inner).toList());
            }
        }
        return all.stream();
    }

    @Override
    public void close() {
        run(() -> {
            window.bench().close();
            window.frame().dispose();
        });
        window.letGo();
        robot.cleanUp();
    }
}
