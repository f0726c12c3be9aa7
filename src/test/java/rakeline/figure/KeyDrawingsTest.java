package rakeline.figure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import rakeline.catalogue.ExampleBike;
import rakeline.figure.Drawing.Dimension;
import rakeline.figure.Drawing.Label;
import rakeline.handling.Ride;
import rakeline.study.Vocabulary;

/** Each small drawing against the measure that it explains, which knows nothing of drawings. */
class KeyDrawingsTest {
    private static final Ride RIDE = Ride.of(ExampleBike.read());
    private static final KeyDrawings DRAWINGS = KeyDrawings.of(RIDE);

    static Stream<String> drawn() {
        return Vocabulary.standard().quantities().stream()
                .map(quantity -> quantity.key())
                .filter(key -> DRAWINGS.find(key).isPresent());
    }

    private static List<Dimension> dimensions(String key) {
        return ((Drawing) DRAWINGS.find(key).orElseThrow())
                .marks().stream()
                        .filter(Dimension.class::isInstance)
                        .map(Dimension.class::cast)
                        .toList();
    }

    private static double value(String key) {
        return Math.abs(Vocabulary.standard().tracked(key).read(RIDE).orNaN());
    }

    @ParameterizedTest
    @MethodSource("drawn")
    void aLengthIsDrawnAsLongAsItIs(String key) {
        for (Dimension dimension : dimensions(key)) {
            double drawn = Math.hypot(
                    dimension.to().x() - dimension.from().x(),
                    dimension.to().y() - dimension.from().y());
            assertThat(drawn).isEqualTo(value(key), within(1e-6));
            assertThat(dimension.text())
                    .startsWith(Vocabulary.standard().quantity(key).format(value(key)));
        }
    }

    @ParameterizedTest
    @MethodSource("drawn")
    void aDrawingShowsItsOwnDimensionAlone(String key) {
        assertThat(dimensions(key))
                .hasSizeLessThanOrEqualTo(1)
                .allMatch(dimension -> dimension.key().equals(key));
    }

    @ParameterizedTest
    @ValueSource(strings = {"frame.headAngleDeg", "frame.seatAngleDeg", "frame.seatTubeAngleDeg", "toeContactSteerDeg"})
    void anAngleIsSaidWhereItIsDrawn(String key) {
        assertThat(((Drawing) DRAWINGS.find(key).orElseThrow()).marks())
                .filteredOn(Label.class::isInstance)
                .extracting(mark -> ((Label) mark).text())
                .anyMatch(text ->
                        text.endsWith(Vocabulary.standard().quantity(key).formatWithUnit(value(key))));
    }

    @Test
    void whatNoDimensionShowsHasNoDrawing() {
        assertThat(DRAWINGS.find("frontSharePercent")).isEmpty();
    }

    @Test
    void theOnesThatPeopleAskForAreThere() {
        assertThat(drawn())
                .hasSizeGreaterThan(35)
                .contains("trailMm", "fork.offsetMm", "frame.stackMm", "frame.reachMm", "toeRoomMm", "crank.lengthMm");
    }
}
