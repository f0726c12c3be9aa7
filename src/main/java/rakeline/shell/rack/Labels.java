package rakeline.shell.rack;

import java.util.List;
import java.util.Locale;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import rakeline.figure.Column;
import rakeline.figure.Table;
import rakeline.geometry.Setting;
import rakeline.quantity.Quantity;
import rakeline.shell.look.Numerals;

/** What was said in the keys of files, said in the labels that people read. */
final class Labels {
    private static final Pattern NAMED =
            Pattern.compile("(?<![\\w.\"])([a-z]\\w*(?:\\.\\w+)+)(?: ([-−]?\\d+(?:\\.\\d+)?)(?= |$))?");

    private Labels() {}

    /** A sentence with labels in the place of keys; a number that follows a key has its unit. */
    static String in(String sentence) {
        return NAMED.matcher(sentence).replaceAll(found -> Matcher.quoteReplacement(label(found)));
    }

    /** The keys that a sentence names, each once. */
    static List<String> keysIn(String sentence) {
        return NAMED.matcher(sentence)
                .results()
                .map(found -> found.group(1))
                .filter(Labels::isKey)
                .distinct()
                .toList();
    }

    /** A key's label within a sentence; the key itself where it is of no input. */
    static String of(String key) {
        return isKey(key) ? small(Setting.of(key).quantity().label()) : key;
    }

    /** A table whose first column names inputs by their keys, with labels in their place. */
    static Table in(Table table) {
        Column keys = table.columns().get(0);
        Column labels = Column.ofWords(
                keys.key(),
                keys.label(),
                keys.shown().stream().map(Labels::heading).toList());
        List<Column> columns = Stream.concat(
                        Stream.of(labels), table.columns().stream().skip(1))
                .toList();
        return new Table(table.title(), columns, table.held(), table.cautions());
    }

    /** A label as it stands within a sentence: {@code BB drop} keeps its capitals. */
    static String small(String label) {
        boolean isWord = label.length() < 2 || Character.isLowerCase(label.charAt(1));
        return isWord ? label.substring(0, 1).toLowerCase(Locale.ROOT) + label.substring(1) : label;
    }

    private static String heading(String key) {
        return isKey(key) ? Setting.of(key).quantity().label() : key;
    }

    private static String label(MatchResult found) {
        String key = found.group(1);
        if (!isKey(key)) {
            return found.group();
        }
        return found.group(2) == null ? of(key) : of(key) + " " + withUnit(found.group(2), key);
    }

    private static String withUnit(String number, String key) {
        Quantity quantity = Setting.of(key).quantity();
        String shown = Numerals.show(Numerals.read(number).orElseThrow());
        return Numerals.withUnit(shown, quantity.unit().symbol());
    }

    private static boolean isKey(String key) {
        return Setting.keys().contains(key);
    }
}
