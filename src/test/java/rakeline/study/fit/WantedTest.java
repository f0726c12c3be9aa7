package rakeline.study.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rakeline.geometry.Bike;
import rakeline.geometry.Bikes;
import rakeline.geometry.Hands;
import rakeline.geometry.Inputs;
import rakeline.geometry.Setting;
import rakeline.geometry.parts.Category;
import rakeline.quantity.Entries;
import rakeline.quantity.Input;
import rakeline.quantity.Refusal;
import rakeline.rider.BodyTable;
import rakeline.rider.Ridden;
import rakeline.rider.Rider;
import rakeline.rider.RiderInputs;
import rakeline.rider.RiderMeasures;
import rakeline.rider.SaddleTarget.Setback;

/** One rider's contact points on every bicycle, held from the pedal. */
class WantedTest {
    private static final long SEED = 331;
    private static final Bike BIKE = Bikes.whole();
    private static final Wanted WANTED = Wanted.of(BIKE);

    private record Pair(Bike today, Bike frame) {}

    static Stream<Pair> pairs() {
        Random random = new Random(SEED);
        return IntStream.range(0, 50)
                .mapToObj(i -> new Pair(some(random), some(random).named("Frame")));
    }

    private static Bike some(Random random) {
        return BIKE.redraw(Setting.changes(Map.of(
                "crank.lengthMm", 145 + 2.5 * random.nextInt(13),
                "contact.sitXMm", -240.0 + random.nextInt(90),
                "contact.sitYMm", 600.0 + random.nextInt(150),
                "contact.handXMm", 500.0 + random.nextInt(100),
                "frame.reachMm", 350.0 + random.nextInt(50),
                "frame.stackMm", 500.0 + random.nextInt(100))));
    }

    @ParameterizedTest
    @MethodSource("pairs")
    void extensionSetbackAndHandsAreTheSameOnEveryFrame(Pair pair) {
        Bike own = Wanted.of(pair.today()).onOwnCranks().on(pair.frame());
        assertThat(toPedal(own)).isCloseTo(toPedal(pair.today()), within(1e-9));
        assertThat(own.get(Inputs.CRANK_LENGTH)).isEqualTo(pair.frame().get(Inputs.CRANK_LENGTH));
        assertThat(own.get(Inputs.CONTACT_SIT_X)).isEqualTo(pair.today().get(Inputs.CONTACT_SIT_X));
        assertThat(own.get(Inputs.CONTACT_HAND_X)).isEqualTo(pair.today().get(Inputs.CONTACT_HAND_X));
        assertThat(own.get(Inputs.CONTACT_HAND_Y)).isEqualTo(pair.today().get(Inputs.CONTACT_HAND_Y));
    }

    @ParameterizedTest
    @MethodSource("pairs")
    void crankAndShoeOfTheRiderGoOnEveryFrame(Pair pair) {
        Bike shod = pair.today().with(Inputs.TOE_FORWARD, 93);
        Bike worn = Wanted.of(shod).on(pair.frame());
        assertThat(worn.get(Inputs.CRANK_LENGTH)).isEqualTo(shod.get(Inputs.CRANK_LENGTH));
        assertThat(worn.get(Inputs.TOE_FORWARD)).isEqualTo(93);
        assertThat(worn.get(Inputs.CONTACT_SIT_Y)).isEqualTo(shod.get(Inputs.CONTACT_SIT_Y));
    }

    @ParameterizedTest
    @MethodSource("pairs")
    void aSetbackKeptFromThePedalGoesWithTheCrank(Pair pair) {
        Wanted held = Wanted.of(pair.today()).onOwnCranks().holding(new Wanted.Hold(Setback.PEDAL, true));
        Bike own = held.on(pair.frame());
        assertThat(own.get(Inputs.CRANK_LENGTH) - own.get(Inputs.CONTACT_SIT_X))
                .isCloseTo(
                        pair.today().get(Inputs.CRANK_LENGTH) - pair.today().get(Inputs.CONTACT_SIT_X), within(1e-9));
        assertThat(toPedal(own)).isCloseTo(toPedal(pair.today()), within(1e-9));
        assertThat(own.get(Inputs.CONTACT_HAND_X) - own.get(Inputs.CONTACT_SIT_X))
                .isCloseTo(
                        pair.today().get(Inputs.CONTACT_HAND_X) - pair.today().get(Inputs.CONTACT_SIT_X), within(1e-9));
    }

