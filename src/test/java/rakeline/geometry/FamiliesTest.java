package rakeline.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static rakeline.geometry.Bikes.value;

import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** A table of invented frames whose last five columns were computed by another implementation and printed to 0.1 mm. */
class FamiliesTest {
    private static final double PRINTED = 0.06;

    @ParameterizedTest(name = "{0} {1}")
    @CsvFileSource(resources = "families.csv", numLinesToSkip = 1)
    void aFrameHasTheTabulatedMeasures(
            String family,
            String size,
            double beadSeat,
            double tyre,
            double stack,
            double reach,
            double head,
            double seat,
            double headTube,
            double lowerStack,
            double drop,
            double chainstay,
            double offset,
            double crank,
            double axleToCrown,
            double frontCentre,
            double wheelbase,
            double trail,
            double topTube) {
        Map<String, Double> numbers = new HashMap<>(Map.of(
                "frame.stackMm", stack,
                "frame.reachMm", reach,
                "frame.headAngleDeg", head,
                "frame.seatAngleDeg", seat,
                "frame.headTubeMm", headTube,
                "frame.bbDropMm", drop,
                "frame.chainstayMm", chainstay,
                "fork.lowerStackMm", lowerStack,
                "fork.offsetMm", offset));
        numbers.putAll(Map.of("wheels.both.beadSeatMm", beadSeat, "wheels.both.tyreMm", tyre));
        Bike bike = Bikes.of(numbers);
        assertThat(value(bike, Measures.AXLE_TO_CROWN_IMPLIED)).isCloseTo(axleToCrown, within(PRINTED));
        assertThat(value(bike, Measures.FRONT_CENTRE)).isCloseTo(frontCentre, within(PRINTED));
        assertThat(value(bike, Measures.WHEELBASE)).isCloseTo(wheelbase, within(PRINTED));
        assertThat(value(bike, Measures.TRAIL)).isCloseTo(trail, within(PRINTED));
        assertThat(value(bike, Measures.EFFECTIVE_TOP_TUBE)).isCloseTo(topTube, within(PRINTED));
    }
}
