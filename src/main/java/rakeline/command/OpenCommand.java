package rakeline.command;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import rakeline.catalogue.Roots;
import rakeline.engine.Outcome;
import rakeline.engine.Session;
import rakeline.handout.Imprint;
import rakeline.quantity.Refusal;
import rakeline.worksheet.WorksheetFile;

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
    private static final String WELCOME = "worksheets/welcome.rakeline";

    @Parameters(arity = "0..1", paramLabel = "FILE", description = "A worksheet (*.rakeline).")
    private String file;

    private final Rakeline.Window window;

    OpenCommand(Console console, Rakeline.Window window) {
        super(console);
        this.window = window;
    }

    @Override
    boolean opensWindow() {
        return true;
    }

    @Override
    int work() {
        PageRunner.checkJava();
        Optional<Path> path = Optional.ofNullable(file).map(Paths::of);
        if (window.hasDisplay()) {
            return window.open(path);
        }
        if (path.isPresent()) {
            throw new Refusal("there is no display to open a window on; rakeline run " + file + " works without one.");
        }
        return runWelcome();
    }

    private int runWelcome() {
        PageRunner runner = new PageRunner(console(), Session.Settings.standard());
        byte[] bytes = Roots.bundled().read(WELCOME, WorksheetFile.LIMIT_BYTES);
        PageRunner.Page page = new PageRunner.Page(
                WELCOME,
                "welcome",
                Optional.empty(),
                WorksheetFile.read(bytes, WELCOME),
                Imprint.Source.of(WELCOME, bytes));
        List<Outcome> outcomes = runner.run(page);
        runner.print(page, outcomes);
        Path folder = folder();
        runner.writeFigures(page, outcomes, folder);
        console().data().println("The figures are in " + folder + ".");
        return PageRunner.allFresh(outcomes) ? DONE : FAILED;
    }

    private static Path folder() {
        try {
            return Files.createTempDirectory("rakeline-welcome-");
        } catch (IOException e) {
            throw new Refusal("there is no folder to write figures to: " + e.getMessage() + ".", e);
        }
    }
}
