package rakeline.engine;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import rakeline.figure.Chart;
import rakeline.figure.Drawing;
import rakeline.figure.Figure;
import rakeline.figure.MapFigure;
import rakeline.figure.Table;

/** What rows are called: by what they define, or else by what they show, numbered where that happens twice. */
public final class RowNames {
    private RowNames() {}

    /** The row's own name: its last variable, else its last method or class; none where it defines nothing. */
    public static Optional<String> defined(RowSource source) {
        List<Definition> named = source.defines().stream()
                .filter(definition -> definition.kind() != Definition.Kind.IMPORT)
                .toList();
        return named.stream()
                .filter(definition -> definition.kind() == Definition.Kind.VARIABLE)
                .reduce((first, second) -> second)
                .or(() -> named.stream().reduce((first, second) -> second))
                .map(Definition::name);
    }

    /** The names of all rows by id, each once on the page. */
    public static Map<String, String> of(List<PageRow> rows, Function<String, Optional<Result>> results) {
        Map<String, Integer> seen = new HashMap<>();
        Map<String, String> names = new LinkedHashMap<>();
        for (PageRow row : rows) {
            String plain = plain(row, results.apply(row.id()));
            int count = seen.merge(plain, 1, Integer::sum);
            names.put(row.id(), count == 1 ? plain : plain + " " + count);
        }
        return names;
    }

    /** What the row is called where no other is called so. */
    public static String plain(PageRow row, Optional<Result> result) {
        return defined(row.source()).orElseGet(() -> shown(row, result));
    }

    private static String shown(PageRow row, Optional<Result> result) {
        return result.map(RowNames::kind).orElse("row " + row.number());
    }

    private static String kind(Result result) {
        if (result instanceof Result.Shown shown) {
            return kind(shown.figure());
        }
        return result instanceof Result.Text ? "text" : "value";
    }

    private static String kind(Figure figure) {
        if (figure instanceof Chart) {
            return "chart";
        }
        if (figure instanceof Table) {
            return "table";
        }
        if (figure instanceof MapFigure) {
            return "map";
        }
        return figure instanceof Drawing ? "drawing" : "figure";
    }
}
