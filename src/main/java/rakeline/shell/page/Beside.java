package rakeline.shell.page;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import rakeline.engine.Result;
import rakeline.figure.Drawing;
import rakeline.worksheet.Row;

/** The drawings that stand beside a row: of each kind the last at or above it, else the first below. */
public final class Beside {
    private Beside() {}

    /**
     * By kind.
     *
     * @param row the row's id; none: the last row's
     */
    public static Map<String, Drawing> row(PageModel now, Optional<String> row) {
        Map<String, Drawing> found = new LinkedHashMap<>();
        int end = row.map(id -> upTo(now, id)).orElse(now.rows().size());
        now.rows().subList(0, end).stream()
                .flatMap(each -> drawings(now, each))
                .forEach(drawing -> found.put(drawing.kind(), drawing));
        now.rows().subList(end, now.rows().size()).stream()
                .flatMap(each -> drawings(now, each))
                .forEach(drawing -> found.putIfAbsent(drawing.kind(), drawing));
        return found;
    }

    private static int upTo(PageModel now, String id) {
        List<String> ids = now.rows().stream().map(Row::id).toList();
        return Math.max(0, ids.indexOf(id)) + 1;
    }

    private static Stream<Drawing> drawings(PageModel now, Row row) {
        return now.standing(row.id()).result().stream().flatMap(Beside::drawings);
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
