package rakeline.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.Test;
import rakeline.geometry.Bike;
import rakeline.geometry.Bikes;
import rakeline.geometry.Inputs;
import rakeline.geometry.Provenance;
import rakeline.geometry.ToeMeasures;
import rakeline.handling.Ride;
import rakeline.quantity.Refusal;

/** Uncertainties carried to measures. */
class SpreadTest {
    private static final double ALPHA = Math.toRadians(70.5);
    private static final double RADIUS = 339;

    @Test
    void trailFollowsItsClosedFormDerivatives() {
        // D: trail = (R cos α − f)/sin α; head angle 0.2°, offset 1, radius 2 (check-values 7)
        double byHead = (47 * Math.cos(ALPHA) - RADIUS) / Math.pow(Math.sin(ALPHA), 2) * Math.toRadians(0.2);
        double byOffset = 1 / Math.sin(ALPHA);
        double byRadius = 2 / Math.tan(ALPHA);
        double closed = Math.sqrt(byHead * byHead + byOffset * byOffset + byRadius * byRadius);
        Scatter.Row trail = row(Bikes.plain(), "trailMm");
        assertThat(trail.linear()).isCloseTo(closed, within(1e-6 * closed));
        assertThat(trail.standardUncertainty()).isCloseTo(closed, within(1e-3 * closed));
    }

    @Test
    void wheelbaseFollowsItsClosedFormDerivatives() {
        // D: wheelbase = C + f sin α + (S + f cos α − (Rf − Rr + d)) cot α + √(CS² − d²); both radii are off alike
        double rear = Math.sqrt(410 * 410 - 74 * 74);
        double height = 515 + 47 * Math.cos(ALPHA) - 74;
        double cot = 1 / Math.tan(ALPHA);
        double byHead = 47 * Math.cos(ALPHA) - 47 * Math.sin(ALPHA) * cot - height / Math.pow(Math.sin(ALPHA), 2);
        double squares = sum(
                byHead * Math.toRadians(0.2),
                2 * cot,
                2,
                Math.sin(ALPHA) + Math.cos(ALPHA) * cot,
                2 * (-cot - 74 / rear),
                1.5 * 410 / rear);
        Scatter.Row wheelbase = row(Bikes.plain(), "wheelbaseMm");
        assertThat(wheelbase.linear()).isCloseTo(Math.sqrt(squares), within(1e-6));
        assertThat(wheelbase.standardUncertainty()).isCloseTo(Math.sqrt(squares), within(1e-3));
    }

    @Test
    void aSharedRadiusErrorLeavesTheWheelbaseAlone() {
        Scatter shared = spread(Bikes.plain(), true, "wheelbaseMm");
        Scatter apart = spread(Bikes.plain(), false, "wheelbaseMm");
        assertThat(shared.rows().get(0).linear()).isLessThan(apart.rows().get(0).linear());
    }

    @Test
    void theHeadAngleAloneMovesTrailAndFrontCentreAsTheTradeFinds() {
        // check-values 7, D: ±0.2° with the others gives trail ±1.8 and front-centre ±3.1
        assertThat(row(Bikes.plain(), "trailMm").standardUncertainty()).isCloseTo(1.8, within(0.1));
        assertThat(row(Bikes.plain(), "frontCentreMm").standardUncertainty()).isCloseTo(3.1, within(0.2));
    }

    @Test
    void aRadiusThatIsNotGivenIsOffFromTheNominalOne() {
        // trail's part of the radius: 2 · cot α
        Scatter scatter = spread(Bikes.plain(), true, "trailMm");
        assertThat(part(scatter, "wheels.both.radiusMm")).isCloseTo(2 / Math.tan(ALPHA), within(1e-8));
    }

    @Test
    void aTyreThatIsOffMovesANominalRadiusAndNoMeasuredOne() {
        Map<String, Provenance> tyre = Map.of("wheels.front.tyreMm", u(1));
        assertThat(part(spread(with(tyre, Bikes.plain()), true, "trailMm"), "wheels.front.tyreMm"))
                .isCloseTo(1 / Math.tan(ALPHA), within(1e-8));
    }

    @Test
    void theFilesOwnUncertaintyWins() {
        Bike bike = with(Map.of("fork.offsetMm", u(0.25)), Bikes.plain());
        assertThat(part(spread(bike, true, "trailMm"), "fork.offsetMm"))
                .isCloseTo(-0.25 / Math.sin(ALPHA), within(1e-8));
    }

    @Test
    void anUncertaintyOfNothingVariesNothing() {
        Bike bike = with(Map.of("fork.offsetMm", u(0)), Bikes.plain());
        assertThat(Doubt.about(bike, true)).noneMatch(doubt -> doubt.key().equals("fork.offsetMm"));
    }

