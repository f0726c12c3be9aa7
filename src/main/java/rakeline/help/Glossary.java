package rakeline.help;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import rakeline.quantity.Quantity;

/**
 * Every input and measure by key and by the name of its constant, read off the declarations.
 *
 * @param quantities by key
 * @param constants the key that each constant's name stands for
 */
public record Glossary(Map<String, Quantity> quantities, Map<String, String> constants) {
    public Glossary {
        quantities = Map.copyOf(quantities);
        constants = Map.copyOf(constants);
    }

    public static Glossary of(Collection<Quantity> quantities, Map<String, String> constants) {
        return new Glossary(
                quantities.stream()
                        .collect(Collectors.toMap(Quantity::key, quantity -> quantity, (first, second) -> second)),
                constants);
    }

    /** What a key or a constant means; empty for another word. */
    public Optional<Quantity> find(String word) {
        return Optional.ofNullable(quantities.get(constants.getOrDefault(word, word)));
    }

    /** Every key, sorted. */
    public List<String> keys() {
        return quantities.keySet().stream().sorted().toList();
    }

    /** Keys and constants that begin so, case aside, each with the quantity that it names, sorted by word. */
    public Map<String, Quantity> beginning(String start) {
        Map<String, Quantity> found = new TreeMap<>(Comparator.naturalOrder());
        quantities.forEach((key, quantity) -> addIfBegins(found, key, start, quantity));
        constants.forEach((name, key) -> addIfBegins(found, name, start, quantities.get(key)));
        return found;
    }

    private static void addIfBegins(Map<String, Quantity> found, String word, String start, Quantity quantity) {
        if (quantity != null && word.toLowerCase(Locale.ROOT).startsWith(start.toLowerCase(Locale.ROOT))) {
            found.put(word, quantity);
        }
    }

    /** An entry as lines of plain text: key and label, definition, unit and range, uncertainty, limits, source, cautions. */
    public List<String> entry(Quantity quantity) {
        List<String> lines = new ArrayList<>();
        lines.add(quantity.key() + ": " + quantity.heading());
        lines.add(quantity.definition());
        constant(quantity.key()).ifPresent(name -> lines.add("In a snippet: " + name));
        lines.addAll(quantity.facts());
        quantity.cautions().forEach(caution -> lines.add("Caution: " + caution.sentence()));
        return List.copyOf(lines);
    }

    /** The name of the constant that stands for a key in a row; empty where there is none. */
    public Optional<String> constant(String key) {
        return constants.entrySet().stream()
                .filter(entry -> entry.getValue().equals(key))
                .map(Map.Entry::getKey)
                .sorted()
                .findFirst();
    }
}
