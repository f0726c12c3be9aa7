package rakeline.engine.jshell;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import rakeline.worksheet.Row;
import rakeline.worksheet.Worksheet;

/** Pages for tests, written as the texts of their rows; ids are r1, r2, … */
final class Pages {
    private Pages() {}

    static Worksheet of(String... texts) {
        List<Row> rows = new ArrayList<>();
        for (String text : texts) {
            rows.add(row("r" + (rows.size() + 1), text));
        }
        return Worksheet.empty("Test").withRows(rows);
    }

    static Worksheet of(Row... rows) {
        return Worksheet.empty("Test").withRows(List.of(rows));
    }

    static Row.Snippet row(String id, String text) {
        return new Row.Snippet(id, text, false, false, OptionalInt.empty());
    }

    static Row.Snippet limited(String id, String text, int seconds) {
        return new Row.Snippet(id, text, false, false, OptionalInt.of(seconds));
    }

    static Row.Snippet waiting(String id, String text) {
        return row(id, text).waiting(true);
    }
}
