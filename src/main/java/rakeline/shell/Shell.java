package rakeline.shell;

import java.awt.Frame;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.function.Function;
import javax.swing.SwingUtilities;
import rakeline.desk.Bounds;
import rakeline.desk.Doorbell;
import rakeline.desk.Kept;
import rakeline.desk.Log;
import rakeline.desk.Memory;
import rakeline.desk.Places;
import rakeline.desk.Preferences;
import rakeline.desk.Recents;
import rakeline.desk.SafeFile;
import rakeline.engine.Session;
import rakeline.engine.jshell.Sessions;
import rakeline.quantity.Refusal;
import rakeline.shell.ledger.CodeHelp;
import rakeline.shell.page.Background;
import rakeline.shell.page.Bench;
import rakeline.study.Vocabulary;

/** Opens the window. */
public final class Shell {
    private static final SafeFile DISK = SafeFile.onDisk();
    private static final String WELCOME =
            "New here? “First steps”, on the shelf and in the Help menu, shows the window in five minutes.";

    private Shell() {}

    /**
     * Opens the window on a file, or on the welcome page. May be called on any thread but the event thread, on which the
     * window is then built.
     *
     * @param sessions starts a session for a page; it is called off the event thread
     * @param places where preferences and recent files are kept
     * @return done once the window is closed
     */
    public static CompletableFuture<Void> open(
            Optional<Path> file, Function<Session.Settings, Session> sessions, Places places) {
        CompletableFuture<Void> closed = new CompletableFuture<>();
        Optional<Log> log = log(places);
        Kept.Recalled<Preferences> preferred = Memory.preferences(DISK, places).recall();
        HeadStart ahead = new HeadStart(sessions, expected(preferred.value(), file, places));
        Kept.Recalled<Recents> opened = Memory.recents(DISK, places).recall();
        boolean isFirst = !Memory.bounds(DISK, places).isKept();
        Kept.Recalled<Bounds> stood = Memory.bounds(DISK, places).recall();
        SwingUtilities.invokeLater(() -> {
            Platform.prepare();
            Window window = build(ahead, places, preferred, opened, stood);
            Optional<Doorbell> bell =
                    Doorbell.hang(places, visit -> SwingUtilities.invokeLater(() -> admit(window, visit)));
            window.frame().addWindowListener(new WindowAdapter() {
                @Override
                public void windowClosed(WindowEvent event) {
                    ahead.close();
                    bell.ifPresent(Doorbell::close);
                    log.ifPresent(Log::close);
                    closed.complete(null);
                }
            });
            new Mishap(window.frame()::getContentPane).install();
            if (isFirst && file.isEmpty()) {
                window.bench().noticeWhenOpened(WELCOME);
            }
            window.appear();
            file.ifPresentOrElse(window::open, window::openWelcome);
            window.recover();
            window.stockShelf();
        });
        return closed;
    }

    private static Session.Settings expected(Preferences preferred, Optional<Path> file, Places places) {
        Session.Settings usual = Taste.settings(preferred, places.worksheets());
        return file.map(path -> path.toAbsolutePath().normalize().getParent())
                .map(usual::in)
                .orElse(usual);
    }

    /** None where the state folder cannot be written; the window works without. */
    private static Optional<Log> log(Places places) {
        try {
            return Optional.of(Log.open(places));
        } catch (Refusal refusal) {
            return Optional.empty();
        }
    }

    /** A later start of the program comes to this window, with a file or without. */
    private static void admit(Window window, Optional<Path> file) {
        window.frame().setState(Frame.NORMAL);
        window.frame().toFront();
        file.ifPresent(window::open);
    }

    /** The window, not shown yet; on the event thread. */
    static Window build(
            Function<Session.Settings, Session> sessions,
            Places places,
            Kept.Recalled<Preferences> preferred,
            Kept.Recalled<Recents> opened,
            Kept.Recalled<Bounds> stood) {
        Background background = new Background("files");
        Taste taste = new Taste(new Remembered<>(Memory.preferences(DISK, places), background, preferred.value()));
        Bench bench = new Bench(sessions, () -> taste.settings(places.worksheets()));
        bench.noticeWhenOpened(
                String.join(" ", preferred.said(), opened.said(), stood.said()).strip());
        Vault vault = Vault.in(DISK, places);
        return new Window(
                bench,
                taste,
                new Remembered<>(Memory.recents(DISK, places), background, opened.value()),
                new Remembered<>(Memory.bounds(DISK, places), background, stood.value()),
                background,
                vault,
                new CodeHelp(Vocabulary.standard(), Sessions::suggestions, vault::roots));
    }
}
