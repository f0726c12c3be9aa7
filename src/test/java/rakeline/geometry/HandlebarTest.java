package rakeline.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import rakeline.geometry.parts.Part;
import rakeline.quantity.Entries;
import rakeline.quantity.Refusal;

/** Bars with levers carry their hood point; bars without say where it is. */
class HandlebarTest {
    private static final Bike OLD = Bikes.whole();
    private static final Bike BIKE =
            OLD.redraw(Setting.changes(Map.of("cockpit.bar.lever.aheadMm", 35.0, "cockpit.bar.lever.upMm", 15.0)));

    @Test
    void leversOnTheBarsReachPutTheHoodsWhereTheyWere() {
        assertThat(BIKE.get(Inputs.HOOD_FORWARD)).isEqualTo(110);
        assertThat(BIKE.given().has(Inputs.HOOD_FORWARD)).isFalse();
        assertThat(hoods(BIKE)).isEqualTo(hoods(OLD));
    }

    @Test
    void aShorterReachBringsTheHoodsBackByAsMuch() {
        Point moved = hoods(BIKE.with(Inputs.BAR_REACH, 60)).minus(hoods(BIKE));
        assertThat(moved.x()).isCloseTo(-15, within(1e-9));
        assertThat(moved.y()).isZero();
    }

    @Test
    void aReachDrawnOnABarWithoutLeversLeavesTheHoods() {
        assertThat(hoods(OLD.with(Inputs.BAR_REACH, 60))).isEqualTo(hoods(OLD));
    }

    /** (75 + 35, 15) and (75, −120) turned by 7° about the clamp, written out. */
    @Test
    void aTurnedBarTurnsHoodsAndDropsAboutTheClamp() {
        Bike turned = BIKE.with(Inputs.BAR_ROTATION, 7);
        double cos = Math.cos(Math.toRadians(7));
        double sin = Math.sin(Math.toRadians(7));
        Point clamp = Geometry.of(BIKE).cockpit().orElseThrow().clamp();
        assertThat(hoods(turned).x()).isCloseTo(clamp.x() + 110 * cos - 15 * sin, within(1e-9));
        assertThat(hoods(turned).y()).isCloseTo(clamp.y() + 110 * sin + 15 * cos, within(1e-9));
        Point drops = at(turned, Hands.DROPS);
        assertThat(drops.x()).isCloseTo(clamp.x() + 75 * cos + 120 * sin, within(1e-9));
        assertThat(drops.y()).isCloseTo(clamp.y() + 75 * sin - 120 * cos, within(1e-9));
    }

    @Test
    void aHoodPointThatIsGivenTurnsWithTheBar() {
        Bike turned = OLD.with(Inputs.BAR_ROTATION, 7);
        assertThat(hoods(turned).minus(hoods(BIKE.with(Inputs.BAR_ROTATION, 7))).length())
                .isCloseTo(0, within(1e-9));
    }

    @Test
    void hoodsDrawnElsewhereMoveTheLevers() {
        Bike drawn = BIKE.with(Inputs.BAR_ROTATION, 5).with(Inputs.HOOD_FORWARD, 120);
        assertThat(drawn.get(Inputs.HOOD_FORWARD)).isCloseTo(120, within(1e-9));
        assertThat(drawn.get(Inputs.BAR_REACH)).isEqualTo(75);
        assertThat(drawn.given().has(Inputs.HOOD_FORWARD)).isFalse();
    }

    @Test
    void flareSetsTheHandsInTheDropsWider() {
        double half = handPoint(BIKE.with(Inputs.BAR_FLARE, 16), Hands.DROPS).halfWidthMm();
        assertThat(half).isCloseTo(200 + 120 * Math.tan(Math.toRadians(16)), within(1e-9));
        assertThat(handPoint(BIKE.with(Inputs.BAR_FLARE, 16), Hands.HOODS).halfWidthMm())
                .isEqualTo(200);
    }