    /** Straight down the leg is not quite in line with BB: 5 mm of crank leave the knee within a third of a degree. */
    @Test
    void aShorterCrankLeavesTheKneeAsItWas() {
        Bike today = BIKE.with(Inputs.CRANK_LENGTH, 170);
        Bike shorter = Wanted.of(today).onOwnCranks().on(today.with(Inputs.CRANK_LENGTH, 165));
        double lifted = Math.hypot(shorter.get(Inputs.CONTACT_SIT_X), shorter.get(Inputs.CONTACT_SIT_Y))
                - Math.hypot(today.get(Inputs.CONTACT_SIT_X), today.get(Inputs.CONTACT_SIT_Y));
        assertThat(lifted).isCloseTo(5, within(1e-9));
        assertThat(knee(shorter)).isCloseTo(knee(today), within(0.35));
        assertThat(knee(today.with(Inputs.CRANK_LENGTH, 165)) - knee(today)).isGreaterThan(1);
    }

    @Test
    void thickerPedalsAndSolesRaiseTheSaddle() {
        Bike today = BIKE.redraw(Setting.changes(Map.of("crank.pedalStackMm", 10.0, "shoe.soleMm", 8.0)));
        Wanted held = Wanted.of(today);
        Bike thick = held.leaving(List.of(Inputs.PEDAL_STACK, Inputs.SOLE))
                .on(today.redraw(Setting.changes(Map.of("crank.pedalStackMm", 14.0, "shoe.soleMm", 9.0))));
        assertThat(toPedal(thick) - toPedal(today)).isCloseTo(5, within(1e-9));
        assertThat(held.leaving(List.of(Inputs.PEDAL_STACK)).on(BIKE).get(Inputs.CONTACT_SIT_Y))
                .isEqualTo(660);
    }

    @Test
    void aCrankThatLeavesNoRoomForTheSetbackIsRefused() {
        Bike low = BIKE.redraw(
                Setting.changes(Map.of("contact.sitXMm", -400.0, "contact.sitYMm", 200.0, "crank.lengthMm", 160.0)));
        Wanted held = Wanted.of(low).onOwnCranks();
        assertThatThrownBy(() -> held.on(low.named("Long").with(Inputs.CRANK_LENGTH, 220)))
                .isInstanceOf(Refusal.class)
                .hasMessageContainingAll("Long", "400 mm", "setback");
    }

    @Test
    void aRidersOwnCrankGoesOnEveryBikeAndHoldsTheSaddle() {
        Map<Input, Double> own = new HashMap<>(Setting.changes(Map.of(
                "contact.sitXMm", -190.0,
                "contact.sitYMm", 640.0,
                "contact.handXMm", 520.0,
                "contact.handYMm", 610.0,
                "crank.lengthMm", 160.0)));
        Rider rider = rider(own);
        assertThat(rider.on(BIKE).get(Inputs.CRANK_LENGTH)).isEqualTo(160);
        Bike left = Wanted.of(rider).onOwnCranks().on(BIKE);
        assertThat(toPedal(left)).isCloseTo(Math.hypot(190, 640) + 160, within(1e-9));
    }

    @Test
    void aCleatMovedTowardTheHeelTakesTheToeForward() {
        Rider rider = rider(Map.of(Inputs.TOE_FORWARD, 95.0));
        assertThat(rider.with(RiderInputs.CLEAT_SETBACK, 8).own()).containsEntry(Inputs.TOE_FORWARD, 103.0);
    }

    @Test
    void everyCrankOfAStockSeatsTheRiderTheSame() {
        List<Option> options = Match.of(
                        BIKE,
                        BIKE,
                        Stocks.of(Map.of(
                                Category.CRANKS,
                                Stocks.parts(Category.CRANKS, Stocks.row(155), Stocks.row(165), Stocks.row(172.5)))))
                .all()
                .options();
        assertThat(options)
                .hasSize(3)
                .allSatisfy(option -> assertThat(toPedal(option.bike())).isCloseTo(toPedal(BIKE), within(1e-9)));
    }

    @Test
    void whatIsKeptIsSaid() {
        assertThat(WANTED.held()).contains("held from the pedal", "setback behind BB", "hands kept from BB");
    }

    private static double toPedal(Bike bike) {
        return Math.hypot(bike.get(Inputs.CONTACT_SIT_X), bike.get(Inputs.CONTACT_SIT_Y))
                + bike.get(Inputs.CRANK_LENGTH);
    }

    private static double knee(Bike bike) {
        Ridden ridden = Ridden.of(bike, Optional.of(rider(Map.of())), Hands.HOODS);
        return RiderMeasures.KNEE_FLEXION_BOTTOM.read(ridden).orNaN();
    }

    private static Rider rider(Map<Input, Double> own) {
        Entries body = Entries.none()
                .with(Map.of(RiderInputs.STATURE, 1700.0, RiderInputs.INSEAM, 800.0, RiderInputs.MASS, 65.0));
        return Rider.of("Rider", body, BodyTable.CADAVERS_1955, own);
    }
}
