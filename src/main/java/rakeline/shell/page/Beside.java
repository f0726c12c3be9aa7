package rakeline.shell.page;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import rakeline.engine.Result;
import rakeline.figure.Drawing;
import rakeline.worksheet.Row;

/** Which drawings stand beside a page. */
public final class Beside {
    private Beside() {}

    /**
     * One drawing of each kind: the last at or above the selected row; where none stands there, the first on the page that
     * follows a dial or picker, and else the first.
     */
    public static Map<String, Drawing> of(PageModel page) {
        return of(page, page.selected());
    }

    /** The same for another row than the selected one; none: the last. */
    public static Map<String, Drawing> of(PageModel page, Optional<String> selected) {
        int end = selected.map(id -> upTo(page, id)).orElse(page.rows().size());
        Map<String, Drawing> found = new LinkedHashMap<>();
        in(page, page.rows().subList(0, end), row -> true).forEach(drawing -> found.put(drawing.kind(), drawing));
        List<Row> below = page.rows().subList(end, page.rows().size());
        in(page, below, row -> isMoved(page, row)).forEach(drawing -> found.putIfAbsent(drawing.kind(), drawing));
        in(page, below, row -> true).forEach(drawing -> found.putIfAbsent(drawing.kind(), drawing));
        return found;
    }

    private static int upTo(PageModel page, String id) {
        List<String> ids = page.rows().stream().map(Row::id).toList();
        return ids.indexOf(id) + 1;
    }

    private static boolean isMoved(PageModel page, Row row) {
        return !page.standing(row.id()).follows().isEmpty();
    }

    private static Stream<Drawing> in(PageModel page, List<Row> rows, Predicate<Row> wanted) {
        return rows.stream()
                .filter(wanted)
                .flatMap(row -> page.standing(row.id()).result().stream())
                .flatMap(Beside::drawings);
    }

    private static Stream<Drawing> drawings(Result result) {
        if (result instanceof Result.Value value) {
            return value.drawings().stream();
        }
        return result instanceof Result.Shown shown && shown.figure() instanceof Drawing drawing
                ? Stream.of(drawing)
                : Stream.empty();
    }
}
