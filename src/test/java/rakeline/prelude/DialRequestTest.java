package rakeline.prelude;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rakeline.catalogue.BikeFile;
import rakeline.catalogue.Roots;
import rakeline.geometry.Bike;
import rakeline.geometry.Inputs;
import rakeline.geometry.Setting;
import rakeline.quantity.Refusal;

/** What a dial is asked for with; values are put together by hand. */
class DialRequestTest {
    private static final Bike ROAD = read("demo-data/bikes/road-m.bike.json");

    private static Bike read(String path) {
        return BikeFile.read(Roots.bundled().read(path, BikeFile.SIZE_LIMIT), path);
    }

    private static DialRequest head(double own, double min, double max) {
        Bike bike = ROAD.with(Inputs.HEAD_ANGLE, own);
        return DialRequest.bound(Setting.of(Inputs.HEAD_ANGLE), bike, min, max);
    }

    /** Whole steps of 0.1, as the head angle has, away from the end that is written. */
    @ParameterizedTest
    @CsvSource({
        "71, 69, 74, 69, 74",
        "69, 69, 74, 69, 74",
        "66.5, 69, 74, 66.5, 74",
        "66.47, 69, 74, 66.4, 74",
        "77.31, 69, 74, 69, 77.4",
    })
    void theRangeHoldsTheBikesOwnValue(double own, double min, double max, double from, double to) {
        DialRequest dial = head(own, min, max);
        assertThat(dial).extracting(DialRequest::min, DialRequest::max).containsExactly(from, to);
        assertThat(dial).extracting(DialRequest::initial, DialRequest::own).containsExactly(own, own);
    }

    @Test
    void aRangeIsNotWidenedBeyondWhatIsAccepted() {
        assertThat(head(50.03, 69, 74).min()).isEqualTo(50);
        assertThat(head(50.03, 69.15, 74.15).min()).isEqualTo(50.03);
    }

    @Test
    void aRangeThatHoldsTheValueSaysNothing() {
        assertThat(head(71, 69, 74).notices()).isEmpty();
    }

    @Test
    void aWidenedRangeSaysSo() {
        assertThat(head(77.31, 69, 74).notices())
                .containsExactly("The dial \"Head angle\", written for 69 to 74°, goes up to Road M's own 77.31°.");
    }

    @Test
    void aDialOfBothWheelsSaysWhereTheyDiffer() {
        Bike bike = ROAD.redraw(Setting.changes(Map.of("wheels.front.tyreMm", 28.0, "wheels.rear.tyreMm", 32.0)));
        assertThat(DialRequest.bound(Setting.of("wheels.both.tyreMm"), bike, 23, 40)
                        .notices())
                .containsExactly("The dial \"Both wheels, tyre\" starts at Road M's front wheel, 28 mm; its rear"
                        + " wheel has 32 mm.");
    }

    @Test
    void aRangeThatRunsDownwardIsRefused() {
        assertThatThrownBy(() -> head(71, 74, 69))
                .isInstanceOf(Refusal.class)
                .hasMessage("the dial \"Head angle\" runs from 74 to 69; its range must run upward.");
        assertThatThrownBy(() -> DialRequest.free("x", "mm", Double.NaN, 1, 1, 0))
                .isInstanceOf(Refusal.class);
        assertThatThrownBy(() -> DialRequest.free("x", "mm", 0, 1, Double.NaN, 0))
                .isInstanceOf(Refusal.class);
    }
}
