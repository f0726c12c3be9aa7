package rakeline.worksheet;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Words to be found in the rows of a page, notes and snippets alike.
 *
 * @param words taken as they are; empty finds nothing
 * @param matchCase whether capitals must be capitals
 */
public record Search(String words, boolean matchCase) {
    /** A place where the words stand: from one letter of a row's text to before another. */
    public record Hit(String row, int from, int to) {}

    /** All places, in page order. */
    public List<Hit> in(Worksheet page) {
        return words.isEmpty()
                ? List.of()
                : page.rows().stream().flatMap(this::in).toList();
    }

    private Stream<Hit> in(Row row) {
        return pattern().matcher(row.text()).results().map(found -> new Hit(row.id(), found.start(), found.end()));
    }

    private Pattern pattern() {
        int flags = Pattern.LITERAL | (matchCase ? 0 : Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);
        return Pattern.compile(words, flags);
    }

    /** The page with other words in one place. */
    public static Worksheet replace(Worksheet page, Hit hit, String by) {
        String text = page.row(hit.row()).orElseThrow().text();
        return page.withText(hit.row(), text.substring(0, hit.from()) + by + text.substring(hit.to()));
    }

    /** The page with other words in all places. */
    public Worksheet replaceAll(Worksheet page, String by) {
        return words.isEmpty()
                ? page
                : page.withRows(
                        page.rows().stream().map(row -> replaced(row, by)).toList());
    }

    private Row replaced(Row row, String by) {
        return row.withText(pattern().matcher(row.text()).replaceAll(Matcher.quoteReplacement(by)));
    }
}
