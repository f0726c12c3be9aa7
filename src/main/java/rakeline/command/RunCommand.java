package rakeline.command;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import rakeline.catalogue.Bytes;
import rakeline.desk.Places;
import rakeline.engine.Control;
import rakeline.engine.Outcome;
import rakeline.engine.Session;
import rakeline.engine.SnippetSource;
import rakeline.engine.jshell.Sessions;
import rakeline.quantity.Decimals;
import rakeline.quantity.Nearest;
import rakeline.quantity.Range;
import rakeline.quantity.Refusal;
import rakeline.worksheet.WorksheetFile;

/** Runs worksheets without a window. */
@Command(
        name = "run",
        description = "Runs worksheets top to bottom, waiting rows too, and prints what they show.",
        footer = {
            "",
            "--json prints one object a FILE, each on one line: {\"file\", \"title\", \"rows\": [{\"id\", \"name\", \"state\",",
            "\"message\", \"result\": null or {\"kind\": \"chart\", \"table\", \"drawing\", \"value\" or \"text\", \"text\",",
            "\"columns\": [{\"key\", \"label\", \"unit\", \"values\"}]}}]}. Exit 1 where a row failed."
        })
final class RunCommand extends Work {
    @Parameters(arity = "1..*", paramLabel = "FILE", description = "Worksheets (*.rakeline).")
    private List<String> files = List.of();

    @Option(names = "--set", paramLabel = "DIAL=VALUE", description = "Sets a dial, by its variable, in every FILE.")
    private List<String> changes = List.of();

    @Option(names = "--out", paramLabel = "DIR", description = "Writes each figure there as SVG and CSV.")
    private String out;

    @Option(names = "--time-limit", paramLabel = "S", description = "Seconds that a row may take; 30 as usual.")
    private String timeLimit;

    @Option(names = "--json", description = "Prints JSON.")
    private boolean json;

    RunCommand(Console console) {
        super(console);
    }

    @Override
    int work() {
        Map<String, Double> dials = KeyValue.numbers("--set", changes);
        List<PageRunner.Page> pages = new ArrayList<>();
        files.forEach(file -> pages.add(read(file)));
        PageRunner.checkJava();
        pages.forEach(page -> checkDials(page, dials));
        Optional<Path> folder = Optional.ofNullable(out).map(Paths::folder);
        PageRunner runner = new PageRunner(console(), settings());
        int code = DONE;
        for (PageRunner.Page page : pages) {
            code = Math.max(code, run(runner, page, dials, folder));
        }
        return code;
    }

    private int run(PageRunner runner, PageRunner.Page page, Map<String, Double> dials, Optional<Path> folder) {
        List<Outcome> outcomes = runner.run(page.withDials(dials));
        checkComputedRanges(page, dials, outcomes);
        if (json) {
            console().json(PageJson.of(page, outcomes));
            runner.printMessages(page, outcomes);
        } else {
            runner.print(page, outcomes);
        }
        folder.ifPresent(where -> runner.writeFigures(page, outcomes, where));
        return PageRunner.allFresh(outcomes) ? DONE : FAILED;
    }

    private Session.Settings settings() {
        Session.Settings usual =
                Session.Settings.standard().withUserFolder(Places.here().worksheets());
        return timeLimit == null
                ? usual
                : usual.withTimeLimit(PageRunner.seconds(Console.number(timeLimit, "--time-limit")));
    }

    private static PageRunner.Page read(String argument) {
        Path file = Paths.of(argument);
        byte[] bytes = Bytes.read(file, WorksheetFile.LIMIT_BYTES);
        String name = file.getFileName().toString();
        String stem = name.endsWith(WorksheetFile.EXTENSION)
                ? name.substring(0, name.length() - WorksheetFile.EXTENSION.length())
                : name;
        Path folder = file.toAbsolutePath().getParent();
        return new PageRunner.Page(argument, stem, Optional.of(folder), WorksheetFile.read(bytes, argument));
    }

    /** Every dial that is set must be on every page, and in its range where the page says it in plain numbers. */
    private static void checkDials(PageRunner.Page page, Map<String, Double> dials) {
        if (dials.isEmpty()) {
            return;
        }
        List<SnippetSource.Declared> declared =
                Sessions.inspect(page.worksheet()).controls();
        dials.forEach((name, value) -> checkDial(page, declared, name, value));
    }

    private static void checkDial(
            PageRunner.Page page, List<SnippetSource.Declared> declared, String name, double value) {
        List<String> names = declared.stream()
                .filter(SnippetSource.Declared::isDial)
                .map(SnippetSource.Declared::name)
                .toList();
        if (!names.contains(name)) {
            throw new Refusal(
                    "--set " + name + ": " + page.name() + " has no dial of that name" + Nearest.hint(name, names));
        }
        declared.stream()
                .filter(control -> control.isDial() && control.name().equals(name))
                .filter(control -> control.min() <= control.max())
                .forEach(control -> checkRange(page, name, value, new Range(control.min(), control.max())));
    }

    /** A range that depends on rows above is known only when these have run; nothing has been printed yet. */
    private static void checkComputedRanges(PageRunner.Page page, Map<String, Double> dials, List<Outcome> outcomes) {
        outcomes.stream()
                .flatMap(outcome -> outcome.controls().stream())
                .filter(control -> control instanceof Control.Dial && dials.containsKey(control.name()))
                .map(Control.Dial.class::cast)
                .forEach(dial ->
                        checkRange(page, dial.name(), dials.get(dial.name()), new Range(dial.min(), dial.max())));
    }

    private static void checkRange(PageRunner.Page page, String name, double value, Range range) {
        if (!range.contains(value)) {
            throw new Refusal("--set " + name + " is " + Decimals.shortest(value) + "; accepted in " + page.name()
                    + " is " + range + ".");
        }
    }
}
