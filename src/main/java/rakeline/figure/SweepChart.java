package rakeline.figure;

import rakeline.study.Sweep;
import rakeline.study.Swept;

/** A sweep as a chart: one panel for each tracked measure. */
public final class SweepChart {
    private SweepChart() {}

    public static Chart of(Swept swept) {
        Sweep sweep = swept.sweep();
        return new Chart(
                swept.title(),
                sweep.vary().quantity(),
                sweep.steps(),
                sweep.here(),
                swept.columns().stream()
                        .map(column -> new Chart.Panel(column.quantity(), column.values(), column.here()))
                        .toList(),
                swept.gaps().stream()
                        .map(gap -> new Chart.Gap(gap.step(), gap.key(), gap.reason()))
                        .toList(),
                swept.held(),
                swept.cautions());
    }
}
