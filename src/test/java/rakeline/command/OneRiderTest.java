package rakeline.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rakeline.catalogue.BikeFile;
import rakeline.catalogue.PartsFile;
import rakeline.catalogue.RiderFile;
import rakeline.figure.Chart;
import rakeline.figure.Column;
import rakeline.figure.Drawing;
import rakeline.figure.Table;
import rakeline.geometry.Bike;
import rakeline.geometry.BikeOrRide;
import rakeline.geometry.ToeMeasures;
import rakeline.geometry.parts.Stock;
import rakeline.handling.Ride;
import rakeline.prelude.Fitting;
import rakeline.prelude.Prelude;
import rakeline.prelude.Riders;
import rakeline.quantity.Quantity;
import rakeline.rider.Rider;
import rakeline.study.Vocabulary;

/** Toe room, of a bicycle after its dials under a rider with a shoe, is one number wherever it is said. */
@Tag("slow")
class OneRiderTest {
    private static final Quantity ROOM = Vocabulary.standard().quantity("toeRoomMm");
    private static final List<String> SHOE = List.of(
            "shoe.toeForwardMm", "shoe.toeHeightMm", "shoe.toeRadiusMm", "shoe.toeHalfWidthMm", "shoe.toeOutDeg");
    private static final List<String> BIKES = List.of("road-xs", "road-m", "endurance-s", "gravel-584-xs", "track-l");

    private static final Stock STEM = PartsFile.read(
            "{\"format\": \"rakeline/parts\", \"version\": 1, \"name\": \"One\", \"stems\": [{\"lengthMm\": 100, \"angleDeg\": -6}]}"
                    .getBytes(StandardCharsets.UTF_8),
            "one.parts.json");

    @TempDir
    private Path folder;

    static LongStream seeds() {
        return LongStream.range(0, 12);
    }

    /** A random rider on a demo bicycle, two of whose numbers were dialled. */
    private record Case(Path bikeFile, Path riderFile, double tyre, double crank) {
        static Case of(Path folder, long seed) throws Exception {
            Random random = new Random(seed * 7919 + 3);
            Path bike = Path.of("demo-data", "bikes", BIKES.get(random.nextInt(BIKES.size())) + ".bike.json");
            Path rider = Files.writeString(folder.resolve("someone.rider.json"), rider(random));
            return new Case(bike, rider, 23 + random.nextInt(20), 160 + random.nextInt(16));
        }

        private static String rider(Random random) {
            return String.format(
                    Locale.ROOT,
                    "{\"format\": \"rakeline/rider\", \"version\": 1, \"name\": \"Someone\", \"statureMm\": 1700,"
                            + " \"inseamMm\": 800, \"massKg\": 65, \"segments\": {\"table\": \"dempster\"},"
                            + " \"shoe\": {\"toeForwardMm\": %d, \"toeHeightMm\": %d, \"toeRadiusMm\": %d,"
                            + " \"toeHalfWidthMm\": %d, \"toeOutDeg\": %d}}",
                    80 + random.nextInt(40),
                    20 + random.nextInt(15),
                    20 + random.nextInt(8),
                    15 + random.nextInt(8),
                    random.nextInt(8));
        }

        Bike bike() throws Exception {
            return BikeFile.read(Files.readAllBytes(bikeFile), bikeFile.toString());
        }

        Rider rider() throws Exception {
            return RiderFile.read(Files.readAllBytes(riderFile), riderFile.toString());
        }

        Ride ride() throws Exception {
            return Prelude.refit(Riders.ride(bike(), rider()), "wheels.both.tyreMm", tyre)
                    .with("crank.lengthMm", crank)
                    .named("As the dials stand");
        }
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void everyWordOfARowSaysTheSameNumber(long seed) throws Exception {
        Ride it = Case.of(folder, seed).ride();
        String room = ROOM.format(Prelude.measure(it, ROOM.key()));
        assertThat(said(it, it.on(it.bike().named("Again")))).containsOnly(room);
    }

    private static List<String> said(Ride it, Ride again) {
        Chart overCrank = Prelude.sweep(it)
                .over("crank.lengthMm", 150, 190, 1)
                .track(ROOM.key())
                .chart();
        Chart overTyre = Prelude.sweep(it)
                .over("wheels.both.tyreMm", 20, 45, 1)
                .track(ROOM.key())
                .chart();
        Drawing foot = Prelude.drawFoot(it);
        return Stream.of(
                        Stream.of(here(overCrank), onCurve(overCrank), here(overTyre), onCurve(overTyre)),
                        Stream.of(
                                cell(Prelude.measures(it), 1),
                                cell(Prelude.measures(List.of(ToeMeasures.TOE_ROOM), it, again), 2)),
                        Stream.of(cell(Fitting.compare(it, again), 1), cell(Fitting.compare(it, again), 2)),
                        Stream.of(cell(Fitting.limitsOf(it, again), 2)),
                        Stream.of(column(foot), dimension(foot)))
                .flatMap(each -> each)
                .toList();
    }

