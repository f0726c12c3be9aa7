package rakeline;

import java.awt.GraphicsEnvironment;
import java.nio.file.Path;
import java.util.Optional;
import rakeline.command.Console;
import rakeline.command.Rakeline;
import rakeline.study.Vocabulary;

/** Starts the window or the command that the arguments ask for. */
public final class Main {
    private Main() {}

    public static void main(String[] args) {
        int code = Rakeline.run(Console.standard(), Vocabulary.standard(), new Window(), args);
        System.exit(code);
    }

    private static final class Window implements Rakeline.Window {
        @Override
        public boolean hasDisplay() {
            return !GraphicsEnvironment.isHeadless();
        }

        @Override
        public int open(Optional<Path> file) {
            return 0;
        }
    }
}
