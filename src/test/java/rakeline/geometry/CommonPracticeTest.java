package rakeline.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static rakeline.geometry.Bikes.value;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rakeline.quantity.Measure;

/** What the trade says without a source: every value here is common practice, and only near. */
class CommonPracticeTest {
    @ParameterizedTest(name = "{0}°")
    @CsvSource({"73, 58", "71, 70", "72.5, 61"})
    void aTyreOf25AndAnOffsetOf43GiveTheUsualTrail(double head, double trail) {
        assertThat(value(usual(head), Measures.TRAIL)).isCloseTo(trail, within(0.5));
    }

    @Test
    void aDegreeSlackerAddsAboutSixMillimetresOfTrail() {
        assertThat(slacker(usual(73), Measures.TRAIL)).isCloseTo(6, within(0.3));
    }

    @Test
    void sixMoreMillimetresOfOffsetTakeThatTrailBack() {
        Bike bike = usual(72).with(Inputs.FORK_OFFSET, 43 + 6);
        assertThat(value(bike, Measures.TRAIL)).isCloseTo(value(usual(73), Measures.TRAIL), within(0.5));
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "road XXS, 497, 363, 70.5, 73, 410, 48, 28",
        "road XS, 508, 370, 71.3, 72, 410, 47, 28",
        "endurance XS, 527, 364, 70.8, 77, 420, 50, 32"
    })
    void aDegreeSlackerAdds8Point6To9Point5OfFrontCentreOnASmallFrame(
            String name,
            double stack,
            double reach,
            double head,
            double drop,
            double chainstay,
            double offset,
            double tyre) {
        Bike bike = frame(stack, reach, head, drop, chainstay, offset, tyre);
        assertThat(slacker(bike, Measures.FRONT_CENTRE)).as(name).isBetween(8.6, 9.5);
    }

    @Test
    void aDegreeSlackerAdds10To11OfFrontCentreOnTheLargestFrame() {
        Bike road = frame(593, 403, 73.7, 68, 412, 43, 28);
        assertThat(slacker(road, Measures.FRONT_CENTRE)).isBetween(10.0, 11.0);
    }

    @Test
    void aMillimetreOfOffsetTakesAbout1Point06OfTrail() {
        Bike longer = Bikes.plain().with(Inputs.FORK_OFFSET, 48);
        assertThat(value(longer, Measures.TRAIL) - value(Bikes.plain(), Measures.TRAIL))
                .isCloseTo(-1.06, within(0.005));
    }

    @Test
    void aMillimetreOfOffsetAddsAbout1Point06OfFrontCentre() {
        Bike longer = Bikes.plain().with(Inputs.FORK_OFFSET, 48);
        assertThat(value(longer, Measures.FRONT_CENTRE_X) - value(Bikes.plain(), Measures.FRONT_CENTRE_X))
                .isCloseTo(1.06, within(0.005));
    }

    @Test
    void aDegreeAndSixMillimetresTogetherBuyAboutFifteenOfFrontCentre() {
        Bike road = frame(508, 370, 71.3, 72, 410, 47, 28);
        Bike pushed = Bikes.redrawn(road, Map.of("frame.headAngleDeg", 70.3, "fork.offsetMm", 53.0));
        assertThat(value(pushed, Measures.FRONT_CENTRE) - value(road, Measures.FRONT_CENTRE))
                .isCloseTo(15, within(1.0));
    }

    @ParameterizedTest(name = "{0} mm")
    @CsvSource({"80, 1.4", "100, 1.7", "120, 2.1"})
    void aDegreeSlackerLiftsALevelStem(double stem, double lift) {
        Bike level = Bikes.redrawn(
                usual(73),
                Map.of(
                        "cockpit.headsetCoverMm", 0.0,
                        "cockpit.spacersMm", 0.0,
                        "cockpit.stemClampHeightMm", 20.0,
                        "cockpit.stemLengthMm", stem,
                        "cockpit.stemAngleDeg", -17.0));
        assertThat(slacker(level, Measures.BAR_Y)).isCloseTo(lift, within(0.1));
    }

    @Test
    void aStemThatFalls17IsLevelOn73() {
        Bike bike = Bikes.whole().redraw(Map.of(Inputs.HEAD_ANGLE, 73.0, Inputs.STEM_ANGLE, -17.0));
        assertThat(value(bike, Measures.STEM_RISE)).isZero();
    }

    @Test
    void tenMillimetresOfSpacerBringTheBarThreeBackAndNineAndAHalfUp() {
        Bike bike = Bikes.whole().with(Inputs.HEAD_ANGLE, 72.5);
        Bike raised = bike.with(Inputs.SPACERS, bike.get(Inputs.SPACERS) + 10);
        assertThat(value(raised, Measures.BAR_X) - value(bike, Measures.BAR_X)).isCloseTo(-3, within(0.1));
        assertThat(value(raised, Measures.BAR_Y) - value(bike, Measures.BAR_Y)).isCloseTo(9.5, within(0.1));
    }

    @ParameterizedTest(name = "{0}-622 rolls {1} mm")
    @CsvSource({
        // roll-out tables, read in a secondary copy; the rules for a tyre's radius disagree by up to 1 %
        "20, 2086",
        "23, 2096",
        "25, 2105",
        "28, 2136",
        "32, 2155",
        "35, 2168"
    })
    void theNominalRadiusIsWithinFourMillimetresOfTheRollOutTable(double tyre, double rolled) {
        Bike bike = Bikes.plain().with("wheels.both.tyreMm", tyre);
        assertThat(bike.get(Inputs.FRONT_RADIUS)).isCloseTo(rolled / (2 * Math.PI), within(4.0));
    }

    private static Bike usual(double head) {
        return Bikes.redrawn(
                Bikes.plain(), Map.of("frame.headAngleDeg", head, "fork.offsetMm", 43.0, "wheels.both.tyreMm", 25.0));
    }

    private static Bike frame(
            double stack, double reach, double head, double drop, double chainstay, double offset, double tyre) {
        return Bikes.redrawn(
                Bikes.plain(),
                Map.of(
                        "frame.stackMm", stack,
                        "frame.reachMm", reach,
                        "frame.headAngleDeg", head,
                        "frame.bbDropMm", drop,
                        "frame.chainstayMm", chainstay,
                        "fork.offsetMm", offset,
                        "wheels.both.tyreMm", tyre));
    }

    private static double slacker(Bike bike, Measure<Geometry> measure) {
        Bike slacker = bike.with(Inputs.HEAD_ANGLE, bike.get(Inputs.HEAD_ANGLE) - 1);
        return value(slacker, measure) - value(bike, measure);
    }
}
