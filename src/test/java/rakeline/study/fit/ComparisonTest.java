package rakeline.study.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import rakeline.geometry.Bike;
import rakeline.geometry.Bikes;
import rakeline.geometry.Hands;
import rakeline.geometry.Inputs;
import rakeline.geometry.Measures;
import rakeline.geometry.Provenance;
import rakeline.geometry.ToeMeasures;
import rakeline.handling.Ride;
import rakeline.quantity.Limit;
import rakeline.quantity.Reading;
import rakeline.quantity.Refusal;
import rakeline.study.Vocabulary;

/** Bikes side by side, and what is left of each. */
class ComparisonTest {
    private static final Bike BIKE = Bikes.whole();

    @Test
    void everyMeasureThatOneOfThemHasIsARow() {
        Comparison comparison = compare(BIKE, Bikes.plain());
        assertThat(comparison.measures())
                .extracting(row -> row.quantity().key())
                .containsExactlyElementsOf(Vocabulary.standard().readings(Ride.of(BIKE)).entrySet().stream()
                        .filter(entry -> !(entry.getValue() instanceof Reading.Lacking))
                        .map(Map.Entry::getKey)
                        .toList());
    }

    @Test
    void differencesAreAgainstTheFirstInFullPrecision() {
        Bike steep = BIKE.with("frame.headAngleDeg", 73);
        assertThat(row(compare(BIKE, steep), "trailMm").differences().at(1))
                .isEqualTo(Bikes.value(steep, Measures.TRAIL) - Bikes.value(BIKE, Measures.TRAIL));
    }

    @Test
    void onlyInputsThatDifferAreRows() {
        assertThat(compare(BIKE, BIKE.with("frame.headAngleDeg", 73)).inputs())
                .extracting(row -> row.quantity().key())
                .containsExactly("frame.headAngleDeg");
    }

    /** The toe's length is known to 3 mm and moves toe room by as much, the shoe's other numbers by a
     * little: on a foot that both share their errors cancel. */
    @Test
    void errorsOfAFootThatBothShareCancel() {
        Bike other =
                Bikes.redrawn(Bikes.whole(), Map.of("frame.stackMm", 515.0)).named("Other");
        double apart = toeRoom(other, false);
        double shared = toeRoom(other, true);
        assertThat(apart * apart - shared * shared).isBetween(2 * 3 * 3 - 1e-3, 1.2 * 2 * 3 * 3);
    }

    /** What is no part of the foot stays each bike's own. */
    @Test
    void ofASharedFootOnlyErrorsOfTheFootCancel() {
        Bike other =
                Bikes.redrawn(Bikes.whole(), Map.of("frame.stackMm", 515.0)).named("Other");
        assertThat(uncertainty(other, true, "trailMm"))
                .isEqualTo(uncertainty(other, false, "trailMm"))
                .isPositive();
    }

    private static double toeRoom(Bike other, boolean sharedFoot) {
        return uncertainty(other, sharedFoot, "toeRoomMm");
    }

    private static double uncertainty(Bike other, boolean sharedFoot, String key) {
        Comparison comparison = Comparison.of(
                Vocabulary.standard(),
                List.of(new Contender(Ride.of(BIKE), 0), new Contender(Ride.of(other), 1)),
                List.of(Hands.HOODS),
                Optional.empty(),
                sharedFoot,
                List.of(key));
        return comparison.measures().get(0).uncertainties().at(1);
    }

    /** Two independent readings of 2 mm each: √8. */
    @Test
    void uncertaintiesOfTwoBikesAddInSquares() {
        Comparison comparison = compare(BIKE, BIKE.with("frame.stackMm", 540));
        assertThat(comparison.inputs().get(0).uncertainties().at(1)).isCloseTo(Math.sqrt(8), within(1e-9));
    }

    /** Trail = (R cos α − f)/sin α, its derivatives by hand: ∂/∂α = (f cos α − R)/sin² α, ∂/∂f = −1/sin α, cot α. */
    @Test
    void theUncertaintyOfATrailIsThatOfItsDerivatives() {
        Bike measured = BIKE.with("wheels.both.radiusMm", 336);
        assertThat(row(compare(measured, measured), "trailMm").uncertainties().at(1))
                .isCloseTo(Math.hypot(offTheWheel(measured), byTheWheel()) * Math.sqrt(2), within(1e-4));
    }

    /** One tyre, one rim, nobody measured: whatever the nominal radius is off by, it is off on both. */
    @Test
    void theSameWheelsUnderTwoBikesAreOneSource() {
        assertThat(row(compare(BIKE, BIKE), "trailMm").uncertainties().at(1))
                .isCloseTo(offTheWheel(BIKE) * Math.sqrt(2), within(1e-4));
        assertThat(row(compare(BIKE, BIKE.with("wheels.both.tyreMm", 32)), "trailMm")
                        .uncertainties()
                        .at(1))
                .isGreaterThan(offTheWheel(BIKE) * Math.sqrt(2) + 0.1);
    }

