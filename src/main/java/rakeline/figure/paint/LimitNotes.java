package rakeline.figure.paint;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rakeline.figure.Chart;
import rakeline.quantity.Decimals;
import rakeline.quantity.Limit;
import rakeline.quantity.Quantity;

/**
 * The limits of a chart in words, beneath it: a sentence for each source, and what several measures share said once, so
 * that they leave the curves their room.
 */
final class LimitNotes {
    /** A limit and what it limits. */
    record Limited(Quantity quantity, Limit limit) {
        private String words() {
            return quantity.unit().attach(Decimals.shown(limit.value())) + ", " + limit.label();
        }
    }

    private LimitNotes() {}

    static Stream<String> of(Chart chart, double width) {
        Map<String, Map<String, List<String>>> labels = new LinkedHashMap<>();
        Stream.concat(UprightLimits.all(chart), LimitLines.unnamed(chart, width))
                .forEach(limited -> labels.computeIfAbsent(limited.limit().source(), source -> new LinkedHashMap<>())
                        .computeIfAbsent(limited.words(), words -> new ArrayList<>())
                        .add(limited.quantity().label()));
        return labels.entrySet().stream().map(entry -> sentence(entry.getKey(), entry.getValue()));
    }

    private static String sentence(String source, Map<String, List<String>> labels) {
        String limits = labels.entrySet().stream()
                .map(entry -> String.join(", ", entry.getValue()) + " " + entry.getKey())
                .collect(Collectors.joining("; "));
        return limits + (source.isBlank() ? "." : ": " + source + ".");
    }
}
