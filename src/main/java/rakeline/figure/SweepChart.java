package rakeline.figure;

import java.util.List;
import java.util.Optional;
import rakeline.quantity.Measure;
import rakeline.study.Sweep;
import rakeline.study.Swept;

/** A sweep as a chart: one panel for each tracked measure. */
public final class SweepChart {
    private SweepChart() {}

    public static Chart of(Swept swept) {
        Sweep sweep = swept.sweep();
        Chart chart = new Chart(
                swept.title(),
                sweep.vary().quantity(),
                sweep.steps(),
                sweep.here(),
                swept.columns().stream()
                        .map(column ->
                                new Chart.Panel(column.quantity(), column.values(), column.here(), band(swept, column)))
                        .toList(),
                swept.gaps().stream()
                        .map(gap -> new Chart.Gap(gap.step(), gap.key(), gap.reason()))
                        .toList(),
                swept.held(),
                swept.cautions());
        return chart.about(
                Basis.of(List.of(sweep.start()), sweep.tracks().stream().map(Measure::key)));
    }

    private static Optional<Chart.Band> band(Swept swept, Swept.Column column) {
        return column.uncertainties().size() == 0
                ? Optional.empty()
                : Optional.of(new Chart.Band(column.uncertainties(), words(swept)));
    }

    private static String words(Swept swept) {
        return swept.uncertain().isEmpty()
                ? "Band: no uncertainty of an input is known that moves these."
                : "Band: ± one standard uncertainty of the inputs, to first order: " + swept.uncertain()
                        + ". No band where that would mislead.";
    }
}
