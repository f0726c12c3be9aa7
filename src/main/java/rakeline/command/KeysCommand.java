package rakeline.command;

import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import rakeline.desk.SafeFile;
import rakeline.handout.Sheet;
import rakeline.help.Glossary;
import rakeline.quantity.Quantity;
import rakeline.study.Vocabulary;

/** Prints what keys mean. */
@Command(
        name = "keys",
        description = "Prints what a key of a file, a command or a figure means; without KEY, lists all.")
final class KeysCommand extends Work {
    @Parameters(arity = "0..*", paramLabel = "KEY", description = "An input or a measure.")
    private List<String> keys = List.of();

    @Option(names = "--html", paramLabel = "FILE", description = "Writes them, or all, as one HTML page.")
    private String html;

    private final Vocabulary vocabulary;

    KeysCommand(Console console, Vocabulary vocabulary) {
        super(console);
        this.vocabulary = vocabulary;
    }

    @Override
    int work() {
        List<Quantity> asked = keys.stream().map(vocabulary::quantity).toList();
        if (html != null) {
            Sheet page = KeysSheet.of(vocabulary, asked.isEmpty() ? vocabulary.quantities() : asked);
            SafeFile.onDisk().write(Paths.of(html), page.lay().html());
            return DONE;
        }
        Glossary glossary = glossary(vocabulary);
        if (keys.isEmpty()) {
            glossary.keys().forEach(key -> console().data().println(line(vocabulary.quantity(key))));
        }
        asked.forEach(quantity -> console().data().println(String.join("\n  ", glossary.entry(quantity))));
        return DONE;
    }

    private static Glossary glossary(Vocabulary vocabulary) {
        return Glossary.of(vocabulary.quantities(), vocabulary.constants());
    }

    private static String line(Quantity quantity) {
        return quantity.key() + "  " + quantity.heading();
    }
}
