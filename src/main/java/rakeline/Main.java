package rakeline;

import java.awt.AWTError;
import java.awt.GraphicsEnvironment;
import java.nio.file.Path;
import java.util.Optional;
import rakeline.command.Console;
import rakeline.command.Rakeline;
import rakeline.desk.Doorbell;
import rakeline.desk.Places;
import rakeline.engine.jshell.Sessions;
import rakeline.quantity.Refusal;
import rakeline.shell.Shell;
import rakeline.study.Vocabulary;

/** Starts the window or the command that the arguments ask for. */
public final class Main {
    private Main() {}

    /** Ends the process with the command's exit code. */
    public static void main(String[] args) {
        System.exit(Rakeline.run(Console.standard(), Vocabulary.standard(), new Window(), args));
    }

    /** The window, if there is a display for it. */
    private static final class Window implements Rakeline.Window {
        @Override
        public boolean hasDisplay() {
            try {
                return !GraphicsEnvironment.isHeadless()
                        && GraphicsEnvironment.getLocalGraphicsEnvironment().getScreenDevices().length > 0;
            } catch (AWTError e) {
                throw new Refusal("the display that is named cannot be reached: " + e.getMessage(), e);
            }
        }

        @Override
        public int open(Optional<Path> file) {
            Places places = Places.here();
            if (!Doorbell.ring(places, file)) {
                Shell.open(file, Sessions::open, places).join();
            }
            return 0;
        }
    }
}
