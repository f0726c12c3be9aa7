package rakeline.shell.rack;

import java.util.List;
import java.util.Locale;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import rakeline.figure.Column;
import rakeline.figure.ComparisonTable;
import rakeline.figure.ReconcileTable;
import rakeline.figure.Table;
import rakeline.geometry.Setting;
import rakeline.quantity.Decimals;
import rakeline.quantity.Quantity;
import rakeline.quantity.Unit;
import rakeline.shell.look.Numerals;

/** What was said in the keys of files, said in the labels that people read. */
final class Labels {
    private static final Pattern NAMED =
            Pattern.compile("(?<![\\w.\"])([a-z]\\w*(?:\\.\\w+)+)(?: ([-−]?\\d+(?:\\.\\d+)?)(?= |$))?");

    /** A key that stands behind its label for those who type keys. */
    private static final Pattern TYPED = Pattern.compile(" \\(([a-z]\\w*(?:\\.\\w+)+)(, |\\))");

    private static final String BOTH = "Both wheels, ";
    private static final String CHARTED = ", charted";

    private Labels() {}

    /** A sentence with labels in the place of keys; a number that follows a key has its unit. */
    static String in(String sentence) {
        String once = TYPED.matcher(sentence).replaceAll(found -> Matcher.quoteReplacement(withoutKey(found)));
        return NAMED.matcher(once).replaceAll(found -> Matcher.quoteReplacement(label(found)));
    }

    private static String withoutKey(MatchResult found) {
        if (!isKey(found.group(1))) {
            return found.group();
        }
        return found.group(2).equals(")") ? "" : " (";
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
        return isKey(key) ? within(Setting.of(key).quantity().label()) : key;
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
        return new Table(table.title(), columns, table.held(), table.cautions(), table.basis());
    }

    /** A label as it stands within a sentence: {@code charted wheelbase}; {@code BB drop} keeps its capitals. */
    static String within(String label) {
        if (label.startsWith(BOTH)) {
            return label.substring(BOTH.length()) + " of both wheels";
        }
        return label.endsWith(CHARTED)
                ? "charted " + small(label.substring(0, label.length() - CHARTED.length()))
                : small(label);
    }

    /** The words as a sentence, its first letter large. */
    static String sentence(String words) {
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }

    private static String small(String label) {
        boolean isWord = label.length() < 2 || Character.isLowerCase(label.charAt(1));
        return isWord ? label.substring(0, 1).toLowerCase(Locale.ROOT) + label.substring(1) : label;
    }

    /** Numbers by their labels, in the unit in which lengths are shown. */
    record Told(LengthUnit lengths) implements ReconcileTable.Told {
        @Override
        public String name(Quantity number) {
            return within(number.label());
        }

        @Override
        public String value(Quantity number, double value) {
            return new RackColumn(number, true).show(value, lengths);
        }

        @Override
        public String withUnit(Quantity number, double value) {
            return new RackColumn(number, true).withUnit(value, lengths);
        }
    }

    /** Numbers of a comparison, lengths in the unit in which the rack shows them. */
    record InUnit(LengthUnit lengths) implements ComparisonTable.Told {
        @Override
        public String heading(Quantity quantity) {
            return new RackColumn(quantity, false).heading(lengths);
        }

        @Override
        public String number(Quantity quantity, double value, int moreDecimals) {
            int decimals = quantity.decimals() + moreDecimals;
            boolean converted = quantity.unit() == Unit.MILLIMETRE && lengths != LengthUnit.MILLIMETRE;
            return converted && Double.isFinite(value)
                    ? lengths.show(value, decimals)
                    : Decimals.fixed(value, decimals);
        }
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
