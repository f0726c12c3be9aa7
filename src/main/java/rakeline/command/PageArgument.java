package rakeline.command;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rakeline.catalogue.Bytes;
import rakeline.engine.Control;
import rakeline.engine.Outcome;
import rakeline.engine.SnippetSource;
import rakeline.engine.jshell.Sessions;
import rakeline.handout.Imprint;
import rakeline.quantity.Decimals;
import rakeline.quantity.Nearest;
import rakeline.quantity.Range;
import rakeline.quantity.Refusal;
import rakeline.worksheet.WorksheetFile;

/** A worksheet that a command names, and the dials that it sets. */
final class PageArgument {
    private PageArgument() {}

    /**
     * Reads it.
     *
     * @throws Refusal where it is none
     */
    static PageRunner.Page read(String argument) {
        Path file = Paths.of(argument);
        byte[] bytes = Bytes.read(file, WorksheetFile.LIMIT_BYTES);
        String name = file.getFileName().toString();
        String stem = name.endsWith(WorksheetFile.EXTENSION)
                ? name.substring(0, name.length() - WorksheetFile.EXTENSION.length())
                : name;
        Path folder = file.toAbsolutePath().getParent();
        return new PageRunner.Page(
                argument,
                stem,
                Optional.of(folder),
                WorksheetFile.read(bytes, argument),
                Imprint.Source.of(name, bytes));
    }

    /** Every dial that is set must be on every page, and in its range where the page says it in plain numbers. */
    static void checkDials(PageRunner.Page page, Map<String, Double> dials) {
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

    /** A range that depends on rows above, or on a bike, is known only when these have run; nothing has been printed yet. */
    static void checkComputedRanges(PageRunner.Page page, Map<String, Double> dials, List<Outcome> outcomes) {
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
