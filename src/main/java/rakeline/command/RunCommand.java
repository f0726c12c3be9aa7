package rakeline.command;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
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

    @Option(names = "--time-limit", paramLabel = "S", description = "Seconds that a row may take (default: 30).")
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
        Stream<Ran> ran = pages.stream().map(page -> run(runner, page, dials));
        Stream<Ran> checked = dials.isEmpty() ? ran : ran.toList().stream();
        return checked.mapToInt(one -> tell(runner, one, folder)).reduce(DONE, Math::max);
    }

    /** A page, and what its rows came to. */
    private record Ran(PageRunner.Page page, List<Outcome> outcomes) {
        Ran {
            outcomes = List.copyOf(outcomes);
        }
    }

    private static Ran run(PageRunner runner, PageRunner.Page page, Map<String, Double> dials) {
        List<Outcome> outcomes = runner.run(page.withDials(dials));
        PageArgument.checkComputedRanges(page, dials, outcomes);
        return new Ran(page, outcomes);
    }

    private int tell(PageRunner runner, Ran ran, Optional<Path> folder) {
        if (json) {
            console().json(PageJson.of(ran.page(), ran.outcomes()));
            runner.printMessages(ran.page(), ran.outcomes());
        } else {
            runner.print(ran.page(), ran.outcomes());
        }
        folder.ifPresent(where -> runner.writeFigures(ran.page(), ran.outcomes(), where));
        return PageRunner.isWhole(ran.page(), ran.outcomes()) ? DONE : FAILED;
    }
}
