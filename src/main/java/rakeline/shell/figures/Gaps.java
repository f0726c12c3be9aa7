package rakeline.shell.figures;

import java.util.stream.Collectors;
import rakeline.figure.Chart;

/** Why measures have no value at a step of a chart. */
final class Gaps {
    private Gaps() {}

    /** One line for each measure without a value there; empty where all have one. */
    static String at(Chart chart, int step) {
        return chart.gaps().stream()
                .filter(gap -> gap.step() == step)
                .map(gap -> label(chart, gap.key()) + ": " + gap.reason())
                .distinct()
                .collect(Collectors.joining("; "));
    }

    private static String label(Chart chart, String key) {
        return chart.panels().stream()
                .map(Chart.Panel::quantity)
                .filter(quantity -> quantity.key().equals(key))
                .findFirst()
                .map(quantity -> quantity.label())
                .orElse(key);
    }
}
