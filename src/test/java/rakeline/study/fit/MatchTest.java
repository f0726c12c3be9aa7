package rakeline.study.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static rakeline.study.fit.Stocks.parts;
import static rakeline.study.fit.Stocks.row;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import rakeline.geometry.Bike;
import rakeline.geometry.Bikes;
import rakeline.geometry.Geometry;
import rakeline.geometry.Inputs;
import rakeline.geometry.Measures;
import rakeline.geometry.Refit;
import rakeline.geometry.Setting;
import rakeline.geometry.ToeMeasures;
import rakeline.geometry.parts.Bound;
import rakeline.geometry.parts.Category;
import rakeline.geometry.parts.Part;
import rakeline.geometry.parts.Spacers;
import rakeline.geometry.parts.Stock;
import rakeline.quantity.Limit;
import rakeline.quantity.Measure;
import rakeline.quantity.Refusal;

/** Stock parts on a frame, and what is said of them. */
class MatchTest {
    private static final Bike BIKE = Bikes.whole();
    private static final List<Part> STEMS = parts(Category.STEMS, row(80, -6), row(90, -6), row(100, -6), row(90, 6));
    private static final Stock STOCK = Stocks.of(Map.of(Category.STEMS, STEMS), 5, 10);

    @Test
    void aFrameMatchedToItselfFindsItsOwnParts() {
        Bike asBuilt = wantedAt(hood(BIKE, Measures.HAND_X), hood(BIKE, Measures.HAND_Y));
        Option best = Match.of(asBuilt, asBuilt, STOCK).best(1).first();
        assertThat(best.bike()).isEqualTo(asBuilt);
        assertThat(best.distanceMm()).isZero();
    }

    @Test
    void theMissIsTheOptionsHoodsMinusTheWantedOnes() {
        Bike lower = wantedAt(hood(BIKE, Measures.HAND_X) - 3, hood(BIKE, Measures.HAND_Y) - 4);
        Option same = Match.of(lower, lower, Stocks.of(Map.of())).best(1).first();
        assertThat(same.get("handDxMm")).isCloseTo(3, within(1e-9));
        assertThat(same.get("handDyMm")).isCloseTo(4, within(1e-9));
        assertThat(same.get("distanceMm")).isCloseTo(5, within(1e-9));
    }

    /** The sit point put together from its parts: up the post, back over the setback, along the rails. */
    @Test
    void postAndRailsMeetTheSitPoint() {
        Option option = Match.of(BIKE, wantedAt(540, 610), STOCK).best(1).first();
        Bike bike = option.bike();
        double tubeRad = Math.toRadians(bike.get("frame.seatTubeAngleDeg"));
        double seatRad = Math.toRadians(bike.get("frame.seatAngleDeg"));
        double at = bike.get("frame.seatAngleAtMm");
        double along = bike.get("frame.seatTubeMm") + option.get("postExtensionMm");
        double offAxis = -at / Math.tan(seatRad) * Math.sin(tubeRad) + at * Math.cos(tubeRad);
        double x = offAxis * Math.sin(tubeRad)
                - along * Math.cos(tubeRad)
                - bike.get("seatpost.setbackMm") * Math.sin(tubeRad)
                - bike.get("saddle.sitBehindRailsMm")
                + option.get("railShiftMm");
        double y = offAxis * Math.cos(tubeRad)
                + along * Math.sin(tubeRad)
                - bike.get("seatpost.setbackMm") * Math.cos(tubeRad)
                + bike.get("saddle.railToTopMm");
        assertThat(x).isCloseTo(bike.get("contact.sitXMm"), within(1e-9));
        assertThat(y).isCloseTo(bike.get("contact.sitYMm"), within(1e-9));
    }

    @Test
    void aStemTurnedOverIsAnOptionOfItsOwn() {
        List<Option> options = Match.of(BIKE, BIKE, STOCK).all().options();
        assertThat(options).extracting(option -> option.get("stemAngleDeg")).contains(-6.0, 6.0);
    }

    @Test
    void spacersAreStackedBeyondTheForksLimitAndSayByHowFar() {
        Option beyond = Match.of(BIKE, BIKE, STOCK).all().options().stream()
                .filter(option -> option.get("spacersMm") == 40)
                .findFirst()
                .orElseThrow();
        assertThat(beyond.exceeded()).anySatisfy(exceeded -> {
            assertThat(exceeded.quantity().key()).isEqualTo("spacersLeftMm");
            assertThat(exceeded.left()).isEqualTo(-10);
            assertThat(exceeded.limit().source()).isEqualTo("fork.spacerLimitMm");
        });
    }

