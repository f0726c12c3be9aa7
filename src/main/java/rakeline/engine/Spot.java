package rakeline.engine;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The place in a row's text that a message is about.
 *
 * @param from the first letter, from 0
 * @param to the letter after the last
 */
public record Spot(int from, int to) {
    private static final Pattern PLACE = Pattern.compile("^Line (\\d{1,6})(?:, column (\\d{1,6}))?: ");
    private static final Pattern QUOTED = Pattern.compile("\"([^\"\\n]{1,80})\"");

    /**
     * Reads the place off a message's beginning, as in {@code Line 2, column 5: …} or {@code Line 2: …}, else looks for a
     * word that the message quotes and the text has in quotes.
     *
     * @return empty where the message names no place in this text
     */
    public static Optional<Spot> of(String message, String text) {
        Matcher place = PLACE.matcher(message);
        return place.find()
                ? inLine(text, Integer.parseInt(place.group(1)), Optional.ofNullable(place.group(2)))
                : quoted(message, text);
    }

    private static Optional<Spot> inLine(String text, int line, Optional<String> column) {
        int start = 0;
        for (int i = 1; i < line; i++) {
            int end = text.indexOf('\n', start);
            if (end < 0) {
                return Optional.empty();
            }
            start = end + 1;
        }
        int end = text.indexOf('\n', start) < 0 ? text.length() : text.indexOf('\n', start);
        int begin = start;
        return column.map(each -> word(text, begin + Integer.parseInt(each) - 1, end))
                .or(() -> Optional.of(stripped(text, begin, end)))
                .filter(spot -> spot.from() < spot.to());
    }

    /** The word that begins there or behind a dot there, or the one letter; at the end of a line the letter before. */
    private static Spot word(String text, int at, int lineEnd) {
        int place = Math.max(0, Math.min(at, lineEnd));
        int from = place + 1 < lineEnd && text.charAt(place) == '.' ? place + 1 : place;
        int to = from;
        while (to < lineEnd && Character.isJavaIdentifierPart(text.charAt(to))) {
            to++;
        }
        boolean beyond = from >= lineEnd;
        return beyond ? new Spot(Math.max(0, from - 1), from) : new Spot(from, Math.max(to, from + 1));
    }

    private static Spot stripped(String text, int from, int to) {
        int begin = from;
        while (begin < to && Character.isWhitespace(text.charAt(begin))) {
            begin++;
        }
        return new Spot(begin, to);
    }

    private static Optional<Spot> quoted(String message, String text) {
        String sentence = message.lines().findFirst().orElse("");
        return QUOTED.matcher(sentence)
                .results()
                .map(found -> '"' + found.group(1) + '"')
                .filter(text::contains)
                .findFirst()
                .map(word -> new Spot(text.indexOf(word) + 1, text.indexOf(word) + word.length() - 1));
    }
}
