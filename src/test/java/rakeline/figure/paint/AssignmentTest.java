package rakeline.figure.paint;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class AssignmentTest {
    @Test
    void aNamedMeasureHasOneSeriesWhateverStandsBesideIt() {
        assertThat(Assignment.STANDARD.places(List.of("barXMm", "wheelbaseMm")).get(1))
                .isEqualTo(Assignment.STANDARD.place("wheelbaseMm"));
    }

    @Test
    void measuresShownTogetherNeverShareASeries() {
        List<String> keys = List.of("aMm", "bMm", "cMm", "dMm", "eMm", "qMm", "aMm");
        assertThat(Assignment.STANDARD.places(keys)).doesNotHaveDuplicates();
    }

    @Test
    void fourMeasuresShownTogetherHaveFourColours() {
        List<String> keys = List.of("aMm", "eMm", "iMm", "trailMm");
        assertThat(Assignment.STANDARD.places(keys).stream().map(place -> place % 4))
                .doesNotHaveDuplicates();
    }

    @Test
    void aNamedMeasureKeepsItsSeriesAfterOneThatWouldTakeIt() {
        assertThat(Assignment.STANDARD.places(List.of("p", "trailMm"))).last().isEqualTo(0);
    }

    @Test
    void aPageCanNameMoreMeasures() {
        assertThat(Assignment.STANDARD.and(List.of("barXMm", "trailMm")).place("barXMm"))
                .isEqualTo(4);
    }

    @Test
    void aMeasureThatIsNotNamedHasNoColourOutsideCharts() {
        assertThat(Assignment.STANDARD.names("barXMm")).isFalse();
    }
}
