package rakeline.quantity;

import java.util.List;
import java.util.Locale;

/** Pieces of sentences: labels inside them, and several things in a row. */
public final class Sentences {
    private Sentences() {}

    /** A label inside a sentence; an acronym keeps its capitals. */
    public static String lower(String label) {
        boolean acronym = label.length() > 1 && Character.isUpperCase(label.charAt(1));
        return acronym ? label : label.substring(0, 1).toLowerCase(Locale.ROOT) + label.substring(1);
    }

    /** The same at a sentence's start. */
    public static String upper(String words) {
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }

    /** As in {@code stem, spacers and bar}. */
    public static String list(List<String> words) {
        int last = words.size() - 1;
        return last < 1
                ? String.join("", words)
                : String.join(", ", words.subList(0, last)) + " and " + words.get(last);
    }
}
