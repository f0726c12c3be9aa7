package rakeline.command;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import rakeline.engine.Outcome;

/** Runs worksheets without a window. */
@Command(
        name = "run",
        description = "Runs worksheets top to bottom, waiting rows too, and prints what they show.",
        footer = {
            "",
            "--json prints one object a FILE, each on one line: {\"file\", \"title\", \"rows\": [{\"id\", \"name\", \"state\",",
            "\"message\", \"result\": null or {\"kind\": \"chart\", \"table\", \"drawing\", \"value\" or \"text\", \"text\",",
            "\"columns\": [{\"key\", \"label\", \"unit\", \"values\"}]}}], \"notes\": [{\"id\", \"text\"}]}, notes",
            "filled with what rows came to. Exit 1 where a row failed or a note names nothing."
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
        files.forEach(file -> pages.add(PageArgument.read(file)));
        PageRunner.checkJava();
        pages.forEach(page -> PageArgument.checkDials(page, dials));
        Optional<Path> folder = Optional.ofNullable(out).map(Paths::folder);
        PageRunner runner = new PageRunner(console(), PageRunner.settings(timeLimit));
        int code = DONE;
        for (PageRunner.Page page : pages) {
            code = Math.max(code, run(runner, page, dials, folder));
        }
        return code;
    }

    private int run(PageRunner runner, PageRunner.Page page, Map<String, Double> dials, Optional<Path> folder) {
        List<Outcome> outcomes = runner.run(page.withDials(dials));
        PageArgument.checkComputedRanges(page, dials, outcomes);
        if (json) {
            console().json(PageJson.of(page, outcomes));
            runner.printMessages(page, outcomes);
        } else {
            runner.print(page, outcomes);
        }
        folder.ifPresent(where -> runner.writeFigures(page, outcomes, where));
        return PageRunner.isWhole(page, outcomes) ? DONE : FAILED;
    }
}
