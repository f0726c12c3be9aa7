package rakeline.shell;

import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.function.Function;
import javax.swing.SwingUtilities;
import rakeline.desk.Kept;
import rakeline.desk.Memory;
import rakeline.desk.Places;
import rakeline.desk.Preferences;
import rakeline.desk.Recents;
import rakeline.desk.SafeFile;
import rakeline.engine.Session;
import rakeline.shell.page.Bench;

/** Opens the window. */
public final class Shell {
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
        SafeFile disk = SafeFile.onDisk();
        Kept<Preferences> preferences = Memory.preferences(disk, places);
        Kept<Recents> recents = Memory.recents(disk, places);
        Kept.Recalled<Preferences> preferred = preferences.recall();
        Kept.Recalled<Recents> opened = recents.recall();
        SwingUtilities.invokeLater(() -> {
            Background background = new Background();
            Window window = new Window(
                    new Bench(sessions),
                    new Taste(preferences, background, preferred.value()),
                    new Recent(recents, background, opened.value()),
                    background,
                    (bench, questions, used) -> new Filing(bench, disk, places, background, questions, used));
            window.frame().addWindowListener(new WindowAdapter() {
                @Override
                public void windowClosed(WindowEvent event) {
                    closed.complete(null);
                }
            });
            Stage.set(window.frame());
            file.ifPresentOrElse(window::open, window::openWelcome);
            Optional.of(preferred.said() + opened.said())
                    .filter(said -> !said.isEmpty())
                    .ifPresent(said -> window.bench().notice(said));
        });
        return closed;
    }
}
