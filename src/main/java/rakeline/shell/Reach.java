package rakeline.shell;

import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import rakeline.catalogue.Roots;
import rakeline.quantity.Refusal;
import rakeline.worksheet.Row;
import rakeline.worksheet.Worksheet;
import rakeline.worksheet.WorksheetFile;

/** The files that a page names, in its rack, its picks and the words of its snippets. */
final class Reach {
    private static final Pattern FILE = Pattern.compile("\"([^\"\\\\\\n]{1,200}\\.(?:json|csv))\"");

    private Reach() {}

    /** Those that were found before and are not found now. */
    static List<String> lost(Worksheet page, Roots before, Roots now) {
        return names(page)
                .distinct()
                .filter(name -> isIn(before, name) && !isIn(now, name))
                .toList();
    }

    private static Stream<String> names(Worksheet page) {
        return Stream.of(page.rack().stream(), page.picks().values().stream(), named(page))
                .flatMap(names -> names);
    }

    private static Stream<String> named(Worksheet page) {
        return page.rows().stream()
                .filter(Row.Snippet.class::isInstance)
                .flatMap(row -> FILE.matcher(row.text()).results())
                .map((MatchResult found) -> found.group(1));
    }

    private static boolean isIn(Roots roots, String name) {
        try {
            return roots.read(name, WorksheetFile.LIMIT_BYTES).length > 0;
        } catch (Refusal notThere) {
            return false;
        }
    }
}
