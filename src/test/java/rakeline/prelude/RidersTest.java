package rakeline.prelude;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static rakeline.prelude.Fitting.compare;
import static rakeline.prelude.Fitting.limitsOf;
import static rakeline.prelude.Prelude.draw;
import static rakeline.prelude.Prelude.measure;
import static rakeline.prelude.Prelude.measures;
import static rakeline.prelude.Prelude.sweep;
import static rakeline.prelude.Riders.assumed;
import static rakeline.prelude.Riders.cranks;
import static rakeline.prelude.Riders.cranksHandsMoving;
import static rakeline.prelude.Riders.posture;
import static rakeline.prelude.Riders.ride;
import static rakeline.prelude.Studies.sizes;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import rakeline.figure.Column;
import rakeline.figure.Table;
import rakeline.geometry.Bike;
import rakeline.geometry.Bikes;
import rakeline.geometry.Inputs;
import rakeline.handling.Ride;
import rakeline.quantity.Entries;
import rakeline.rider.BodyTable;
import rakeline.rider.Rider;
import rakeline.rider.RiderInputs;

/** What a row may say about riders. */
class RidersTest {
    private static final Bike BIKE = Bikes.whole();
    private static final Rider RIDER = Rider.of(
            "Rider",
            Entries.none().with(Map.of(RiderInputs.STATURE, 1680.0, RiderInputs.INSEAM, 790.0, RiderInputs.MASS, 62.0)),
            BodyTable.CADAVERS_1955,
            Map.of(Inputs.CONTACT_SIT_X, -190.0, Inputs.CONTACT_SIT_Y, 640.0));
    private static final Ride RIDE = ride(BIKE, RIDER);

    @Test
    void theRidersPointsStandInPlaceOfTheBikes() {
        assertThat(RIDE.bike().get("contact.sitYMm")).isEqualTo(640);
    }

    @Test
    void aPostureIsEveryMeasureOfTheRider() {
        assertThat(posture(RIDE).columns().get(0).shown()).contains("Torso angle", "Standover clearance");
    }

    @Test
    void aMeasureIsReadByItsKey() {
        double standover = measure(RIDE, "standoverMm");
        assertThat(measure(RIDE, "standoverClearanceMm")).isCloseTo(790 - standover, within(1e-9));
    }

    @Test
    void whatIsAssumedIsListed() {
        assertThat(assumed(RIDER).columns().get(0).shown()).contains("hipUpMm", "segments.thighMm");
    }

    @Test
    void otherCranksMoveTheSaddleAndHandsStayOrMove() {
        Table stay = cranks(RIDE, 170, 160);
        Table move = cranksHandsMoving(RIDE, 170, 160);
        assertThat(column(stay, "saddleHeightMm").values().at(1))
                .isCloseTo(column(stay, "saddleHeightMm").values().at(0) + 10, within(1e-9));
        assertThat(stay.held()).contains("hands stay");
        assertThat(move.held()).contains("hands move with the saddle");
    }

    @Test
    void aRideIsSweptMeasuredAndDrawn() {
        assertThat(sweep(RIDE)
                        .over("crank.lengthMm", 160, 170, 5)
                        .track("torsoAngleDeg")
                        .table()
                        .rows())
                .isEqualTo(3);
        assertThat(measures(List.of(Inputs.CRANK_LENGTH), RIDE, RIDE).columns()).hasSizeGreaterThanOrEqualTo(3);
        assertThat(draw(RIDE).marks())
                .hasSizeGreaterThan(draw(Ride.of(RIDE.bike())).marks().size());
    }

    @Test
    void ridesAreComparedLimitedAndSized() {
        assertThat(column(compare(RIDE, ride(BIKE, RIDER, "drops")), "key").shown())
                .contains("torsoAngleDeg");
        assertThat(column(limitsOf(RIDE), "limited").shown()).contains("Standover clearance");
        assertThat(sizes(RIDE)
                        .floor("frontCentreMm", 600)
                        .track("torsoAngleDeg")
                        .table()
                        .rows())
                .isEqualTo(1);
    }

    private static Column column(Table table, String key) {
        return table.columns().stream()
                .filter(column -> column.key().equals(key))
                .findFirst()
                .orElseThrow();
    }
}