    private static double offTheWheel(Bike bike) {
        double alpha = Math.toRadians(bike.get("frame.headAngleDeg"));
        double radius = bike.get("wheels.front.radiusMm");
        double sin = Math.sin(alpha);
        double byAngle = (bike.get("fork.offsetMm") * Math.cos(alpha) - radius) / (sin * sin) * Math.toRadians(0.2);
        return Math.hypot(byAngle, 1 / sin);
    }

    private static double byTheWheel() {
        return 2 / Math.tan(Math.toRadians(BIKE.get("frame.headAngleDeg")));
    }

    @Test
    void aDifferenceTellsApartFromTwiceItsUncertaintyUp() {
        // two stacks, each known to 2 mm: 2 · √8 = 5.66 mm
        assertThat(compare(BIKE, BIKE.with("frame.stackMm", 520.6))
                        .inputs()
                        .get(0)
                        .tellsApart(1))
                .isFalse();
        Comparison.Row apart =
                compare(BIKE, BIKE.with("frame.stackMm", 520.7)).inputs().get(0);
        assertThat(apart.tellsApart(1)).isTrue();
        assertThat(apart.difference(1)).isEqualTo("5.70 mm higher");
    }

    @Test
    void differencesSayWhichWay() {
        Comparison comparison = compare(
                Optional.empty(),
                new Contender(Ride.of(BIKE), 0),
                new Contender(Ride.of(BIKE.with("cockpit.spacersMm", 5)), 0));
        assertThat(row(comparison, "handYMm").difference(1)).endsWith("mm lower");
        assertThat(row(comparison, "handXMm").difference(1)).endsWith("mm further forward");
    }

    @Test
    void cranksAndShoesThatDifferAreSaid() {
        Comparison comparison = compare(BIKE, BIKE.named("Other").with("crank.lengthMm", 170));
        assertThat(comparison.differentFooting())
                .singleElement()
                .asString()
                .contains("Crank length", "Fixture 165 mm", "Other 170 mm");
    }

    @Test
    void aBikesOwnUncertaintyWins() {
        Bike measured = Bike.of(
                BIKE.name(),
                BIKE.given(),
                BIKE.groups(),
                Map.of("frame.stackMm", new Provenance(Optional.empty(), 0.5)));
        Comparison comparison = compare(measured, measured.with("frame.stackMm", 540));
        assertThat(comparison.inputs().get(0).uncertainties().at(1)).isCloseTo(Math.sqrt(0.5), within(1e-9));
    }

    @Test
    void aBikeAndTheSameBikeChangedShareTheirErrors() {
        Contender before = new Contender(Ride.of(BIKE), 0);
        Contender after = new Contender(Ride.of(BIKE.with("cockpit.spacersMm", 25)), 0);
        Comparison comparison = compare(Optional.empty(), before, after);
        assertThat(row(comparison, "barYMm").uncertainties().at(1)).isLessThan(0.05);
        assertThat(row(comparison, "barYMm").tellsApart(1)).isTrue();
    }

    @Test
    void sharedContactPointsShareTheirErrors() {
        Comparison apart = compare(BIKE, BIKE);
        Comparison together =
                compare(Optional.of("somebody"), new Contender(Ride.of(BIKE), 0), new Contender(Ride.of(BIKE), 1));
        assertThat(row(apart, "saddleHeightMm").uncertainties().at(1)).isCloseTo(3 * Math.sqrt(2), within(1e-6));
        assertThat(row(together, "saddleHeightMm").uncertainties().at(1)).isZero();
    }

    @Test
    void aSmallDifferenceIsNotMarked() {
        assertThat(row(compare(BIKE, BIKE.with("fork.offsetMm", 47.5)), "trailMm")
                        .tellsApart(1))
                .isFalse();
        assertThat(row(compare(BIKE, BIKE.with("fork.offsetMm", 55)), "trailMm").tellsApart(1))
                .isTrue();
    }

    @Test
    void measuresThatDependOnTheHandsAreReadInEachPlace() {
        Comparison comparison = Comparison.of(
                Vocabulary.standard(),
                contenders(BIKE, BIKE),
                List.of(Hands.TOPS, Hands.DROPS),
                Optional.empty(),
                false,
                List.of("handXMm", "trailMm"));
        assertThat(comparison.measures())
                .extracting(row -> row.quantity().key())
                .containsExactly("tops.handXMm", "drops.handXMm", "trailMm");
        assertThat(comparison.measures().get(0).values().at(0)).isEqualTo(Bikes.value(BIKE, Measures.BAR_X));
    }

