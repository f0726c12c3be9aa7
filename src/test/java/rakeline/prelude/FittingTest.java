package rakeline.prelude;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static rakeline.prelude.Fitting.compare;
import static rakeline.prelude.Fitting.compareAtContactOf;
import static rakeline.prelude.Fitting.limitsOf;
import static rakeline.prelude.Fitting.match;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import rakeline.figure.Column;
import rakeline.figure.Table;
import rakeline.geometry.Bike;
import rakeline.geometry.Bikes;
import rakeline.geometry.Inputs;
import rakeline.geometry.parts.Spacers;
import rakeline.geometry.parts.Stock;
import rakeline.quantity.Entries;
import rakeline.quantity.Input;
import rakeline.quantity.Refusal;
import rakeline.rider.BodyTable;
import rakeline.rider.Rider;
import rakeline.rider.RiderInputs;

/** What a row may say about matching and comparing. */
class FittingTest {
    private static final Bike BIKE = Bikes.whole();
    private static final Bike OTHER = BIKE.named("Other").with("contact.handYMm", 620);
    private static final Stock SPACERS =
            new Stock("Spacers", Map.of(), Optional.of(new Spacers(List.of(5.0, 10.0), 30, 30)), List.of());

    @Test
    void aMatchReadsAsItIsSaid() {
        Table table = match(BIKE).to(OTHER).with(SPACERS).table();
        assertThat(table.rows()).isEqualTo(7);
        assertThat(table.columns()).extracting(Column::key).contains("spacersMm", "distanceMm", "limits");
        assertThat(table.cautions()).anyMatch(caution -> caution.sentence().contains("makers' limits"));
    }

    @Test
    void theBestOptionIsABike() {
        assertThat(match(BIKE).to(OTHER).with(SPACERS).bike().get("cockpit.spacersMm"))
                .isEqualTo(30);
    }

    @Test
    void aRidersPointsAndShoeGoOnTheBike() {
        Rider rider = of180(Map.of(
                Inputs.CONTACT_SIT_X, -190.0,
                Inputs.CONTACT_SIT_Y, 640.0,
                Inputs.CONTACT_HAND_X, 520.0,
                Inputs.CONTACT_HAND_Y, 610.0,
                Inputs.TOE_FORWARD, 90.0));
        Bike best = match(BIKE).to(rider).with(SPACERS).bike();
        assertThat(best.get("contact.sitXMm")).isEqualTo(-190);
        assertThat(best.get("shoe.toeForwardMm")).isEqualTo(90);
    }

    @Test
    void aRiderWithoutContactPointsIsRefused() {
        assertThatThrownBy(() -> match(BIKE).to(of180(Map.of())))
                .isInstanceOf(Refusal.class)
                .hasMessageContainingAll("Rider", "contact.handXMm", "contact.handYMm", "ridden today");
    }

    @Test
    void aRiderWithoutContactPointsIsMatchedToTheBikeRiddenToday() {
        assertThat(match(BIKE).to(of180(Map.of()), OTHER).with(SPACERS).table().title())
                .contains("the contact points of Other");
    }

    @Test
    void aRidersOwnPointsWinOverTheBikeRiddenToday() {
        Rider rider = of180(Map.of(
                Inputs.CONTACT_SIT_X, -190.0,
                Inputs.CONTACT_SIT_Y, 640.0,
                Inputs.CONTACT_HAND_X, 520.0,
                Inputs.CONTACT_HAND_Y, 610.0));
        assertThat(match(BIKE).to(rider, OTHER).with(SPACERS).bike().get("contact.handYMm"))
                .isEqualTo(610);
    }

    @Test
    void aMatchThatSaysNotToWhomIsRefused() {
        assertThatThrownBy(() -> match(BIKE).with(SPACERS).table())
                .isInstanceOf(Refusal.class)
                .hasMessageContaining(".to(bike)");
    }

    @Test
    void comparedBikesStandSideBySide() {
        assertThat(compare(BIKE, OTHER).columns())
                .extracting(Column::label)
                .contains("Fixture", "Other", "against the first");
    }

    @Test
    void contactPointsOfOneMayGoOnAll() {
        assertThat(compareAtContactOf(OTHER, BIKE, OTHER).held()).startsWith("the contact points of Other");
    }

    @Test
    void limitsCarryTheirSource() {
        assertThat(limitsOf(BIKE).columns())
                .filteredOn(column -> column.key().equals("source"))
                .singleElement()
                .satisfies(column -> assertThat(column.shown()).contains("16 CFR 1512.17(c)"));
    }

    private static Rider of180(Map<Input, Double> own) {
        Entries body = Entries.none()
                .with(Map.of(RiderInputs.STATURE, 1800.0, RiderInputs.INSEAM, 850.0, RiderInputs.MASS, 75.0));
        return Rider.of("Rider", body, BodyTable.CADAVERS_1955, own);
    }
}
