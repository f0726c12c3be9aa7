package rakeline.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rakeline.geometry.Bike;
import rakeline.geometry.Bikes;
import rakeline.geometry.Inputs;
import rakeline.geometry.Measures;
import rakeline.geometry.Refit;
import rakeline.geometry.Setting;
import rakeline.geometry.ToeMeasures;
import rakeline.handling.Ride;
import rakeline.quantity.Measure;
import rakeline.quantity.Numbers;
import rakeline.quantity.Quantity;
import rakeline.quantity.Reading;
import rakeline.quantity.Refusal;
import rakeline.quantity.Unit;

/** One input across a range, and what is held meanwhile. */
class SweepTest {
    private static final double EXACT = 1e-9;

    @Test
    void aSweepReadsEachMeasureOnTheRedrawnBike() {
        Swept swept = sweep(Bikes.plain(), "frame.headAngleDeg", Steps.of(69, 74, 0.5), "trailMm");
        for (int i = 0; i < swept.sweep().steps().size(); i++) {
            Bike bike =
                    Bikes.plain().with(Inputs.HEAD_ANGLE, swept.sweep().steps().at(i));
            assertThat(column(swept, 0).at(i)).isEqualTo(Bikes.value(bike, Measures.TRAIL));
        }
    }

    @Test
    void anInputMayBeTrackedBesideMeasures() {
        Swept swept = sweep(Bikes.plain(), "wheels.both.tyreMm", Steps.of(28, 32, 2), "wheels.rear.radiusMm");
        assertThat(column(swept, 0).toArray()).containsExactly(339, 341, 343);
    }

    @Test
    void theValueOnTheBikeAsItIsIsKept() {
        Swept swept = sweep(Bikes.plain(), "frame.headAngleDeg", Steps.of(72, 74, 1), "trailMm");
        assertThat(swept.columns().get(0).here()).isEqualTo(Bikes.value(Bikes.plain(), Measures.TRAIL));
        assertThat(swept.sweep().here()).isEqualTo(70.5);
    }

    @Test
    void heldTrailTakesTheOffsetOfItsClosedForm() {
        // trail = (R cos α − f)/sin α
        double trail = Bikes.value(Bikes.plain(), Measures.TRAIL);
        Swept swept =
                held(Bikes.plain(), "frame.headAngleDeg", Steps.of(69, 74, 0.25), measure("trailMm"), "fork.offsetMm");
        for (int i = 0; i < swept.sweep().steps().size(); i++) {
            double alpha = Math.toRadians(swept.sweep().steps().at(i));
            double offset = 339 * Math.cos(alpha) - trail * Math.sin(alpha);
            assertThat(column(swept, 0).at(i)).isCloseTo(offset, within(EXACT));
        }
    }

    @Test
    void aMeasureMayBeHeldAtAGivenValue() {
        Hold hold = new Hold(measure("trailMm"), 58, Setting.of("fork.offsetMm"));
        Swept swept =
                run(Bikes.plain(), "frame.headAngleDeg", Steps.of(69, 74, 0.5), Optional.of(hold), tracks("trailMm"));
        assertThat(column(swept, 0).stream())
                .allSatisfy(trail -> assertThat(trail).isCloseTo(58, within(EXACT)));
    }

    @Test
    void whatIsHeldIsNamedWithItsValueAndItsInput() {
        Swept swept =
                held(Bikes.plain(), "frame.headAngleDeg", Steps.of(69, 74, 1), measure("trailMm"), "fork.offsetMm");
        assertThat(swept.held()).contains("trail at 70.2 mm", "fork offset");
    }

