package rakeline.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How far a sit point stays off the one wanted, and where a fork has its mass, by hand. */
class ContactMissTest {
    /**
     * On an upright seat tube of 480 mm that takes a post 330 mm deep, a post of 350 mm with 80 mm to stay inside extends
     * 20..270 mm; setback 15, rails 25 ahead of the sit point and 48 below it: the sit point reaches (−40 ± 20, 548..798).
     */
    @ParameterizedTest
    @CsvSource({
        "-40, 600, 0",
        "-40, 548, 0",
        "-40, 538, 10",
        "-40, 798, 0",
        "-40, 818, 20",
        "-20, 600, 0",
        "-15, 600, 5",
        "-65, 600, 5",
        "-64, 801, 5",
        "-16, 545, 5",
    })
    void theSitPointMissesByWhatPostAndRailsLack(double sitX, double sitY, double miss) {
        assertThat(miss(Map.of("contact.sitXMm", sitX, "contact.sitYMm", sitY))).isCloseTo(miss, within(1e-9));
    }

    /** A post that would go all the way in stops at its clamp: 0..270 mm. */
    @ParameterizedTest
    @CsvSource({"528, 0", "521, 7", "798, 0", "801, 3"})
    void inADeepSeatTubeAPostStopsAtItsClamp(double sitY, double miss) {
        assertThat(miss(Map.of("frame.seatTubeDepthMm", 600.0, "contact.sitXMm", -40.0, "contact.sitYMm", sitY)))
                .isCloseTo(miss, within(1e-9));
    }

    /** Six tenths of the way from axle to bar (M). */
    @Test
    void aForkHasItsMassSixTenthsUpTheWayFromAxleToBar() {
        Bike bike = Bikes.whole();
        Geometry geometry = Geometry.of(bike);
        double alpha = Math.toRadians(70.5);
        double stem = alpha + Math.toRadians(6);
        double up = 8 + 15 + 20;
        double barX = 366 - up * Math.cos(alpha) + 90 * Math.sin(stem);
        double barY = 515 + up * Math.sin(alpha) + 90 * Math.cos(stem);
        double axleX = 366 + (515 - 74) / Math.tan(alpha) + 47 / Math.sin(alpha);
        Point fork = OwnMass.usualFork(geometry);
        assertThat(fork.x()).isCloseTo(axleX + 0.6 * (barX - axleX), within(1e-9));
        assertThat(fork.y()).isCloseTo(74 + 0.6 * (barY - 74), within(1e-9));
    }

    private static double miss(Map<String, Double> numbers) {
        Map<String, Double> upright = Map.of("frame.seatAngleDeg", 90.0, "frame.seatTubeAngleDeg", 90.0);
        return Bikes.value(Bikes.redrawn(Bikes.redrawn(Bikes.whole(), upright), numbers), ContactMeasures.SIT_MISS);
    }
}