    @Test
    void aForkWithoutALimitIsTakenToAllowThirtyByCommonPractice() {
        Bike silent = without("fork.spacerLimitMm");
        Option beyond = Match.of(silent, BIKE, STOCK).all().options().stream()
                .filter(option -> option.get("spacersMm") == 35)
                .findFirst()
                .orElseThrow();
        assertThat(beyond.exceeded())
                .filteredOn(exceeded -> exceeded.quantity().key().equals("spacersLeftMm"))
                .singleElement()
                .satisfies(exceeded -> assertThat(exceeded.limit().source()).contains("common practice", "30 mm"))
                .satisfies(exceeded -> assertThat(exceeded.left()).isEqualTo(-5));
    }

    @Test
    void theStocksOwnLimitTakesThePlaceOfTheUsualOne() {
        Bound room = new Bound("toeRoomMm", new Limit(-500, "set", "the shop's own rule"));
        Bound trail = new Bound("trailMm", new Limit(1, "set", "the shop's own rule", Limit.Side.AT_MOST));
        Stock strict = new Stock("Strict", Map.of(), Optional.empty(), List.of(room, trail));
        assertThat(Match.of(BIKE, BIKE, strict).best(1).first().exceeded())
                .extracting(exceeded -> exceeded.quantity().key())
                .contains("trailMm")
                .doesNotContain("toeRoomMm");
    }

    @Test
    void aLimitThatNoPartDecidesIsRefused() {
        Bound hand = new Bound("handLeverMm", new Limit(1, "set", "x"));
        Match match = Match.of(BIKE, BIKE, new Stock("Odd", Map.of(), Optional.empty(), List.of(hand)));
        assertThatThrownBy(() -> match.best(1)).isInstanceOf(Refusal.class).hasMessageContaining("handLeverMm");
    }

    @Test
    void anotherForkTurnsTheFrameAndLeavesTheWantedPoints() {
        Stock forks = Stocks.of(Map.of(Category.FORKS, parts(Category.FORKS, row(47, 397))));
        Option option = Match.of(BIKE, BIKE, forks).best(1).first();
        Bike refitted = Refit.of(BIKE, Setting.changes(Map.of("fork.axleToCrownMm", 397.0)))
                .bike();
        assertThat(option.bike().get("frame.headAngleDeg"))
                .isEqualTo(refitted.get("frame.headAngleDeg"))
                .isLessThan(BIKE.get("frame.headAngleDeg"));
        assertThat(option.bike().get("contact.handXMm")).isEqualTo(BIKE.get("contact.handXMm"));
    }

    @Test
    void toeNumbersAreThoseOfTheWholeBike() {
        Stock cranks = Stocks.of(Map.of(
                Category.CRANKS,
                parts(Category.CRANKS, row(155), row(172.5)),
                Category.TYRES,
                parts(Category.TYRES, row(25), row(32, 12))));
        assertThat(Match.of(BIKE, BIKE, cranks).all().options()).hasSize(4).allSatisfy(option -> {
            assertThat(option.get("toeRoomMm")).isEqualTo(Bikes.value(option.bike(), ToeMeasures.TOE_ROOM));
            assertThat(option.get("pedalStrikeLeanDeg"))
                    .isEqualTo(Bikes.value(option.bike(), ToeMeasures.PEDAL_STRIKE_LEAN));
        });
    }

    @Test
    void leversAreComparedWithTheReferenceBikeInPerCent() {
        Bike wide = BIKE.with("cockpit.bar.widthMm", 500);
        Option option = Match.of(BIKE, wide, Stocks.of(Map.of())).best(1).first();
        double lever = Bikes.value(BIKE, Measures.HAND_LEVER) / Bikes.value(wide, Measures.HAND_LEVER);
        assertThat(option.get("handLeverChangePercent")).isCloseTo(100 * (lever - 1), within(1e-9));
        assertThat(option.get("turnPerHandTravelChangePercent")).isCloseTo(100 * (1 / lever - 1), within(1e-9));
    }

    @Test
    void aBikeWithoutContactPointsLendsItsHoodsAndNoSitPoint() {
        Bike bare = withoutGroup("contact");
        Match match = Match.of(BIKE, bare, STOCK);
        assertThat(match.wanted().from()).contains("as built", "sit point is not given");
        assertThat(match.wanted().hand().x()).isEqualTo(hood(bare, Measures.HAND_X));
        assertThat(match.best(1).first().get("postExtensionMm")).isNaN();
    }

    @Test
    void aBikeThatSaysNothingOfHandsIsRefused() {
        assertThatThrownBy(() -> Match.of(BIKE, Bikes.plain(), STOCK))
                .isInstanceOf(Refusal.class)
                .hasMessageContainingAll("contact", "stem with a bar");
    }

