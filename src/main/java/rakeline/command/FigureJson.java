package rakeline.command;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rakeline.figure.Column;

/** Figures' columns as plain values for JSON. */
final class FigureJson {
    private FigureJson() {}

    static Map<String, Object> column(Column column) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("key", column.key());
        json.put("label", column.label());
        json.put("unit", column.unit());
        json.put("values", values(column));
        return json;
    }

    private static List<?> values(Column column) {
        return column.isNumeric()
                ? column.values().stream().mapToObj(Console::orNull).toList()
                : column.shown();
    }
}
