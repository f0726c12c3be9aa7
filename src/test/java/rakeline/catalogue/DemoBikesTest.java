package rakeline.catalogue;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rakeline.geometry.Bike;
import rakeline.geometry.Bikes;
import rakeline.geometry.Geometry;
import rakeline.geometry.Inputs;
import rakeline.geometry.Measures;
import rakeline.geometry.ToeMeasures;
import rakeline.quantity.Input;
import rakeline.quantity.Measure;
import rakeline.quantity.Reading;

/** The invented bikes that come with the program are consistent. */
class DemoBikesTest {
    private static final Path FOLDER = Path.of("demo-data", "bikes");
    private static final Map<Input, Measure<Geometry>> CHARTED = Map.of(
            Inputs.CHARTED_WHEELBASE, Measures.WHEELBASE,
            Inputs.CHARTED_FRONT_CENTRE, Measures.FRONT_CENTRE,
            Inputs.CHARTED_TRAIL, Measures.TRAIL,
            Inputs.CHARTED_EFFECTIVE_TOP_TUBE, Measures.EFFECTIVE_TOP_TUBE,
            Inputs.CHARTED_BB_HEIGHT, Measures.BB_HEIGHT,
            Inputs.CHARTED_STANDOVER, Measures.STANDOVER);

    static List<String> files() throws IOException {
        try (Stream<Path> files = Files.list(FOLDER)) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }

    @Test
    void theSizesRunFromXxsToXl() throws IOException {
        assertThat(files())
                .contains(
                        "road-xxs.bike.json",
                        "road-xs.bike.json",
                        "road-s.bike.json",
                        "road-m.bike.json",
                        "road-l.bike.json",
                        "road-xl.bike.json");
    }

    @ParameterizedTest
    @MethodSource("files")
    void theNameIsThatOfTheFile(String file) {
        String asFile = bike(file).name().toLowerCase(Locale.ROOT).replace(' ', '-');
        assertThat(file).isEqualTo(asFile + ".bike.json");
    }

    @ParameterizedTest
    @MethodSource("files")
    void whatIsChartedIsWhatFollowsRoundedToItsStep(String file) {
        Bike bike = bike(file);
        CHARTED.forEach((charted, measure) -> {
            if (bike.has(charted)) {
                assertThat(Bikes.value(bike, measure))
                        .as(charted.key())
                        .isCloseTo(bike.get(charted), within(bike.get(Inputs.CHARTED_STEP_MM) / 2));
            }
        });
    }

    @ParameterizedTest
    @MethodSource("files")
    void wheelbaseAndTrailAreCharted(String file) {
        assertThat(bike(file).has(Inputs.CHARTED_WHEELBASE)).isTrue();
        assertThat(bike(file).has(Inputs.CHARTED_TRAIL)).isTrue();
    }

    @ParameterizedTest
    @MethodSource("files")
    void theForkIsAsLongAsTheSideViewImplies(String file) {
        Bike bike = bike(file);
        assertThat(Bikes.value(bike, Measures.AXLE_TO_CROWN_IMPLIED))
                .isCloseTo(bike.get(Inputs.AXLE_TO_CROWN), within(0.01));
    }

    @Test
    void aFamilyHasOneForkLength() throws IOException {
        Map<String, TreeSet<Double>> lengths = new TreeMap<>();
        for (String file : files()) {
            lengths.computeIfAbsent(family(file), any -> new TreeSet<>())
                    .add(bike(file).get(Inputs.AXLE_TO_CROWN));
        }
        assertThat(lengths)
                .allSatisfy((family, different) -> assertThat(different).hasSize(1));
    }

    @ParameterizedTest
    @MethodSource("files")
    void everyMeasureHasWhatItNeeds(String file) {
        Geometry geometry = Geometry.of(bike(file));
        assertThat(ToeMeasures.TOE_ROOM.read(geometry)).isInstanceOf(Reading.Known.class);
        assertThat(Measures.POST_DEPTH_LEFT.read(geometry)).isInstanceOf(Reading.Known.class);
        assertThat(Measures.HAND_LEVER.read(geometry)).isInstanceOf(Reading.Known.class);
        assertThat(Measures.STEERER_LEFT.read(geometry)).isInstanceOf(Reading.Known.class);
    }

    @ParameterizedTest
    @MethodSource("files")
    void postRailsAndSteererReachWhatIsWanted(String file) {
        Bike bike = bike(file);
        assertThat(Bikes.value(bike, Measures.POST_INSERTION_LEFT)).isNotNegative();
        assertThat(Bikes.value(bike, Measures.RAIL_LEFT)).isNotNegative();
        assertThat(Bikes.value(bike, Measures.STEERER_LEFT)).isNotNegative();
        assertThat(Bikes.value(bike, Measures.SPACERS_LEFT)).isNotNegative();
    }

    @ParameterizedTest
    @MethodSource("files")
    void theFileIsBundledUnderTheSameName(String file) {
        byte[] bytes = Roots.bundled().read("demo-data/bikes/" + file, BikeFile.SIZE_LIMIT);
        assertThat(BikeFile.read(bytes, file)).isEqualTo(bike(file));
    }

    private static String family(String file) {
        return file.substring(0, file.lastIndexOf('-'));
    }

    private static Bike bike(String file) {
        return BikeFile.read(Bytes.read(FOLDER.resolve(file), BikeFile.SIZE_LIMIT), file);
    }
}