    @Test
    void heldToeRoomIsHeld() {
        Swept swept = run(
                Bikes.withFoot(),
                "frame.headAngleDeg",
                Steps.of(70, 73, 0.5),
                Optional.of(new Hold(measure("toeRoomMm"), Double.NaN, Setting.of("frame.reachMm"))),
                tracks("toeRoomMm", "frame.reachMm"));
        double start = Bikes.value(Bikes.withFoot(), ToeMeasures.TOE_ROOM);
        assertThat(swept.gaps()).isEmpty();
        assertThat(column(swept, 0).stream())
                .allSatisfy(room -> assertThat(room).isCloseTo(start, within(1e-3)));
    }

    @Test
    void heldToeRoomMayBeSolvedByTheFork() {
        Swept swept = run(
                Bikes.withFoot(),
                "frame.headAngleDeg",
                Steps.of(70, 72, 0.5),
                Optional.of(new Hold(measure("toeRoomMm"), Double.NaN, Setting.of("fork.offsetMm"))),
                tracks("toeRoomMm"));
        double start = Bikes.value(Bikes.withFoot(), ToeMeasures.TOE_ROOM);
        assertThat(column(swept, 0).stream())
                .allSatisfy(room -> assertThat(room).isCloseTo(start, within(1e-3)));
    }