    @Test
    void aRefitTurnsTheBarWithTheFrame() {
        Bike refitted = Refit.of(BIKE, Setting.changes(Map.of("fork.axleToCrownMm", 397.0)))
                .bike();
        Bike old = Refit.of(OLD, Setting.changes(Map.of("fork.axleToCrownMm", 397.0)))
                .bike();
        assertThat(hoods(refitted).minus(hoods(old)).length()).isCloseTo(0, within(1e-9));
        assertThat(at(refitted, Hands.DROPS).minus(at(old, Hands.DROPS)).length())
                .isCloseTo(0, within(1e-9));
        assertThat(refitted.get(Inputs.BAR_REACH)).isEqualTo(75);
    }

    @Test
    void leversAndAHoodPointThatAgreeAreOne() {
        assertThat(given(110).get(Inputs.HOOD_FORWARD)).isEqualTo(110);
    }

    @Test
    void leversAndAHoodPointThatContradictEachOtherAreRefused() {
        assertThatThrownBy(() -> given(100))
                .isInstanceOf(Refusal.class)
                .hasMessageContainingAll("100 mm", "110 mm", "levers");
    }

    @Test
    void leversWithoutAReachAreRefused() {
        Entries none = BIKE.given().with(Inputs.BAR_REACH, Double.NaN);
        assertThatThrownBy(() -> Bike.of("Bar", none, BIKE.groups(), Map.of()))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("cockpit.bar.reachMm");
    }

    @Test
    void aBarWithNeitherIsRefused() {
        Set<String> groups = new HashSet<>(OLD.groups());
        assertThatThrownBy(() -> Bike.of("Bar", OLD.given().with(Inputs.HOOD_FORWARD, Double.NaN), groups, Map.of()))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("cockpit.bar.hoodForwardMm");
    }

    @Test
    void anotherBarBringsTheHoodsOfABikeWithoutLeversAlongByItsReach() {
        Part bar = new Part(Map.of(Inputs.BAR_WIDTH, 420.0, Inputs.BAR_REACH, 60.0));
        assertThat(hoods(OLD.redraw(bar.on(OLD))).x()).isCloseTo(hoods(OLD).x() - 15, within(1e-9));
        assertThat(hoods(BIKE.redraw(bar.on(BIKE))).x()).isCloseTo(hoods(BIKE).x() - 15, within(1e-9));
    }

    @Test
    void aBarThatSaysWhereItsHoodsAreIsTakenAtItsWord() {
        Part bar = new Part(Map.of(Inputs.HOOD_FORWARD, 100.0, Inputs.HOOD_RISE, 5.0, Inputs.BAR_REACH, 60.0));
        assertThat(OLD.redraw(bar.on(OLD)).get(Inputs.HOOD_FORWARD)).isEqualTo(100);
        assertThat(BIKE.redraw(bar.on(BIKE)).get(Inputs.HOOD_FORWARD)).isEqualTo(100);
    }

    @Test
    void theFramesOwnMinimumForThePostCountsWhereItIsMore() {
        double by = Bikes.value(BIKE, Measures.POST_INSERTION_LEFT);
        assertThat(Bikes.value(BIKE.with(Inputs.FRAME_POST_MINIMUM_INSERTION, 100), Measures.POST_INSERTION_LEFT))
                .isEqualTo(by - 20);
        assertThat(Bikes.value(BIKE.with(Inputs.FRAME_POST_MINIMUM_INSERTION, 60), Measures.POST_INSERTION_LEFT))
                .isEqualTo(by);
    }

    private static Bike given(double hoodForward) {
        return Bike.of("Bar", BIKE.given().with(Inputs.HOOD_FORWARD, hoodForward), BIKE.groups(), Map.of());
    }

    private static Point hoods(Bike bike) {
        return at(bike, Hands.HOODS);
    }

    private static Point at(Bike bike, Hands hands) {
        return handPoint(bike, hands).at();
    }

    private static HandPoint handPoint(Bike bike, Hands hands) {
        return Geometry.of(bike, hands).handPoint().orElseThrow();
    }
}
