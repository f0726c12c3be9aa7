package rakeline.prelude;

import static org.assertj.core.api.Assertions.assertThat;
import static rakeline.prelude.Charts.reconcile;
import static rakeline.prelude.Charts.suspects;
import static rakeline.prelude.Prelude.measure;

import org.junit.jupiter.api.Test;
import rakeline.figure.Table;
import rakeline.geometry.Bike;
import rakeline.geometry.Bikes;

/** What a row may say about a chart. */
class ChartsTest {
    /** The wheelbase that follows is 975.29. */
    private static final Bike AGREES = Bikes.plain().with("charted.wheelbaseMm", 975);

    @Test
    void eachChartedNumberHasARow() {
        Table table = reconcile(AGREES);
        assertThat(table.rows()).isEqualTo(1);
        assertThat(table.columns().get(3).shown()).containsExactly("−0.29");
        assertThat(table.columns().get(5).shown()).containsExactly("yes");
    }

    @Test
    void aChartThatAgreesHasNoSuspects() {
        assertThat(suspects(AGREES).rows()).isZero();
    }

    @Test
    void suspectsSayWhatTheyWouldHaveToBe() {
        Table table = suspects(AGREES.with("charted.wheelbaseMm", 984));
        int chainstay = table.columns().get(0).shown().indexOf("Chainstay, mm");
        assertThat(table.columns().get(2).shown().get(chainstay)).isEqualTo("419");
    }

    @Test
    void aColumnThatSaysNothingOfAnySuspectIsLeftOut() {
        Bike chart = AGREES.with("charted.wheelbaseMm", 984)
                .with("charted.frontCentreMm", measure(AGREES, "frontCentreMm"))
                .with("charted.trailMm", measure(AGREES, "trailMm"));
        assertThat(suspects(chart).columns())
                .extracting(column -> column.label())
                .doesNotContain("Because");
    }

    @Test
    void suspectsSayFromWhichOthersTheyCannotBeTold() {
        Table table = suspects(AGREES.with("charted.wheelbaseMm", 984));
        int chainstay = table.columns().get(0).shown().indexOf("Chainstay, mm");
        assertThat(table.columns().get(3).shown().get(chainstay))
                .contains("; Wheelbase, charted; ")
                .doesNotContain("Chainstay");
    }
}
