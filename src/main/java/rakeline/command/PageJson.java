package rakeline.command;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rakeline.engine.Outcome;
import rakeline.engine.Prose;
import rakeline.engine.Result;
import rakeline.figure.Chart;
import rakeline.figure.Drawing;
import rakeline.figure.Figure;
import rakeline.figure.MapFigure;
import rakeline.figure.Table;
import rakeline.quantity.Decimals;
import rakeline.worksheet.Row;

/** A page that has run as plain values for JSON. */
final class PageJson {
    private PageJson() {}

    static Map<String, Object> of(PageRunner.Page page, List<Outcome> outcomes) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("file", page.name());
        json.put("title", page.worksheet().title());
        json.put("rows", outcomes.stream().map(PageJson::row).toList());
        Prose prose = Prose.of(outcomes);
        json.put(
                "notes",
                page.worksheet().rows().stream()
                        .filter(Row.Note.class::isInstance)
                        .map(note -> note(note, prose))
                        .toList());
        return json;
    }

    private static Map<String, Object> note(Row note, Prose prose) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("id", note.id());
        json.put("text", Decimals.typed(prose.fill(note.text()).text()));
        return json;
    }

    private static Map<String, Object> row(Outcome outcome) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("id", outcome.id());
        json.put("name", outcome.name());
        json.put("state", outcome.state().words());
        json.put("message", outcome.message());
        json.put("printed", outcome.printed());
        json.put(
                "result",
                outcome.result().map(result -> result(outcome.name(), result)).orElse(null));
        return json;
    }

    private static Map<String, Object> result(String name, Result result) {
        if (result instanceof Result.Shown shown) {
            Figure figure = shown.figure();
            Map<String, Object> json = json(
                    kind(figure),
                    figure.title(),
                    figure.columns().stream().map(FigureJson::column).toList());
            json.put("about", FigureJson.about(figure.basis()));
            return json;
        }
        if (result instanceof Result.Value value) {
            return json("value", value.text(), number(name, value.number()));
        }
        return json("text", ((Result.Text) result).text(), List.of());
    }

    private static Map<String, Object> json(String kind, String text, List<Map<String, Object>> columns) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("kind", kind);
        json.put("text", text);
        json.put("columns", columns);
        return json;
    }

    private static List<Map<String, Object>> number(String name, double value) {
        if (Double.isNaN(value)) {
            return List.of();
        }
        Map<String, Object> column = new LinkedHashMap<>();
        column.put("key", name);
        column.put("label", name);
        column.put("unit", "");
        column.put("values", java.util.Collections.singletonList(Console.orNull(value)));
        return List.of(column);
    }

    private static String kind(Figure figure) {
        if (figure instanceof Chart || figure instanceof MapFigure) {
            return "chart";
        }
        return figure instanceof Table ? "table" : figure instanceof Drawing ? "drawing" : "";
    }
}
