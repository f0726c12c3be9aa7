package rakeline.shell.page;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.stream.Stream;
import rakeline.engine.Outcome;
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
        int end = page.selected().map(id -> upTo(page, id)).orElse(page.rows().size());
        Map<String, Drawing> found = new LinkedHashMap<>();
        in(page, page.rows().subList(0, end), row -> true).forEach(drawing -> found.put(drawing.kind(), drawing));
        List<Row> below = page.rows().subList(end, page.rows().size());
        in(page, below, row -> isMoved(page, row)).forEach(drawing -> found.putIfAbsent(drawing.kind(), drawing));
        in(page, below, row -> true).forEach(drawing -> found.putIfAbsent(drawing.kind(), drawing));
        return found;
    }

    /**
     * The drawings of the bikes that a row's figure is about, one of each kind: such as follow most of the dials and pickers
     * that the figure follows, of these such as show most of the bikes, and of these the last at or above it, else the
     * first below. None follows a dial that the figure does not follow, and none shows a bike that the figure is not about.
     */
    public static Map<String, Drawing> figure(PageModel page, String row) {
        List<String> ids = page.rows().stream().map(Row::id).toList();
        int place = ids.indexOf(row);
        Map<String, Drawing> found = new LinkedHashMap<>();
        new About(page)
                .drawnFor(page.standing(row)).stream()
                        .filter(drawn -> !page.isHidden(drawn.row().id()))
                        .sorted(Comparator.comparing((About.Drawn drawn) ->
                                        -drawn.row().follows().size())
                                .thenComparing(drawn -> -drawn.bikes())
                                .thenComparing(drawn -> ids.indexOf(drawn.row().id()) > place)
                                .thenComparing(drawn ->
                                        Math.abs(ids.indexOf(drawn.row().id()) - place)))
                        .flatMap(drawn -> drawings(drawn.row()).stream())
                        .forEach(drawing -> found.putIfAbsent(drawing.kind(), drawing));
        return found;
    }

    /** Whether a drawing that stands beside a page is of a row that has changed, or is to change, since it was drawn. */
    public static boolean isOld(PageModel page, Drawing drawing) {
        return page.rows().stream()
                .filter(row -> page.isOld(row.id()))
                .flatMap(row -> drawings(page.standing(row.id())).stream())
                .anyMatch(drawing::equals);
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
                .filter(row -> !page.isHidden(row.id()))
                .filter(wanted)
                .flatMap(row -> drawings(page.standing(row.id())).stream());
    }

    /** What a row draws: its figure, or what stands for its value. */
    static List<Drawing> drawings(Outcome row) {
        return row.result().map(Beside::drawings).orElse(List.of());
    }

    private static List<Drawing> drawings(Result result) {
        if (result instanceof Result.Value value) {
            return value.drawings();
        }
        return result instanceof Result.Shown shown && shown.figure() instanceof Drawing drawing
                ? List.of(drawing)
                : List.of();
    }
}