    @ParameterizedTest
    @ValueSource(doubles = {60, -60})
    void ofTwoSolutionsTheOneOfTheStartIsKept(double start) {
        // offset² + chainstay = 60² + 410 has the solutions ±√(…)
        Bike bike = Bikes.plain().with(Inputs.FORK_OFFSET, start);
        Swept swept = held(bike, "frame.chainstayMm", Steps.of(400, 900, 50), square(), "fork.offsetMm");
        for (int i = 0; i < swept.sweep().steps().size(); i++) {
            double offset =
                    Math.copySign(Math.sqrt(3600 + 410 - swept.sweep().steps().at(i)), start);
            assertThat(column(swept, 0).at(i)).isCloseTo(offset, within(EXACT));
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {60, -60})
    void theBranchOfTheStartIsKeptWhereTheStartLiesOutside(double start) {
        Bike bike = Bikes.plain().with(Inputs.FORK_OFFSET, start);
        Swept swept = held(bike, "frame.chainstayMm", Steps.of(1000, 800, 50), square(), "fork.offsetMm");
        assertThat(column(swept, 0).stream())
                .allSatisfy(offset -> assertThat(offset * start).isPositive());
        assertThat(column(swept, 0).at(4)).isCloseTo(Math.copySign(Math.sqrt(3210), start), within(EXACT));
    }

    @Test
    void theBranchIsKeptWhereBothSolutionsComeNear() {
        // offset² + 9 chainstay: the solutions close in on each other towards chainstay 454.9
        Bike bike = Bikes.plain().with(Inputs.FORK_OFFSET, 20.1);
        Measure<Ride> steep = fixture(of -> Math.pow(of.get(Inputs.FORK_OFFSET), 2) + 9 * of.get(Inputs.CHAINSTAY));
        Swept swept = held(bike, "frame.chainstayMm", Steps.of(300, 454.8, 0.2), steep, "fork.offsetMm");
        assertThat(column(swept, 0).stream())
                .allSatisfy(offset -> assertThat(offset).isPositive());
    }

    @Test
    void whereTheBranchEndsThereIsAGapThoughAnotherSolutionIsLeft() {
        // offset³/900 − 3·offset + chainstay: the branch of the start folds back; another one goes on far away
        Measure<Ride> folded = fixture(of -> Math.pow(of.get(Inputs.FORK_OFFSET), 3) / 900
                - 3 * of.get(Inputs.FORK_OFFSET)
                + of.get(Inputs.CHAINSTAY));
        Bike bike = Bikes.redrawn(Bikes.plain(), Map.of("fork.offsetMm", 35.0, "frame.chainstayMm", 410.0));
        Swept swept = held(bike, "frame.chainstayMm", Steps.of(380, 460, 1), folded, "fork.offsetMm");
        assertThat(column(swept, 0).stream().filter(Double::isFinite))
                .allSatisfy(offset -> assertThat(offset).isGreaterThan(29.9));
        assertThat(swept.gaps()).isNotEmpty();
    }

    @Test
    void aJumpOverTheTargetIsNoSolution() {
        Measure<Ride> jump = fixture(of -> of.get(Inputs.FORK_OFFSET) < 50 ? -1 : 1);
        Hold hold = new Hold(jump, 0, Setting.of("fork.offsetMm"));
        Swept swept = run(
                Bikes.plain(), "frame.chainstayMm", Steps.of(400, 410, 5), Optional.of(hold), tracks("fork.offsetMm"));
        assertThat(swept.gaps()).hasSize(3);
    }

    @Test
    void ofTwoSolutionsTheNearerIsTaken() {
        // 3 is reached at 51, 4 mm above the start, and at 44, 3 mm below it
        Measure<Ride> vee = fixture(of -> {
            double away = of.get(Inputs.FORK_OFFSET) - 47;
            return away > 0 ? 0.75 * away : -away;
        });
        Hold hold = new Hold(vee, 3, Setting.of("fork.offsetMm"));
        Swept swept = run(
                Bikes.plain(), "frame.chainstayMm", Steps.of(410, 412, 1), Optional.of(hold), tracks("fork.offsetMm"));
        assertThat(column(swept, 0).at(0)).isCloseTo(44, within(EXACT));
    }

    @Test
    void aStepThatNoInputReachesIsAGapWithItsReason() {
        Swept swept =
                held(Bikes.plain(), "frame.headAngleDeg", Steps.of(55, 84, 1), measure("trailMm"), "fork.offsetMm");
        assertThat(swept.gaps())
                .isNotEmpty()
                .allSatisfy(
                        gap -> assertThat(gap.reason()).contains("no fork offset of −100..120 mm", "brings trail to"));
        assertThat(column(swept, 0).at(5)).isCloseTo(offsetFor(60), within(EXACT));
    }

    @Test
    void aGapStandsWhereTheMeasureHasNoValue() {
        Bike bike = Bikes.withFoot().with(Inputs.TOE_FORWARD, 80);
        Swept swept = sweep(bike, "shoe.toeForwardMm", Steps.of(70, 110, 10), "toeContactSteerDeg");
        assertThat(swept.gaps().get(0).key()).isEqualTo("toeContactSteerDeg");
        assertThat(column(swept, 0).at(0)).isNaN();
        assertThat(column(swept, 0).at(4)).isPositive();
    }

    @Test
    void gapsComeInTheOrderOfTheSteps() {
        Swept swept =
                held(Bikes.plain(), "frame.headAngleDeg", Steps.of(50, 85, 1), measure("trailMm"), "fork.offsetMm");
        assertThat(swept.gaps().stream().map(Swept.Gap::step).toList()).isSorted();
    }

    @Test
    void wheelsAreRefittedUnlessSaidOtherwise() {
        assertThat(Stream.of("wheels.front.tyreMm", "wheels.both.radiusMm", "fork.axleToCrownMm", "fork.sagMm")
                        .map(Setting::of)
                        .map(Mode::usualFor))
                .containsOnly(Mode.REFIT);
    }

    @Test
    void anythingElseIsRedrawn() {
        assertThat(Stream.of("frame.headAngleDeg", "fork.offsetMm", "crank.lengthMm", "cockpit.stemLengthMm")
                        .map(Setting::of)
                        .map(Mode::usualFor))
                .containsOnly(Mode.REDRAW);
    }

    @Test
    void aRefittedSweepIsThatOfRefits() {
        Swept swept = sweep(Bikes.whole(), "wheels.front.tyreMm", Steps.of(28, 40, 4), "frame.headAngleDeg");
        for (int i = 0; i < 4; i++) {
            Map<String, Double> tyre =
                    Map.of("wheels.front.tyreMm", swept.sweep().steps().at(i));
            assertThat(column(swept, 0).at(i))
                    .isEqualTo(Refit.of(Bikes.whole(), Setting.changes(tyre))
                            .bike()
                            .get(Inputs.HEAD_ANGLE));
        }
    }

    @Test
    void theTitleSaysWhichItWas() {
        assertThat(sweep(Bikes.whole(), "wheels.front.tyreMm", Steps.of(28, 40, 4), "trailMm")
                        .title())
                .contains("refitted")
                .contains("28 to 40 mm");
        assertThat(sweep(Bikes.whole(), "frame.headAngleDeg", Steps.of(69, 74, 1), "trailMm")
                        .title())
                .contains("redrawn")
                .contains("69 to 74°");
    }

    @Test
    void aRedrawOfAWheelSaysThatTheDropWasHeld() {
        Sweep sweep = new Sweep(
                Ride.of(Bikes.whole()),
                Setting.of("wheels.both.tyreMm"),
                Steps.of(28, 40, 4),
                Mode.REDRAW,
                Optional.empty(),
                tracks("trailMm"));
        assertThat(sweep.run().held()).contains("BB drop");
    }

    @Test
    void cautionsOfWhatIsSweptAndTrackedAreGivenOnce() {
        Swept swept = sweep(Bikes.withFoot(), "wheels.front.tyreMm", Steps.of(28, 32, 4), "toeRoomMm", "pedalToTyreMm");
        assertThat(swept.cautions()).doesNotHaveDuplicates().hasSize(2);
    }

    @Test
    void anEndOutOfRangeIsRefused() {
        refused(() -> sweep(Bikes.plain(), "frame.headAngleDeg", Steps.of(40, 74, 1), "trailMm"), "50..85");
        refused(() -> sweep(Bikes.plain(), "frame.headAngleDeg", Steps.of(70, 86, 1), "trailMm"), "50..85");
    }

    @Test
    void aTrackedMeasureWithoutItsGroupIsRefused() {
        refused(
                () -> sweep(Bikes.plain(), "frame.headAngleDeg", Steps.of(70, 74, 1), "toeRoomMm"),
                "toeRoomMm",
                "cranks and a shoe");
    }

    @Test
    void theSweptInputCannotBeSolvedFor() {
        refused(
                () -> held(Bikes.plain(), "fork.offsetMm", Steps.of(40, 50, 1), measure("trailMm"), "fork.offsetMm"),
                "fork.offsetMm");
        refused(
                () -> held(
                        Bikes.plain(),
                        "wheels.both.tyreMm",
                        Steps.of(28, 32, 1),
                        measure("trailMm"),
                        "wheels.front.tyreMm"),
                "wheels.both.tyreMm");
    }

    @Test
    void anInputThatIsNotGivenCannotBeSolvedFor() {
        refused(
                () -> held(
                        Bikes.plain(),
                        "frame.headAngleDeg",
                        Steps.of(70, 72, 1),
                        measure("trailMm"),
                        "wheels.front.mudguardGapMm"),
                "wheels.front.mudguardGapMm",
                "does not give");
    }

    @Test
    void aMeasureWithoutAValueAtTheStartCannotBeHeldThere() {
        Bike clear = Bikes.withFoot().with(Inputs.TOE_FORWARD, 80);
        refused(
                () -> held(
                        clear,
                        "frame.headAngleDeg",
                        Steps.of(70, 72, 1),
                        measure("toeContactSteerDeg"),
                        "fork.offsetMm"),
                "toeContactSteerDeg");
    }

    @ParameterizedTest
    @ValueSource(strings = {"frame.headAngleDeg", "fork.lowerStackMm"})
    void aNumberOfTheFrameCannotBeRefitted(String key) {
        refused(
                () -> new Sweep(
                                Ride.of(Bikes.whole()),
                                Setting.of(key),
                                Steps.of(60, 50.5, 5),
                                Mode.REFIT,
                                Optional.empty(),
                                tracks("trailMm"))
                        .run(),
                key,
                "rigid");
    }

    @Test
    void aForkOfUnknownLengthCannotBeRefitted() {
        refused(
                () -> sweep(Bikes.plain(), "fork.axleToCrownMm", Steps.of(370, 380, 1), "trailMm"),
                "fork.axleToCrownMm");
    }

    @Test
    void aSweepOfNothingIsRefused() {
        refused(() -> run(Bikes.plain(), "frame.headAngleDeg", Steps.of(70, 72, 1), Optional.empty(), List.of()), "");
    }

    private static double offsetFor(double headDeg) {
        double alpha = Math.toRadians(headDeg);
        return 339 * Math.cos(alpha) - Bikes.value(Bikes.plain(), Measures.TRAIL) * Math.sin(alpha);
    }

    private static Measure<Ride> square() {
        return fixture(bike -> Math.pow(bike.get(Inputs.FORK_OFFSET), 2) + bike.get(Inputs.CHAINSTAY));
    }

    private static Measure<Ride> fixture(java.util.function.ToDoubleFunction<Bike> formula) {
        return new Measure<>(
                Quantity.of("fixtureMm", "Fixture", Unit.MILLIMETRE, "For a test.")
                        .declared(),
                geometry -> Reading.of(formula.applyAsDouble(geometry.bike())));
    }

    private static Measure<Ride> measure(String key) {
        return Vocabulary.standard().measure(key);
    }

    private static List<Measure<Ride>> tracks(String... keys) {
        return Stream.of(keys).map(Vocabulary.standard()::tracked).toList();
    }

    private static Swept sweep(Bike bike, String key, Numbers steps, String... tracked) {
        return run(bike, key, steps, Optional.empty(), tracks(tracked));
    }

    private static Swept held(Bike bike, String key, Numbers steps, Measure<Ride> held, String by) {
        return run(bike, key, steps, Optional.of(new Hold(held, Double.NaN, Setting.of(by))), tracks(by));
    }

    private static Swept run(Bike bike, String key, Numbers steps, Optional<Hold> hold, List<Measure<Ride>> tracked) {
        Setting setting = Setting.of(key);
        return new Sweep(Ride.of(bike), setting, steps, Mode.usualFor(setting), hold, tracked).run();
    }

    private static Numbers column(Swept swept, int index) {
        return swept.columns().get(index).values();
    }

    private static void refused(org.assertj.core.api.ThrowableAssert.ThrowingCallable call, String... words) {
        assertThatThrownBy(call)
                .isInstanceOf(Refusal.class)
                .satisfies(refusal -> assertThat(List.of(words))
                        .allSatisfy(word -> assertThat(refusal).hasMessageContaining(word)));
    }

    /** D: trail = (R cos α − f)/sin α; head angle 0.2°, offset 1, radius 2 (check-values 7), at each head angle. */
    private static double offOfTrail(double headDeg) {
        double alpha = Math.toRadians(headDeg);
        double byHead = (47 * Math.cos(alpha) - 339) / Math.pow(Math.sin(alpha), 2) * Math.toRadians(0.2);
        return Math.sqrt(byHead * byHead + 1 / Math.pow(Math.sin(alpha), 2) + 4 / Math.pow(Math.tan(alpha), 2));
    }

    private static Swept uncertain(rakeline.geometry.Bike bike, String key, double from, double to, double step) {
        return new Sweep(
                        rakeline.handling.Ride.of(bike),
                        rakeline.geometry.Setting.of("frame.headAngleDeg"),
                        Steps.of(from, to, step),
                        Mode.REDRAW,
                        java.util.Optional.empty(),
                        java.util.List.of(Vocabulary.standard().tracked(key)))
                .runWithUncertainty();
    }

    @Test
    void theUncertaintyAlongASweepFollowsTheClosedFormOfTrailAtEachStep() {
        Swept swept = uncertain(rakeline.geometry.Bikes.plain(), "trailMm", 68, 75, 1);
        for (int step = 0; step < swept.sweep().steps().size(); step++) {
            double closed = offOfTrail(swept.sweep().steps().at(step));
            assertThat(swept.columns().get(0).uncertainties().at(step)).isCloseTo(closed, within(1e-6 * closed));
        }
    }

    /** Each alone is read where it is, not filled between others. */
    @Test
    void theUncertaintyOfToeRoomInALongSweepIsThatOfEachStepAlone() {
        Swept swept = uncertain(rakeline.geometry.Bikes.withFoot(), "toeRoomMm", 68, 74, 0.03);
        for (int step : new int[] {0, 5, 41, 103, 150, 199}) {
            double at = swept.sweep().steps().at(step);
            double alone = uncertain(rakeline.geometry.Bikes.withFoot(), "toeRoomMm", at, at + 0.03, 0.03)
                    .columns()
                    .get(0)
                    .uncertainties()
                    .at(0);
            assertThat(swept.columns().get(0).uncertainties().at(step)).isCloseTo(alone, within(1e-5 * alone));
        }
    }

    @Test
    void anUncertaintyThatMisleadsIsWithheldWhereToeAndTyreBarelyMeet() {
        Swept swept = uncertain(rakeline.geometry.Bikes.withFoot(), "toeContactSteerDeg", 62, 76, 0.1);
        double[] values = swept.columns().get(0).values().stream().toArray();
        double[] off = swept.columns().get(0).uncertainties().stream().toArray();
        boolean withheld = java.util.stream.IntStream.range(0, values.length)
                .anyMatch(i -> !Double.isNaN(values[i]) && Double.isNaN(off[i]));
        boolean alone = java.util.stream.IntStream.range(0, values.length)
                .anyMatch(i -> Double.isNaN(values[i]) && !Double.isNaN(off[i]));
        assertThat(withheld).isTrue();
        assertThat(alone).isFalse();
    }

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void onSeveralThreadsASweepIsTheSameToTheLastBit(boolean held) {
        Optional<Hold> hold = held
                ? Optional.of(new Hold(Rides.measure("trailMm"), Double.NaN, Setting.of("fork.offsetMm")))
                : Optional.empty();
        Sweep sweep = new Sweep(
                Ride.of(Bikes.withFoot()),
                Setting.of("frame.headAngleDeg"),
                Steps.of(50, 85, 0.25),
                Mode.REDRAW,
                hold,
                Rides.tracks("trailMm", "toeRoomMm", "toeContactSteerDeg"));
        Swept alone = sweep.run(Crew.of(1), Progress.UNWATCHED);
        Swept together = sweep.run(Crew.of(4), Progress.UNWATCHED);
        assertThat(together.columns()).isEqualTo(alone.columns());
        assertThat(together.gaps()).isEqualTo(alone.gaps()).isNotEmpty();
    }

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void aSweepThatIsToldToStopDoes(boolean held) {
        Optional<Hold> hold = held
                ? Optional.of(new Hold(Rides.measure("trailMm"), Double.NaN, Setting.of("fork.offsetMm")))
                : Optional.empty();
        Sweep sweep = new Sweep(
                Ride.of(Bikes.withFoot()),
                Setting.of("frame.headAngleDeg"),
                Steps.of(66, 76, 0.0005),
                Mode.REDRAW,
                hold,
                Rides.tracks("toeRoomMm"));
        assertThatThrownBy(() -> sweep.run(Crew.of(2), share -> share < 0.01))
                .isInstanceOf(CancellationException.class);
        Thread.currentThread().interrupt();
        assertThatThrownBy(() -> sweep.run(Crew.of(2), Progress.UNWATCHED)).isInstanceOf(CancellationException.class);
        assertThat(Thread.interrupted()).isTrue();
    }
}
