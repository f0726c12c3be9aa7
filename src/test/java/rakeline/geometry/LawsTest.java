package rakeline.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rakeline.quantity.Declared;
import rakeline.quantity.Input;
import rakeline.quantity.Measure;
import rakeline.quantity.Unit;

/** What must hold of every bike, on seeded ones. */
class LawsTest {
    private static final double FACTOR = 1.12;

    static LongStream seeds() {
        return RandomBikes.seeds(12);
    }

    static LongStream manySeeds() {
        return RandomBikes.seeds(60);
    }

    @ParameterizedTest
    @MethodSource("manySeeds")
    void allLengthsTimesAFactorScaleTheSideViewAndLeaveItsAngles(long seed) {
        Bike bike = RandomBikes.seeded(seed);
        measuresOf(Measures.class).forEach(measure -> assertScaled(bike, measure, 1e-6));
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void allLengthsTimesAFactorScaleToeClearanceAndLeaveItsAngles(long seed) {
        Bike bike = RandomBikes.seeded(seed);
        measuresOf(ToeMeasures.class).forEach(measure -> assertScaled(bike, measure, 0.02));
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void toeRoomGrowsAsMuchAsTheFrontCentre(long seed) {
        Bike bike = RandomBikes.seeded(seed);
        Bike longer = bike.with(Inputs.REACH, bike.get(Inputs.REACH) + 13);
        double gained = Bikes.value(longer, ToeMeasures.TOE_ROOM) - Bikes.value(bike, ToeMeasures.TOE_ROOM);
        assertThat(gained).isCloseTo(13, within(0.01));
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void leaningDoesNotChangeTheRoomForToes(long seed) {
        Bike bike = RandomBikes.seeded(seed);
        assertThat(Bikes.value(bike.with(Inputs.RIDE_LEAN, 30), ToeMeasures.TOE_ROOM))
                .isEqualTo(Bikes.value(bike.with(Inputs.RIDE_LEAN, 0), ToeMeasures.TOE_ROOM));
    }

    private static void assertScaled(Bike bike, Measure<Geometry> measure, double tolerance) {
        double small = Bikes.value(bike, measure);
        double large = Bikes.value(scaled(bike), measure);
        if (Double.isNaN(small)) {
            assertThat(large).as(measure.key()).isNaN();
        } else {
            assertThat(large).as(measure.key()).isCloseTo(small * factorOf(measure), within(tolerance));
        }
    }

    /** Lengths grow with the factor, a speed on a given lean with its root, angles and shares not at all. */
    private static double factorOf(Measure<Geometry> measure) {
        return switch (measure.quantity().unit()) {
            case MILLIMETRE, METRE, MILLIMETRE_PER_DEGREE -> FACTOR;
            case PER_SQUARE_METRE -> 1 / (FACTOR * FACTOR);
            case KILOMETRE_PER_HOUR -> Math.sqrt(FACTOR);
            case DEGREE, PERCENT, KILOGRAM -> 1;
        };
    }

    private static Bike scaled(Bike bike) {
        Map<Input, Double> longer = new HashMap<>();
        Inputs.all().stream()
                .filter(input -> input.quantity().unit() == Unit.MILLIMETRE && bike.has(input))
                .forEach(input -> longer.put(input, bike.get(input) * FACTOR));
        return bike.redraw(longer);
    }

    @SuppressWarnings({"unchecked", "rawtypes"}) // the classes of declarations hold measures of Geometry alone
    private static List<Measure<Geometry>> measuresOf(Class<?> holder) {
        List<Measure<Geometry>> measures = new ArrayList<>();
        Declared.listIn(holder, Measure.class).forEach(measures::add);
        return measures;
    }
}
