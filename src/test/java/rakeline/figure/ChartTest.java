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

    @Test
    void aBandIsAColumnBesideItsMeasure() {
        Chart.Band band = new Chart.Band(rakeline.quantity.Numbers.of(1, Double.NaN), "Band");
        rakeline.quantity.Numbers two = rakeline.quantity.Numbers.of(60, 61);
        Chart chart = new Chart(
                "",
                Samples.OFFSET,
                two,
                60,
                java.util.List.of(new Chart.Panel(Samples.TRAIL, two, 60, java.util.Optional.of(band))),
                java.util.List.of(),
                "",
                java.util.List.of());
        assertThat(chart.columns())
                .extracting(Column::key)
                .containsExactly(
                        Samples.OFFSET.key(), Samples.TRAIL.key(), "standardUncertainty." + Samples.TRAIL.key());
        assertThat(chart.bands()).containsExactly("Band");
    }
}