    @Test
    void aChangeIsNamedAndWheelsAreRefitted() {
        Bike wider = Changed.of(BIKE, Map.of("wheels.front.tyreMm", 32.0));
        assertThat(wider.name()).isEqualTo(BIKE.name() + ", Front tyre 32 mm");
        assertThat(wider.get("frame.headAngleDeg")).isLessThan(BIKE.get("frame.headAngleDeg"));
    }

    @Test
    void oneBikeAloneIsNoComparison() {
        assertThatThrownBy(() -> compare(BIKE)).isInstanceOf(Refusal.class);
    }

    @Test
    void whatIsLeftToAFloorIsTheValueMinusIt() {
        Left strike = left("pedalStrikeLeanDeg", Limit.Side.AT_LEAST);
        assertThat(strike.left().at(0)).isEqualTo(strike.values().at(0) - 25);
        assertThat(strike.limit().source()).isEqualTo("16 CFR 1512.17(c)");
    }

    @Test
    void whatIsLeftToACeilingIsItMinusTheValue() {
        Left head = Left.rules(Vocabulary.standard(), List.of(Ride.of(BIKE))).stream()
                .filter(row -> row.quantity().equals(Inputs.HEAD_ANGLE.quantity())
                        && row.limit().side() == Limit.Side.AT_MOST)
                .findFirst()
                .orElseThrow();
        assertThat(head.left().at(0)).isEqualTo(75 - BIKE.get(Inputs.HEAD_ANGLE));
    }

    /** A toe that is moved forward by what is to spare has no room left. */
    @Test
    void aToeMovedByWhatIsToSpareTouches() {
        Left toe = left(Inputs.TOE_FORWARD.key(), Limit.Side.AT_MOST);
        Bike moved =
                BIKE.with(Inputs.TOE_FORWARD, toe.values().at(0) + toe.left().at(0));
        assertThat(Bikes.value(moved, ToeMeasures.TOE_ROOM)).isCloseTo(0, within(1e-3));
    }

    /** A guard lies between tyre and toe, so it takes up about its own thickness. */
    @Test
    void aGuardMayTakeUpTheToeRoomThereIs() {
        Bike roomy = Bikes.reaching(BIKE.with(Inputs.MUDGUARD_GAP, 0), ToeMeasures.TOE_ROOM, 5);
        Left guard = Left.of(Vocabulary.standard(), List.of(Ride.of(roomy))).stream()
                .filter(row -> row.quantity().key().equals(Inputs.MUDGUARD_GAP.key()))
                .findFirst()
                .orElseThrow();
        assertThat(guard.left().at(0)).isCloseTo(5, within(0.5));
    }

    @Test
    void everyLimitHasASource() {
        assertThat(Left.of(Vocabulary.standard(), List.of(Ride.of(BIKE))))
                .hasSizeGreaterThan(15)
                .allSatisfy(row -> assertThat(row.limit().source()).isNotBlank());
    }

    @Test
    void aBikeWithoutTheNumberHasNothingToSayOfItsLimit() {
        List<Left> rows = Left.of(Vocabulary.standard(), List.of(Ride.of(BIKE), Ride.of(Bikes.plain())));
        Left rail = rows.stream()
                .filter(row -> row.quantity().key().equals("railLeftMm"))
                .findFirst()
                .orElseThrow();
        assertThat(rail.left().at(0)).isFinite();
        assertThat(rail.left().at(1)).isNaN();
    }

    private static Left left(String key, Limit.Side side) {
        return Left.of(Vocabulary.standard(), List.of(Ride.of(BIKE))).stream()
                .filter(row -> row.quantity().key().equals(key) && row.limit().side() == side)
                .findFirst()
                .orElseThrow();
    }

    private static Comparison compare(Bike... bikes) {
        return compare(Optional.empty(), contenders(bikes).toArray(Contender[]::new));
    }

    private static List<Contender> contenders(Bike... bikes) {
        return IntStream.range(0, bikes.length)
                .mapToObj(i -> new Contender(Ride.of(bikes[i]), i))
                .toList();
    }

    private static Comparison compare(Optional<String> contact, Contender... contenders) {
        return Comparison.of(
                Vocabulary.standard(), Arrays.asList(contenders), List.of(Hands.HOODS), contact, false, List.of());
    }

    private static Comparison.Row row(Comparison comparison, String key) {
        return comparison.measures().stream()
                .filter(row -> row.quantity().key().equals(key))
                .findFirst()
                .orElseThrow();
    }
}
