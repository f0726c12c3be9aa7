package rakeline.worksheet;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;

/** Edits of several rows at once, each from one worksheet to the next; rows keep their order among themselves. */
public final class RowEdits {
    private RowEdits() {}

    /** The rows with these ids, in page order. */
    public static List<Row> rows(Worksheet page, Collection<String> ids) {
        return page.rows().stream().filter(row -> ids.contains(row.id())).toList();
    }

    /** Without these rows; ids that the page lacks do nothing. */
    public static Worksheet without(Worksheet page, Collection<String> ids) {
        return page.withRows(
                page.rows().stream().filter(row -> !ids.contains(row.id())).toList());
    }

    /** With copies of rows put at a place from 0, each under an id that no row had. */
    public static Worksheet insert(Worksheet page, int place, List<Row> rows) {
        Worksheet next = page;
        for (int i = 0; i < rows.size(); i++) {
            next = next.insert(place + i, named(rows.get(i), next.freshId()));
        }
        return next;
    }

    private static Row named(Row row, String id) {
        return row instanceof Row.Snippet snippet
                ? new Row.Snippet(id, snippet.text(), snippet.waits(), snippet.folded(), snippet.timeLimitSeconds())
                : new Row.Note(id, row.text());
    }

    /**
     * With these rows moved together, in front of the row that now stands at a place from 0.
     *
     * @param place up to the number of rows, which is the end
     */
    public static Worksheet moveTo(Worksheet page, Collection<String> ids, int place) {
        List<Row> all = page.rows();
        int kept = (int) all.subList(0, Math.max(0, Math.min(place, all.size()))).stream()
                .filter(row -> !ids.contains(row.id()))
                .count();
        List<Row> next = new ArrayList<>(without(page, ids).rows());
        next.addAll(kept, rows(page, ids));
        return page.withRows(next);
    }

    /** With these rows moved together by one row, up where the direction is negative, down else; the end is the end. */
    public static Worksheet step(Worksheet page, Collection<String> ids, int direction) {
        List<Row> moved = rows(page, ids);
        if (moved.isEmpty()) {
            return page;
        }
        int first = page.indexOf(moved.get(0).id());
        int last = page.indexOf(moved.get(moved.size() - 1).id());
        return moveTo(page, ids, direction < 0 ? Math.max(0, first - 1) : last + 2);
    }
}
