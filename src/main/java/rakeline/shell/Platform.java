package rakeline.shell;

import java.awt.Desktop;
import java.awt.Desktop.Action;
import java.nio.file.Path;
import java.util.function.Consumer;

/** What the platform itself asks of a window: to quit, to show preferences, to open a file. */
final class Platform {
    private Platform() {}

    /** To be called before the first window: the menus go where the platform has them. */
    static void prepare() {
        System.setProperty("apple.laf.useScreenMenuBar", "true");
        System.setProperty("apple.awt.application.name", "Rakeline");
    }

    /** Answers the platform where it asks. */
    static void listen(Runnable close, Runnable preferences, Runnable about, Consumer<Path> open) {
        if (Desktop.isDesktopSupported()) {
            listen(Desktop.getDesktop(), close, preferences, about, open);
        }
    }

    private static void listen(
            Desktop desktop, Runnable close, Runnable preferences, Runnable about, Consumer<Path> open) {
        if (desktop.isSupported(Action.APP_QUIT_HANDLER)) {
            desktop.setQuitHandler((event, answer) -> {
                answer.cancelQuit();
                close.run();
            });
        }
        if (desktop.isSupported(Action.APP_PREFERENCES)) {
            desktop.setPreferencesHandler(event -> preferences.run());
        }
        if (desktop.isSupported(Action.APP_ABOUT)) {
            desktop.setAboutHandler(event -> about.run());
        }
        if (desktop.isSupported(Action.APP_OPEN_FILE)) {
            desktop.setOpenFileHandler(
                    event -> event.getFiles().stream().findFirst().ifPresent(file -> open.accept(file.toPath())));
        }
    }
}
