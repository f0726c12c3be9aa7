package rakeline.command;

import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Opens the window; without a display it runs the welcome page instead. */
@Command(
        name = "open",
        description = "Opens a worksheet, or the welcome page, in a window.",
        footer = {
            "",
            "Without a display and without FILE the welcome page is run, its tables are printed and its figures",
            "written to a folder that is named."
        })
final class OpenCommand extends Work {
    @Parameters(arity = "0..1", paramLabel = "FILE", description = "A worksheet (*.rakeline).")
    private String file;

    private final Rakeline.Window window;

    OpenCommand(Console console, Rakeline.Window window) {
        super(console);
        this.window = window;
    }

    @Override
    int work() {
        if (window.hasDisplay()) {
            return window.open(Optional.ofNullable(file).map(Paths::of));
        }
        if (file != null) {
            console().message("there is no display to open a window on; rakeline run " + file + " works without one.");
            return REFUSED;
        }
        return DONE;
    }
}
