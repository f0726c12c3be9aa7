package rakeline.command;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import rakeline.figure.Basis;
import rakeline.figure.Column;
import rakeline.quantity.Quantity;
import rakeline.study.Hold;
import rakeline.study.Target;

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

    /** The bicycles of a figure as they stand, who rides each, and whose shoe it has. */
    static List<Map<String, Object>> about(Basis basis) {
        return basis.subjects().stream().map(FigureJson::subject).toList();
    }

    private static Map<String, Object> subject(Basis.Subject subject) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("bike", subject.name());
        json.put("madeFrom", subject.start());
        json.put("rider", subject.rider());
        json.put("hands", subject.hands());
        json.put("shoe", subject.shoe());
        Map<String, Object> changed = new LinkedHashMap<>();
        subject.changed().forEach((key, value) -> changed.put(key, Console.orNull(value)));
        json.put("changed", changed);
        return json;
    }

    /** What is held. */
    static Map<String, Object> hold(Hold hold) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("key", hold.measure().key());
        json.put("value", hold.target());
        json.put("by", hold.by().key());
        return json;
    }

    /** A target, or a floor. */
    static Map<String, Object> target(Target target) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("key", target.key());
        json.put("value", target.value());
        return json;
    }

    /** What a quantity is called; more may be added. */
    static Map<String, Object> quantity(Quantity quantity) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("key", quantity.key());
        json.put("label", quantity.label());
        json.put("unit", quantity.unit().symbol());
        return json;
    }

    private static List<?> values(Column column) {
        return column.isNumeric()
                ? column.values().stream().mapToObj(Console::orNull).toList()
                : IntStream.range(0, column.size()).mapToObj(column::field).toList();
    }
}
