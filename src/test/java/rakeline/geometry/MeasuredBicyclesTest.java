package rakeline.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static rakeline.geometry.Bikes.value;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The side view against bicycles that were measured. Source: Moore 2012, "Human Control of a Bicycle", PhD thesis, UC
 * Davis, chapter Physical Parameters. Trail is published to 1 mm.
 */
class MeasuredBicyclesTest {
    private static final double HEAD_ANGLE_DEG = 90 - Math.toDegrees(0.3174799451);

    @ParameterizedTest(name = "specimen {0}")
    @CsvSource({
        "A, 67.1, 70.5, 28.06, 13, 69",
        "B, 73.1, 45, 27.772, 13, 56",
        "C, 69.0, 45, 27.98, 13, 83",
        "D, 71.1, 38, 29.04, 14, 72",
        "E with its fork reversed, 70.6, -57, 27.93, 13, 180"
    })
    void aMeasuredBicycleHasThePublishedTrail(
            String name, double head, double offset, double rolledM, int turns, double publishedMm) {
        Bike bike = Bikes.front(head, 1000 * rolledM / (2 * Math.PI * turns), offset);
        assertThat(value(bike, Measures.TRAIL)).as(name).isCloseTo(publishedMm, within(1.0));
    }

    @Test
    void theBicycleOnTheGraniteTableHasThePublishedWheelbase() {
        // published 1.0638 ± 0.0002 m
        assertThat(value(onTheTable(), Measures.WHEELBASE)).isCloseTo(1063.8, within(0.2));
    }

    @Test
    void theBicycleOnTheGraniteTableHasTheComputedWheelbase() {
        assertThat(value(onTheTable(), Measures.WHEELBASE)).isCloseTo(1063.7771708, within(1e-4));
    }

    @Test
    void theBicycleOnTheGraniteTableHasThePublishedTrail() {
        // published 0.0599 ± 0.0001 m
        assertThat(value(onTheTable(), Measures.TRAIL)).isCloseTo(59.9, within(0.1));
    }

    @Test
    void theBicycleOnTheGraniteTableHasTheComputedTrail() {
        assertThat(value(onTheTable(), Measures.TRAIL)).isCloseTo(59.9422172, within(1e-5));
    }

    @Test
    void itsAxlesAreAsFarApartAsTheDistancesAcrossAndAlongTheAxisSay() {
        double wheelbase = value(onTheTable(), Measures.WHEELBASE);
        double axleToAxle = Math.hypot(wheelbase, 335.5718313 - 332.5287888);
        assertThat(axleToAxle).isCloseTo(Math.hypot(963.755 + 47.810, 329.1920108), within(1e-4));
    }

    /** Unequal wheels; the frame is laid so that the rear axle is 963.755 mm behind the steering axis. */
    private static Bike onTheTable() {
        double alpha = Math.toRadians(HEAD_ANGLE_DEG);
        double stack = 500;
        double chainstay = 450;
        double reach = (963.755 - stack * Math.cos(alpha)) / Math.sin(alpha) - chainstay;
        return Bikes.redrawn(
                Bikes.plain(),
                Map.of(
                        "frame.stackMm",
                        stack,
                        "frame.reachMm",
                        reach,
                        "frame.chainstayMm",
                        chainstay,
                        "frame.bbDropMm",
                        0.0,
                        "frame.headAngleDeg",
                        HEAD_ANGLE_DEG,
                        "fork.offsetMm",
                        47.810,
                        "wheels.front.radiusMm",
                        335.5718313,
                        "wheels.rear.radiusMm",
                        332.5287888));
    }
}