    @Test
    void onlyWhatIsGivenVaries() {
        assertThat(Doubt.about(Bikes.plain(), true).stream().map(Doubt::key))
                .containsExactly(
                        "frame.stackMm",
                        "frame.reachMm",
                        "frame.headAngleDeg",
                        "frame.seatAngleDeg",
                        "frame.chainstayMm",
                        "frame.bbDropMm",
                        "fork.offsetMm",
                        "wheels.both.radiusMm");
    }

    @Test
    void theDrawsAgreeWithOthersMadeInAnotherWay() {
        // a plain draw of a squared offset: 47² + 2·47·z + z², deviation √(4·47²·u² + 2·u⁴) with u = 10
        Bike bike = with(Map.of("fork.offsetMm", u(10)), Bikes.plain());
        Scatter.Row row = Spread.of(
                        Ride.of(bike), List.of(Rides.fixture(of -> Math.pow(of.get(Inputs.FORK_OFFSET), 2))))
                .run()
                .rows()
                .get(0);
        double exact = Math.sqrt(4 * 47 * 47 * 100.0 + 2 * 10_000);
        assertThat(row.standardUncertainty()).isCloseTo(exact, within(0.02 * exact));
    }

    @Test
    void whereSomeDrawsHaveNoValueTheirShareIsSaidAndNoDeviation() {
        // half of all offsets lie above 47
        Scatter.Row row = Spread.of(
                        Ride.of(Bikes.plain()),
                        List.of(Rides.fixture(
                                of -> of.get(Inputs.FORK_OFFSET) > 47 ? Double.NaN : of.get(Inputs.FORK_OFFSET))))
                .run()
                .rows()
                .get(0);
        assertThat(row.nullShare()).isEqualTo(0.5);
        assertThat(row.standardUncertainty()).isNaN();
        assertThat(row.linear()).isNaN();
    }

    @Test
    void nearGrazingContactTheLinearFigureIsWithheld() {
        Bike grazing = Bikes.reaching(Bikes.withFoot(), ToeMeasures.TOE_ROOM, 0.5);
        Scatter.Row gap = gap(grazing);
        assertThat(gap.isWithheld()).isTrue();
    }

    @Test
    void farFromContactTheLinearFigureStands() {
        Bike clear = Bikes.reaching(Bikes.withFoot(), ToeMeasures.TOE_ROOM, 60);
        Scatter.Row gap = gap(clear);
        assertThat(gap.isWithheld()).isFalse();
        assertThat(gap.linear()).isCloseTo(gap.standardUncertainty(), within(0.05 * gap.linear()));
    }

    @Test
    void theCrewMakesNoDifference() {
        Spread spread = new Spread(
                Ride.of(Bikes.withFoot()),
                Doubt.about(Bikes.withFoot(), true),
                Rides.tracks("trailMm", "toeRoomMm"),
                300,
                7);
        assertThat(spread.run(Crew.of(3), Progress.UNWATCHED)).isEqualTo(spread.run(Crew.of(1), Progress.UNWATCHED));
    }

    @Test
    void itCanBeStopped() {
        Spread spread = Spread.of(Ride.of(Bikes.plain()), Rides.tracks("trailMm"));
        assertThatThrownBy(() -> spread.run(Crew.of(2), share -> share < 0.5))
                .isInstanceOf(CancellationException.class);
    }

    @Test
    void anOddNumberOfDrawsIsRefused() {
        assertThatThrownBy(() -> new Spread(Ride.of(Bikes.plain()), List.of(), Rides.tracks("trailMm"), 101, 1))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("even");
    }

    private static Scatter.Row gap(Bike bike) {
        return new Spread(Ride.of(bike), Doubt.about(bike, true), Rides.tracks("toeGapLeastMm"), 400, 1)
                .run()
                .rows()
                .get(0);
    }

    private static double sum(double... parts) {
        double sum = 0;
        for (double part : parts) {
            sum += part * part;
        }
        return sum;
    }

    private static Scatter.Row row(Bike bike, String key) {
        return spread(bike, true, key).rows().get(0);
    }

    private static Scatter spread(Bike bike, boolean shared, String... keys) {
        return new Spread(
                        Ride.of(bike),
                        Doubt.about(bike, shared),
                        Rides.tracks(keys),
                        Spread.USUAL_DRAWS,
                        Spread.USUAL_SEED)
                .run();
    }

    private static double part(Scatter scatter, String key) {
        List<String> keys = scatter.spread().doubts().stream().map(Doubt::key).toList();
        return scatter.rows().get(0).parts().at(keys.indexOf(key));
    }

    private static Provenance u(double uncertainty) {
        return new Provenance(Optional.empty(), uncertainty);
    }

    private static Bike with(Map<String, Provenance> provenance, Bike bike) {
        return Bike.of(bike.name(), bike.given(), bike.groups(), provenance);
    }
}
