package rakeline.figure;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import rakeline.catalogue.BikeFile;
import rakeline.catalogue.chart.ChartFile;
import rakeline.catalogue.chart.ChartImport;
import rakeline.geometry.Bike;
import rakeline.geometry.Bikes;
import rakeline.geometry.ExtremeBikes;
import rakeline.geometry.Provenance;
import rakeline.quantity.Entries;

/** Bikes as CSV under a header of keys: what reads it gets equal bikes. */
class BikesTableTest {
    @Test
    void theDemoBikesComeBack() throws IOException {
        List<Bike> bikes = demoBikes();
        assertThat(again(bikes)).isEqualTo(bikes);
    }

    @Test
    void bikesOfDifferentGroupsComeBack() {
        List<Bike> bikes = List.of(
                Bikes.plain().named("Plain"),
                Bikes.whole().named("Whole"),
                Bikes.withFoot().named("Größe İ, \"52\""));
        assertThat(again(bikes)).isEqualTo(bikes);
    }

    @Test
    void aGroupOfDefaultsAloneComesBack() {
        Entries given = Bikes.plain().given();
        List<Bike> bikes =
                List.of(Bike.of("Still", given, Set.of("ride"), Map.of()), Bike.of("Not", given, Set.of(), Map.of()));
        assertThat(again(bikes)).isEqualTo(bikes);
    }

    @Test
    void provenanceComesBack() {
        Map<String, Provenance> provenance = Map.of(
                "frame.stackMm", Provenance.of(Provenance.Origin.SOLVED),
                "fork.offsetMm", new Provenance(Optional.of(Provenance.Origin.MEASURED), 0.1),
                "frame.reachMm", new Provenance(Optional.empty(), 1e-7));
        List<Bike> bikes = List.of(Bike.of("Known", Bikes.plain().given(), Set.of(), provenance));
        assertThat(again(bikes)).isEqualTo(bikes);
    }

    /** Doubles of any length inside the accepted ranges. */
    @Test
    void anyNumberComesBack() {
        Random random = new Random(9);
        List<Bike> bikes = new ArrayList<>();
        for (int i = 0; i < 50; i++) {
            bikes.add(ExtremeBikes.anywhere(random).named("Any " + i));
        }
        assertThat(again(bikes)).isEqualTo(bikes);
    }

    @Test
    void sideBySideABikeIsAColumn() {
        Table table = BikesTable.sideBySide(
                List.of(Bikes.plain().named("One"), Bikes.withFoot().named("Two")));
        assertThat(table.columns()).extracting(Column::label).containsExactly("Number", "One", "Two", "Unit");
        int crank = table.columns().get(0).shown().indexOf("crank.lengthMm");
        assertThat(table.columns().get(1).shown().get(crank)).isEqualTo("–");
        assertThat(table.columns().get(2).shown().get(crank)).isEqualTo("165");
    }

    private static List<Bike> again(List<Bike> bikes) {
        byte[] csv = Csv.write(BikesTable.records(bikes)).getBytes(StandardCharsets.UTF_8);
        ChartImport read = ChartFile.read(csv, "bikes.csv", new ChartImport.Wanted("bikes", "", Map.of()));
        assertThat(read.doubts()).isEmpty();
        return read.bikes();
    }

    private static List<Bike> demoBikes() throws IOException {
        List<Bike> bikes = new ArrayList<>();
        try (Stream<Path> files = Files.list(Path.of("demo-data", "bikes"))) {
            for (Path file : files.sorted().toList()) {
                bikes.add(BikeFile.read(Files.readAllBytes(file), file.toString()));
            }
        }
        return bikes;
    }
}
