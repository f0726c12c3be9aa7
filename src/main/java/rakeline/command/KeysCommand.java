package rakeline.command;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import rakeline.desk.SafeFile;
import rakeline.handout.Sheet;
import rakeline.help.Glossary;
import rakeline.quantity.Caution;
import rakeline.quantity.Limit;
import rakeline.quantity.Quantity;
import rakeline.quantity.Range;
import rakeline.quantity.SourceNote;
import rakeline.study.Vocabulary;

/** Prints what keys mean. */
@Command(
        name = "keys",
        description = "Prints what a key of a file, a command or a figure means; without KEY, lists all.",
        footer = {
            "",
            "--json prints a list, one item a key: {\"key\", \"label\", \"unit\", \"definition\",",
            "\"constant\": name or null, \"accepted\": [from, to] or null,",
            "\"uncertainty\": number or null, \"limits\": [{\"value\", \"side\", \"label\",",
            "\"source\"}], \"cautions\", \"sources\": [{\"part\", \"text\", \"standing\"}]}. A source",
            "is of the definition, the value where none is given, the limits, the formula",
            "or the uncertainty; its standing says in words whether it was read."
        })
final class KeysCommand extends Work {
    @Parameters(arity = "0..*", paramLabel = "KEY", description = "An input or a measure.")
    private List<String> keys = List.of();

    @Option(names = "--html", paramLabel = "FILE", description = "Writes them, or all, as one HTML page.")
    private String html;

    @Option(names = "--json", description = "Prints JSON.")
    private boolean json;

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
        if (json) {
            List<Quantity> listed = asked.isEmpty() ? vocabulary.quantities() : asked;
            console().json(listed.stream().map(each -> asJson(glossary, each)).toList());
            return DONE;
        }
        if (keys.isEmpty()) {
            glossary.keys().forEach(key -> console().data().println(line(vocabulary.quantity(key))));
        }
        asked.forEach(quantity -> console().data().println(String.join("\n  ", glossary.entry(quantity))));
        return DONE;
    }

    private static Map<String, Object> asJson(Glossary glossary, Quantity quantity) {
        Map<String, Object> item = new LinkedHashMap<>();
        item.put("key", quantity.key());
        item.put("label", quantity.label());
        item.put("unit", quantity.unit().symbol());
        item.put("definition", quantity.definition());
        item.put("constant", glossary.constant(quantity.key()).orElse(null));
        item.put("accepted", accepted(quantity.accepted()));
        item.put("uncertainty", Console.orNull(quantity.uncertaintyOrNaN()));
        item.put("limits", quantity.limits().stream().map(KeysCommand::asJson).toList());
        item.put("cautions", quantity.cautions().stream().map(Caution::sentence).toList());
        item.put("sources", quantity.sources().stream().map(KeysCommand::asJson).toList());
        return item;
    }

    private static List<Double> accepted(Range range) {
        return range.equals(Range.ANY) ? null : List.of(range.from(), range.to());
    }

    private static Map<String, Object> asJson(Limit limit) {
        Map<String, Object> item = new LinkedHashMap<>();
        item.put("value", limit.value());
        item.put("side", limit.side().name().toLowerCase(Locale.ROOT).replace('_', ' '));
        item.put("label", limit.label());
        item.put("source", limit.source());
        return item;
    }

    private static Map<String, Object> asJson(SourceNote note) {
        Map<String, Object> item = new LinkedHashMap<>();
        item.put("part", note.part().words());
        item.put("text", note.text());
        item.put("standing", note.standing().words());
        return item;
    }

    private static Glossary glossary(Vocabulary vocabulary) {
        return Glossary.of(vocabulary.quantities(), vocabulary.constants());
    }

    private static String line(Quantity quantity) {
        return quantity.key() + "  " + quantity.heading();
    }
}
