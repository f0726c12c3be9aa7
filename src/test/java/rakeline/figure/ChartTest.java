package rakeline.figure;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** A chart as a table. */
class ChartTest {
    @Test
    void aLongChartIsThinnedEvenlyFromFirstToLast() {
        Chart chart = Samples.sweep();
        Table thinned = chart.table(11);
        assertThat(thinned.rows()).isLessThanOrEqualTo(11);
        assertThat(thinned.columns().get(0).values().at(0))
                .isEqualTo(chart.steps().at(0));
        assertThat(thinned.title())
                .endsWith(thinned.rows() + " of " + chart.steps().size() + " steps");
    }

    @Test
    void aShortChartKeepsEveryStep() {
        Chart chart = Samples.sweep();
        assertThat(chart.table(10_000)).isEqualTo(chart.table());
    }
}
