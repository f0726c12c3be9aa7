package rakeline.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rakeline.geometry.Bike;
import rakeline.geometry.Bikes;
import rakeline.geometry.SeatAxis;
import rakeline.handling.Ride;

/** Which single number would have to be what. */
class SuspectsTest {
    private static final int CHARTS = 200;

    /** The seed of the build; {@code -Drakeline.soak.seeds=N} takes that many more. */
    static LongStream seeds() {
        return LongStream.rangeClosed(0, Integer.getInteger("rakeline.soak.seeds", 0));
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void cleanChartsRaiseNone(long seed) {
        SeededCharts charts = new SeededCharts(seed);
        assertThat(Stream.generate(charts::clean).limit(CHARTS))
                .allSatisfy(chart -> assertThat(reconciled(chart).suspects()).isEmpty());
    }

    @Tag("slow")
    @ParameterizedTest
    @MethodSource("seeds")
    void theFirstGroupHoldsTheWrongNumber(long seed) {
        assertThat(found(new SeededCharts(seed), false)).isGreaterThanOrEqualTo(CHARTS * 9 / 10);
    }

    /** So that a group is not simply everything. */
    @Tag("slow")
    @ParameterizedTest
    @MethodSource("seeds")
    void theWrongNumberIsMostlyTheFirstOfAll(long seed) {
        assertThat(found(new SeededCharts(seed), true)).isGreaterThanOrEqualTo(CHARTS / 2);
    }

    private static int found(SeededCharts charts, boolean alone) {
        int found = 0;
        for (int tried = 0; tried < CHARTS; ) {
            Bike clean = charts.clean();
            String key = charts.key(clean);
            Reconcile reconciled = reconciled(charts.wrong(clean, key));
            if (!reconciled.agrees()) {
                tried++;
                found += firstGroup(reconciled, alone).contains(key) ? 1 : 0;
            }
        }
        return found;
    }

    private static Set<String> firstGroup(Reconcile reconciled, boolean alone) {
        if (reconciled.suspects().isEmpty()) {
            return Set.of();
        }
        Set<String> group = new HashSet<>(alone ? List.of() : first(reconciled).sameAs());
        group.add(first(reconciled).key());
        return group;
    }

    @Test
    void everySuspectBringsEveryResidualWithinItsTolerance() {
        Bike wrong = chart().with("charted.wheelbaseMm", measured(chart(), "wheelbaseMm") + 6);
        assertThat(reconciled(wrong).suspects())
                .hasSizeGreaterThan(1)
                .allSatisfy(suspect -> assertThat(reconciled(wrong.with(suspect.key(), suspect.wouldBe()))
                                .agrees())
                        .as(suspect.key())
                        .isTrue());
    }

    @Test
    void wheelbaseAndChainstayCannotBeToldApart() {
        Reconcile reconciled = reconciled(chart().with("charted.wheelbaseMm", 984));
        assertThat(firstGroup(reconciled, false)).containsExactlyInAnyOrder("charted.wheelbaseMm", "frame.chainstayMm");
        assertThat(suspect(reconciled, "charted.wheelbaseMm").wouldBe()).isCloseTo(975, within(1.0));
        assertThat(suspect(reconciled, "frame.chainstayMm").wouldBe()).isCloseTo(419, within(1.0));
    }

    @Test
    void aHeadAngleRoundedToHalfADegreeIsFound() {
        Bike drawn = printed(Bikes.plain().with("frame.headAngleDeg", 71.25).with("charted.stepMm", 0.5));
        Reconcile reconciled = reconciled(drawn.with("frame.headAngleDeg", 71));
        assertThat(first(reconciled).key()).isEqualTo("frame.headAngleDeg");
        assertThat(first(reconciled).wouldBe()).isCloseTo(71.25, within(0.1));
    }

    @Test
    void anOffsetOfTheNextSizeIsFound() {
        Reconcile reconciled = reconciled(chart().with("fork.offsetMm", 43));
        assertThat(first(reconciled).key()).isEqualTo("fork.offsetMm");
        assertThat(first(reconciled).wouldBe()).isCloseTo(47, within(1.0));
        assertThat(first(reconciled).charted()).isEqualTo(43);
    }

    @Test
    void aTrailForAnotherTyreIsFound() {
        double trail = measured(Bikes.plain().with("wheels.both.tyreMm", 35), "trailMm");
        Reconcile reconciled = reconciled(chart().with("charted.trailMm", Math.rint(trail)));
        assertThat(firstGroup(reconciled, false)).contains("charted.trailMm", "wheels.both.tyreMm");
        assertThat(suspect(reconciled, "wheels.both.tyreMm").wouldBe()).isCloseTo(35, within(2.0));
    }

    /** The tube of this frame leans 3° further than its effective angle, so that the height makes a difference. */
    @Test
    void aSeatAngleTakenAtAnotherHeightIsFound() {
        Bike missing = printed(Bikes.plain().with("frame.seatTubeAngleDeg", 71));
        double there = Math.toDegrees(Math.atan2(690, -SeatAxis.of(missing).xAtHeight(690)));
        Reconcile reconciled = reconciled(missing.with("frame.seatAngleDeg", Math.rint(there * 10) / 10));
        assertThat(firstGroup(reconciled, false))
                .contains("frame.seatAngleAtMm", "frame.seatAngleDeg", "charted.effectiveTopTubeMm");
        assertThat(suspect(reconciled, "frame.seatAngleAtMm").wouldBe()).isCloseTo(690, within(30.0));
        assertThat(suspect(reconciled, "frame.seatAngleAtMm").charted()).isEqualTo(515);
    }

    @Test
    void aChainstayThatIsPrintedHorizontalIsSaidToBe() {
        Bike drawn = printed(Bikes.plain().with("frame.chainstayMm", Math.hypot(410, 74)));
        Suspect chainstay = suspect(reconciled(drawn.with("frame.chainstayMm", 410)), "frame.chainstayMm");
        assertThat(chainstay.because()).contains("horizontal");
        assertThat(chainstay.wouldBe()).isCloseTo(417, within(1.0));
    }

    @Test
    void aFrontCentreThatIsPrintedHorizontalIsSaidToBe() {
        double horizontal = measured(chart(), "frontCentreXMm");
        Reconcile reconciled = reconciled(chart().with("charted.frontCentreMm", Math.rint(horizontal)));
        assertThat(first(reconciled).key()).isEqualTo("charted.frontCentreMm");
        assertThat(first(reconciled).because()).contains("horizontal");
    }

    @Test
    void aCoverCountedIntoTheStackIsSaidToBe() {
        Bike cockpit = Bikes.redrawn(
                Bikes.plain(),
                Map.of(
                        "cockpit.headsetCoverMm", 20.0,
                        "cockpit.spacersMm", 10.0,
                        "cockpit.stemLengthMm", 90.0,
                        "cockpit.stemAngleDeg", -6.0));
        Reconcile reconciled = reconciled(printed(cockpit).with("frame.stackMm", 534));
        assertThat(suspect(reconciled, "frame.stackMm").because()).contains("cover");
        assertThat(firstGroup(reconciled, false)).contains("frame.stackMm");
    }

    @Test
    void twoWrongNumbersLeaveNoSingleSuspect() {
        Bike wrong = chart().with("charted.wheelbaseMm", 990).with("charted.trailMm", 85);
        assertThat(reconciled(wrong).agrees()).isFalse();
        assertThat(reconciled(wrong).suspects()).isEmpty();
    }

    @Test
    void aBikeWithoutChartedNumbersHasNothingToReconcile() {
        assertThat(reconciled(Bikes.plain()).residuals()).isEmpty();
        assertThat(reconciled(Bikes.plain()).agrees()).isTrue();
    }

    private static Bike chart() {
        return printed(Bikes.plain());
    }

    /** With wheelbase, front-centre, trail and effective top tube as they follow, to the printed step. */
    private static Bike printed(Bike bike) {
        Bike charted = bike;
        for (String name : List.of("wheelbaseMm", "frontCentreMm", "trailMm", "effectiveTopTubeMm")) {
            double step = bike.get("charted.stepMm") > 0 ? bike.get("charted.stepMm") : 1;
            charted = charted.with("charted." + name, Math.rint(measured(bike, name) / step) * step);
        }
        return charted;
    }

    private static double measured(Bike bike, String key) {
        return Vocabulary.standard().measure(key).read(Ride.of(bike)).orNaN();
    }

    private static Reconcile reconciled(Bike bike) {
        return Reconcile.of(Vocabulary.standard(), bike);
    }

    private static Suspect first(Reconcile reconciled) {
        return reconciled.suspects().get(0);
    }

    private static Suspect suspect(Reconcile reconciled, String key) {
        return reconciled.suspects().stream()
                .filter(suspect -> suspect.key().equals(key))
                .findFirst()
                .orElseThrow();
    }
}
