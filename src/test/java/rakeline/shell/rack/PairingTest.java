package rakeline.shell.rack;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import rakeline.catalogue.PartsFile;
import rakeline.catalogue.Roots;
import rakeline.figure.BikeDrawing;
import rakeline.figure.Column;
import rakeline.figure.Table;
import rakeline.geometry.Bike;
import rakeline.geometry.parts.Stock;
import rakeline.quantity.Refusal;
import rakeline.study.Progress;
import rakeline.study.Vocabulary;
import rakeline.study.fit.Wanted;

class PairingTest {
    private static final String PARTS = "demo-data/parts/road.parts.json";

    private final Bike small = RackStock.bundled("demo-data/bikes/road-xs.bike.json");
    private final Bike large = RackStock.bundled("demo-data/bikes/road-s.bike.json");
    private final Stock parts = PartsFile.read(Roots.bundled().read(PARTS, PartsFile.SIZE_LIMIT), PARTS);

    private double difference(Optional<Stock> stock, String key) {
        Pairing pairing = new Pairing(
                List.of(large, small),
                RackSeat.EMPTY,
                Optional.of(Wanted.of(large)),
                stock,
                List.of(),
                LengthUnit.MILLIMETRE);
        Table table =
                (Table) pairing.compared(BikeDrawing.At.BB, Progress.UNWATCHED).get(0);
        int row = column(table, "measure")
                .shown()
                .indexOf(Vocabulary.standard().quantity(key).heading());
        return column(table, "difference2").values().at(row);
    }

    private static Column column(Table table, String key) {
        return table.columns().stream()
                .filter(column -> column.key().equals(key))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void atTheSameContactPointsTheSaddleIsInTheSamePlace() {
        assertThat(difference(Optional.empty(), "saddleHeightMm")).isZero();
    }

    @Test
    void stockPartsBringTheHandsCloserThanTheyAreBuilt() {
        assertThat(Math.abs(difference(Optional.of(parts), "handXMm")))
                .isLessThan(Math.abs(difference(Optional.empty(), "handXMm")));
    }

    @Test
    void aMatchGivesForEachBikeTheBikesThatItsOptionsMake() {
        List<Pairing.Options> options = new Pairing(
                        List.of(small, large),
                        RackSeat.EMPTY,
                        Optional.of(Wanted.of(large)),
                        Optional.of(parts),
                        List.of(),
                        LengthUnit.MILLIMETRE)
                .matched(Progress.UNWATCHED);
        assertThat(options).extracting(one -> one.bikes().size()).containsExactly(10, 10);
    }

    @Test
    void onlyTheNumbersAskedForAreCompared() {
        Pairing pairing = new Pairing(
                List.of(small, large),
                RackSeat.EMPTY,
                Optional.empty(),
                Optional.empty(),
                List.of("trailMm", "frame.stackMm"),
                LengthUnit.MILLIMETRE);
        Table table =
                (Table) pairing.compared(BikeDrawing.At.BB, Progress.UNWATCHED).get(0);
        assertThat(table.columns().get(0).shown()).containsExactly("Trail, mm", "Stack, mm");
    }

    @Test
    void aMatchWithoutContactPointsSaysWhatToChoose() {
        Pairing pairing = new Pairing(
                List.of(small), RackSeat.EMPTY, Optional.empty(), Optional.of(parts), List.of(), LengthUnit.MILLIMETRE);
        assertThatThrownBy(() -> pairing.matched(Progress.UNWATCHED))
                .isInstanceOf(Refusal.class)
                .hasMessage("Choose whose contact points are wanted; then parts are matched to them.");
    }
}
