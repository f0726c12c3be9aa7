package rakeline.prelude;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static rakeline.geometry.Inputs.FORK_OFFSET;
import static rakeline.geometry.Inputs.FRONT_TYRE;
import static rakeline.geometry.Inputs.HEAD_ANGLE;
import static rakeline.geometry.Measures.FRONT_CENTRE;
import static rakeline.geometry.Measures.TRAIL;
import static rakeline.prelude.Prelude.measure;
import static rakeline.prelude.Studies.map;
import static rakeline.prelude.Studies.seek;
import static rakeline.prelude.Studies.sensitivity;
import static rakeline.prelude.Studies.sizes;
import static rakeline.prelude.Studies.solve;
import static rakeline.prelude.Studies.spread;

import org.junit.jupiter.api.Test;
import rakeline.figure.MapFigure;
import rakeline.geometry.Bike;
import rakeline.geometry.Bikes;
import rakeline.quantity.Refusal;

/** What a row may say about studies other than sweeps. */
class StudiesTest {
    private static final Bike BIKE = Bikes.whole();

    @Test
    void aMapReadsAsItIsSaid() {
        MapFigure figure = map(BIKE)
                .over(HEAD_ANGLE, 69, 74, 1)
                .and(FORK_OFFSET, 40, 55, 5)
                .of(TRAIL);
        assertThat(figure)
                .isEqualTo(map(BIKE)
                        .over("frame.headAngleDeg", 69, 74, 1)
                        .and("fork.offsetMm", 40, 55, 5)
                        .of("trailMm"));
        assertThat(figure.values().size()).isEqualTo(6 * 4);
    }

    @Test
    void aMapWithoutAStepHas61ValuesEachWay() {
        assertThat(map(BIKE)
                        .over(HEAD_ANGLE, 69, 74)
                        .and(FORK_OFFSET, 40, 55)
                        .of(TRAIL)
                        .values()
                        .size())
                .isEqualTo(61 * 61);
    }

    @Test
    void aMapOfOneInputIsRefused() {
        assertThatThrownBy(() -> map(BIKE).over(HEAD_ANGLE, 69, 74).of(TRAIL))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("accepted are two");
    }

    @Test
    void aSearchGivesValuesAndBikes() {
        Seeking search = seek(BIKE).over(HEAD_ANGLE, 66, 76).where(TRAIL, 58);
        assertThat(search.values()).hasSize(1);
        assertThat(measure(search.bikes().get(0), TRAIL)).isCloseTo(58, within(1e-8));
        assertThat(search.table().columns().get(0).values().toArray())
                .containsExactly(search.values().get(0));
    }

    @Test
    void aSearchHoldsAsASweepDoes() {
        Bike found = seek(BIKE)
                .over(HEAD_ANGLE, 66, 76)
                .hold(TRAIL, 60)
                .by(FORK_OFFSET)
                .where("frontCentreMm", 590)
                .bikes()
                .get(0);
        assertThat(measure(found, TRAIL)).isCloseTo(60, within(1e-8));
        assertThat(measure(found, FRONT_CENTRE)).isCloseTo(590, within(1e-8));
    }

    @Test
    void aSearchMayBeTakenAsDrawn() {
        Seeking tyre = seek(BIKE).over(FRONT_TYRE, 20, 50).where(HEAD_ANGLE.key(), 70.5);
        assertThat(tyre.values()).singleElement().satisfies(at -> assertThat(at).isCloseTo(28, within(1e-7)));
        assertThat(tyre.asRedraw().run().stretches()).hasSize(1);
    }

    @Test
    void twoNumbersAreSolvedForTwoMeasures() {
        Bike bike = solve(BIKE)
                .by(HEAD_ANGLE)
                .by(FORK_OFFSET, 20, 80)
                .where(TRAIL, 58)
                .where("frontCentreMm", 590)
                .bike();
        assertThat(measure(bike, TRAIL)).isCloseTo(58, within(1e-7));
    }

    @Test
    void aBikeThatCannotBeIsRefusedWithWhatIsMissed() {
        Solving solving = solve(BIKE)
                .by(HEAD_ANGLE, 70, 71)
                .by(FORK_OFFSET, 45, 46)
                .where(TRAIL, 20)
                .where(FRONT_CENTRE, 700);
        assertThatThrownBy(solving::bike)
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("the nearest misses trail by");
    }

    @Test
    void aSpreadGivesARowForEachMeasure() {
        assertThat(spread(BIKE).of(TRAIL, FRONT_CENTRE).draws(200).table().rows())
                .isEqualTo(2);
    }

    @Test
    void aSensitivityGivesAColumnForEachInput() {
        assertThat(sensitivity(BIKE)
                        .by(HEAD_ANGLE, FORK_OFFSET)
                        .of(TRAIL)
                        .table()
                        .columns())
                .hasSize(3);
    }

    @Test
    void aSizeRunGivesARowForEachSize() {
        Sizing sizing =
                sizes(BIKE.named("A"), BIKE.named("B")).floor(FRONT_CENTRE, 600).hold(TRAIL, 60);
        assertThat(sizing.table().rows()).isEqualTo(2);
        assertThat(sizing.bikes())
                .allSatisfy(bike -> assertThat(measure(bike, FRONT_CENTRE)).isCloseTo(600, within(1e-7)));
    }

    @Test
    void whatIsOnlySaidShowsHowItIsRun() {
        assertThat(seek(BIKE)).hasToString("A search on Fixture; .table() or .values() runs it.");
    }
}