    private static String here(Chart chart) {
        return ROOM.format(chart.panels().get(0).here());
    }

    /** Where the upright line cuts the curve. */
    private static String onCurve(Chart chart) {
        for (int i = 0; i < chart.steps().size(); i++) {
            if (chart.steps().at(i) == chart.here()) {
                return ROOM.format(chart.panels().get(0).values().at(i));
            }
        }
        return "no step at " + chart.here();
    }

    private static String cell(Table table, int column) {
        int row = table.columns().get(0).shown().indexOf(ROOM.label());
        return table.columns().get(column).shown().get(row);
    }

    private static String column(Drawing foot) {
        return foot.columns().stream()
                .filter(column -> column.key().equals(ROOM.key()))
                .map(Column::shown)
                .findFirst()
                .orElseThrow()
                .get(0);
    }

    private static String dimension(Drawing foot) {
        return foot.marks().stream()
                .filter(mark ->
                        mark instanceof Drawing.Dimension room && room.key().equals(ROOM.key()))
                .map(mark -> ((Drawing.Dimension) mark)
                        .text()
                        .replace("toe room ", "")
                        .replace(" mm", ""))
                .findFirst()
                .orElseThrow();
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void theMeasureCommandSaysTheNumberOfTheRow(long seed) throws Exception {
        Case asked = Case.of(folder, seed);
        Ride it = Riders.ride(asked.bike().with("crank.lengthMm", asked.crank()), asked.rider());
        double told = CommandLineRun.of(
                        "measure",
                        asked.bikeFile().toString(),
                        "--rider",
                        asked.riderFile().toString(),
                        "--set",
                        "crank.lengthMm=" + asked.crank(),
                        "--json")
                .isDone()
                .json()
                .get("measures")
                .get(ROOM.key())
                .asDouble();
        assertThat(told).isEqualTo(Prelude.measure(it, ROOM.key()));
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void theRidersShoeWinsInAMatchAndInWhatIsBuiltByIt(long seed) throws Exception {
        Case asked = Case.of(folder, seed);
        Ride built = Fitting.match(asked.bike())
                .to(asked.rider(), asked.bike())
                .with(STEM)
                .ride();
        Map<String, Double> shoe = new HashMap<>();
        SHOE.forEach(key -> shoe.put(key, asked(built, key)));
        Ride worn = Riders.ride(asked.bike(), asked.rider());
        assertThat(shoe).allSatisfy((key, value) -> assertThat(value).isEqualTo(asked(worn, key)));
        assertThat(Prelude.measure(built, ROOM.key())).isEqualTo(Prelude.measure(worn, ROOM.key()));
    }

    private static double asked(BikeOrRide ride, String key) {
        return ride.bike().get(key);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void everyFigureSaysWhoseShoeItIs(long seed) throws Exception {
        Case asked = Case.of(folder, seed);
        Ride it = asked.ride();
        assertThat(Prelude.measures(it).basis().words()).isEqualTo("With the shoe of Someone.");
        assertThat(Prelude.drawFoot(it).basis().words()).isEqualTo("With the shoe of Someone.");
        assertThat(Prelude.drawFoot(it.bike()).basis().words()).isEqualTo("With the shoe of Someone.");
        assertThat(Prelude.drawFoot(asked.bike()).basis().words()).isEqualTo("With the bicycle's own shoe.");
        assertThat(Prelude.measures(asked.bike(), it).basis().words())
                .isEqualTo(asked.bike().name() + " with its own shoe; As the dials stand with the shoe of Someone.");
        assertThat(Prelude.drawFoot(it.with("shoe.toeForwardMm", 101.5)).basis().words())
                .matches("With the shoe of Someone but .*101\\.5 mm\\.");
        assertThat(Prelude.draw(it).basis().words()).isEmpty();
        assertThat(text(asked)).contains("With the shoe of Someone.");
    }

    private static String text(Case asked) {
        return CommandLineRun.of(
                        "measure",
                        asked.bikeFile().toString(),
                        "--rider",
                        asked.riderFile().toString())
                .isDone()
                .data();
    }
}