    @Test
    void aBareFrameTakesItsWholeCockpitFromTheParts() {
        Stock whole = Stocks.of(
                Map.of(
                        Category.STEMS,
                        STEMS,
                        Category.COVERS,
                        parts(Category.COVERS, row(8)),
                        Category.BARS,
                        parts(Category.BARS, row(400, 110, 15))),
                10);
        assertThat(Match.of(Bikes.plain(), BIKE, whole).best(1).first().distanceMm())
                .isFinite();
    }

    @Test
    void aBareFrameWithoutAWholeCockpitIsRefused() {
        Match match = Match.of(Bikes.plain(), BIKE, Stocks.of(Map.of(Category.STEMS, STEMS)));
        assertThatThrownBy(() -> match.best(1)).isInstanceOf(Refusal.class);
    }

    @Test
    void whatTheStockDoesNotListStaysAsOnTheBike() {
        Option option = Match.of(BIKE, wantedAt(500, 640), STOCK).best(1).first();
        assertThat(option.changesTo(BIKE).keySet())
                .allMatch(key -> key.startsWith("cockpit.s") || key.startsWith("contact."));
    }

    @Test
    void whatToSetMakesTheOption() {
        Bike to = wantedAt(500, 640);
        Option option = Match.of(BIKE, to, STOCK).best(1).first();
        Bike set = BIKE.redraw(Setting.changes(option.changesTo(BIKE)));
        assertThat(Bikes.value(set, Measures.HAND_X)).isEqualTo(option.get("handXMm"));
    }

    @Test
    void aSitPointBeyondPostAndRailsIsMissedByWhatIsLeftOver() {
        Bike far = BIKE.with("contact.sitXMm", BIKE.get("contact.sitXMm") - 60);
        Option option = Match.of(BIKE, far, Stocks.of(Map.of())).best(1).first();
        assertThat(option.get("sitMissMm")).isCloseTo(-option.get("railLeftMm"), within(1e-9));
        assertThat(option.get("railLeftMm")).isNegative();
    }

    @Test
    void tooManyCombinationsAreRefused() {
        List<Part> many = parts(
                Category.BARS,
                IntStream.range(0, 3000)
                        .mapToObj(i -> row(300 + i / 10.0, 100, 10))
                        .toArray(double[][]::new));
        List<Part> cranks = parts(
                Category.CRANKS,
                IntStream.range(0, 3000).mapToObj(i -> row(150 + i / 100.0)).toArray(double[][]::new));
        Stock stock = Stocks.of(Map.of(Category.BARS, many, Category.CRANKS, cranks));
        assertThatThrownBy(() -> Match.of(BIKE, BIKE, stock))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("9000000");
    }

    /** Every stack is one that single spacers make, by trying all of up to eight. */
    @Test
    void stacksAreTheSumsOfStockSpacers() {
        Spacers spacers = new Spacers(List.of(5.0, 7.5, 20.0), 40, 30);
        TreeSet<Double> sums = new TreeSet<>();
        for (int fives = 0; fives <= 8; fives++) {
            for (int more = 0; more <= 5; more++) {
                for (int twenties = 0; twenties <= 2; twenties++) {
                    sums.add(5.0 * fives + 7.5 * more + 20 * twenties);
                }
            }
        }
        assertThat(spacers.stacks().keySet()).containsExactlyElementsOf(sums.headSet(40.0, true));
        assertThat(spacers.stacks().get(32.5)).containsExactly(20.0, 7.5, 5.0);
    }

    private static double hood(Bike bike, Measure<Geometry> measure) {
        return Bikes.value(bike, measure);
    }

    private static Bike wantedAt(double handX, double handY) {
        return BIKE.redraw(Setting.changes(Map.of("contact.handXMm", handX, "contact.handYMm", handY)));
    }

    private static Bike without(String key) {
        return Bike.of(
                BIKE.name(),
                BIKE.given().with(Setting.of(key).inputs().get(0), Double.NaN),
                BIKE.groups(),
                BIKE.provenance());
    }

    private static Bike withoutGroup(String group) {
        Map<rakeline.quantity.Input, Double> none = new HashMap<>();
        Inputs.all().stream()
                .filter(input -> input.group().equals(group))
                .forEach(input -> none.put(input, Double.NaN));
        Set<String> groups = new HashSet<>(BIKE.groups());
        groups.remove(group);
        return Bike.of(BIKE.name(), BIKE.given().with(none), groups, BIKE.provenance());
    }
}
