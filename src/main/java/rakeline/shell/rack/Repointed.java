package rakeline.shell.rack;

import java.util.LinkedHashMap;
import java.util.Map;
import rakeline.worksheet.Row;
import rakeline.worksheet.Worksheet;

/** A page that reads another file in the place of one: on its rack, in its pickers and in the words of its snippets. */
final class Repointed {
    private Repointed() {}

    static Worksheet of(Worksheet page, String from, String to) {
        Map<String, String> picks = new LinkedHashMap<>(page.picks());
        picks.replaceAll((name, path) -> path.equals(from) ? to : path);
        return page.withRack(page.rack().stream()
                        .map(path -> path.equals(from) ? to : path)
                        .toList())
                .withPicks(picks)
                .withRows(page.rows().stream().map(row -> of(row, from, to)).toList());
    }

    private static Row of(Row row, String from, String to) {
        return row instanceof Row.Snippet
                ? row.withText(row.text().replace("\"" + from + "\"", "\"" + to + "\""))
                : row;
    }
}
