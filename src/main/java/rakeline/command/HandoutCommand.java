package rakeline.command;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import rakeline.engine.Outcome;
import rakeline.handout.Imprint;
import rakeline.handout.PageSheet;
import rakeline.handout.RunPage;
import rakeline.handout.Sheet;
import rakeline.quantity.Refusal;
import rakeline.study.Vocabulary;

/** Runs worksheets and lays them out for others. */
@Command(
        name = "handout",
        description = "Runs worksheets and writes what they show as one HTML file, as PDF, or both.",
        footer = {
            "",
            "It is for students: answers, the rows that are folded on the page, are left",
            "out, with lines to write. --with-answers prints them in their places.",
            "It holds notes, figures and tables, where dials stood, what was held, what was",
            "assumed, cautions, what the words mean, date, version and the SHA-256 of each",
            "FILE. Several FILEs make one handout. Without --html and --pdf the HTML is",
            "printed. Naming a FILE lets its rows run; waiting rows run too. A row that",
            "failed stands in the handout with its message, and the exit code is 1. --json",
            "prints what run --json prints, with a handout in a file."
        })
final class HandoutCommand extends Work {
    @Parameters(arity = "1..*", paramLabel = "FILE", description = "Worksheets (*.rakeline).")
    private List<String> files = List.of();

    @Mixin
    private Handed handed = new Handed();

    @Option(names = "--set", paramLabel = "DIAL=VALUE", description = "Sets a dial, by its variable, in every FILE.")
    private List<String> changes = List.of();

    @Option(names = "--with-answers", description = "Prints the answers too; without it they are left out.")
    private boolean answers;

    @Option(names = "--code", description = "Shows the snippets' code.")
    private boolean code;

    @Option(names = "--time-limit", paramLabel = "S", description = "Seconds that a row may take (default: 30).")
    private String timeLimit;

    @Option(names = "--json", description = "Prints JSON.")
    private boolean json;

    private final Vocabulary vocabulary;

    HandoutCommand(Console console, Vocabulary vocabulary) {
        super(console);
        this.vocabulary = vocabulary;
    }

    @Override
    int work() {
        Map<String, Double> dials = KeyValue.numbers("--set", changes);
        handed.check();
        if (json && handed.isPrinted()) {
            throw new Refusal("--json prints JSON; accepted with it is a file for --html or --pdf.");
        }
        List<PageRunner.Page> pages = files.stream().map(PageArgument::read).toList();
        PageRunner.checkJava();
        pages.forEach(page -> PageArgument.checkDials(page, dials));
        return hand(pages, dials);
    }

    private int hand(List<PageRunner.Page> pages, Map<String, Double> dials) {
        PageRunner runner = new PageRunner(console(), PageRunner.settings(timeLimit));
        List<Sheet> sheets = new ArrayList<>();
        List<Map<String, Object>> told = new ArrayList<>();
        int exit = DONE;
        for (PageRunner.Page page : pages) {
            PageRunner.Page set = page.withDials(dials);
            List<Outcome> outcomes = runner.run(set);
            PageArgument.checkComputedRanges(page, dials, outcomes);
            sheets.add(sheet(set, outcomes));
            told.add(PageJson.of(set, outcomes));
            runner.printMessages(set, outcomes);
            exit = Math.max(exit, PageRunner.isWhole(set, outcomes) ? DONE : FAILED);
        }
        handed.write(console(), Sheet.joined(sheets));
        if (json) {
            told.forEach(console()::json);
        }
        return exit;
    }

    private Sheet sheet(PageRunner.Page page, List<Outcome> outcomes) {
        RunPage run = new RunPage(page.worksheet(), outcomes);
        Imprint imprint = Handed.imprint(List.of(page.source()));
        PageSheet.Edition edition = answers ? PageSheet.Edition.WITH_ANSWERS : PageSheet.Edition.STUDENTS;
        return PageSheet.of(run, Handed.knowledge(vocabulary, page.folder()), edition, code, imprint);
    }
}
