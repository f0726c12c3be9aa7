package rakeline.figure.paint;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import rakeline.figure.Chart;
import rakeline.figure.Chart.Gap;
import rakeline.figure.Chart.Panel;

/** The gaps of a chart in words: which measure has no value, from where to where, and why. */
final class GapNotes {
    private static final int MOST = 3;
    private static final int MOST_STRETCHES = 3;

    private GapNotes() {}

    /** A few sentences; the last says how many more there would be. */
    static List<String> of(Chart chart) {
        if (chart.steps().size() == 0) {
            return List.of("There are no steps to show.");
        }
        Map<String, List<String>> measuresByRest = new LinkedHashMap<>();
        stepsByGap(chart)
                .forEach((gap, steps) -> measuresByRest
                        .computeIfAbsent(rest(chart, steps, gap.reason()), rest -> new ArrayList<>())
                        .add(gap.key()));
        List<String> notes = new ArrayList<>();
        measuresByRest.forEach((rest, keys) -> notes.add("No value" + measures(chart, keys) + rest));
        return shortened(notes);
    }

    private record KeyAndReason(String key, String reason) {}

    private static Map<KeyAndReason, List<Integer>> stepsByGap(Chart chart) {
        return chart.gaps().stream()
                .filter(gap -> gap.step() >= 0 && gap.step() < chart.steps().size())
                .collect(Collectors.groupingBy(
                        gap -> new KeyAndReason(gap.key(), gap.reason()),
                        LinkedHashMap::new,
                        Collectors.mapping(Gap::step, Collectors.toList())));
    }

    private static List<String> shortened(List<String> notes) {
        if (notes.size() <= MOST) {
            return notes;
        }
        List<String> few = new ArrayList<>(notes.subList(0, MOST));
        few.add((notes.size() - MOST) + " more kinds of gap; a table of the figure shows them all.");
        return few;
    }

    /** Nothing where no measure of the chart has a value. */
    private static String measures(Chart chart, List<String> keys) {
        List<String> labels = keys.stream()
                .map(key -> label(chart, key))
                .flatMap(Optional::stream)
                .toList();
        boolean all = labels.isEmpty() || labels.size() == chart.panels().size();
        return all ? "" : " of " + String.join(", ", labels);
    }

    private static Optional<String> label(Chart chart, String key) {
        return chart.panels().stream()
                .map(Panel::quantity)
                .filter(quantity -> quantity.key().equals(key))
                .map(quantity -> quantity.label())
                .findFirst();
    }

    private static String rest(Chart chart, List<Integer> steps, String reason) {
        String sentence = reason.strip();
        String because = sentence.isEmpty() ? "." : ": " + sentence + (sentence.endsWith(".") ? "" : ".");
        return " " + where(chart, steps.stream().sorted().distinct().toList()) + because;
    }

    private static String where(Chart chart, List<Integer> steps) {
        List<String> stretches = new ArrayList<>();
        int start = 0;
        for (int i = 1; i <= steps.size(); i++) {
            if (i == steps.size() || steps.get(i) != steps.get(i - 1) + 1) {
                stretches.add(stretch(chart, steps.get(start), steps.get(i - 1)));
                start = i;
            }
        }
        return stretches.size() <= MOST_STRETCHES
                ? String.join(", ", stretches)
                : String.join(", ", stretches.subList(0, MOST_STRETCHES)) + " and elsewhere";
    }

    private static String stretch(Chart chart, int from, int to) {
        String start = chart.x().formatWithUnit(chart.steps().at(from));
        return from == to
                ? "at " + start
                : "from " + start + " to "
                        + chart.x().formatWithUnit(chart.steps().at(to));
    }
}
