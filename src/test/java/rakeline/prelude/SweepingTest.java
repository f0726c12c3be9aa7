package rakeline.prelude;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static rakeline.geometry.Inputs.FORK_OFFSET;
import static rakeline.geometry.Inputs.FRONT_TYRE;
import static rakeline.geometry.Inputs.HEAD_ANGLE;
import static rakeline.geometry.Measures.TRAIL;
import static rakeline.prelude.Prelude.measure;
import static rakeline.prelude.Prelude.measures;
import static rakeline.prelude.Prelude.refit;
import static rakeline.prelude.Prelude.sweep;

import org.junit.jupiter.api.Test;
import rakeline.figure.Chart;
import rakeline.geometry.Bike;
import rakeline.geometry.Bikes;
import rakeline.geometry.Measures;
import rakeline.quantity.Refusal;
import rakeline.study.Mode;

/** What a row may say about sweeps and measures. */
class SweepingTest {
    private static final Bike BIKE = Bikes.whole();

    @Test
    void aSweepReadsAsItIsSaid() {
        Chart chart = sweep(BIKE)
                .over("frame.headAngleDeg", 69, 74)
                .hold("trailMm")
                .by("fork.offsetMm")
                .track("trailMm", "wheelbaseMm", "toeRoomMm")
                .chart();
        assertThat(chart.steps().size()).isEqualTo(201);
        assertThat(chart.panels()).hasSize(3);
    }

    @Test
    void constantsStandBesideKeys() {
        Chart byConstant = sweep(BIKE)
                .over(HEAD_ANGLE, 69, 74, 1)
                .hold(TRAIL)
                .by(FORK_OFFSET)
                .track(TRAIL, FORK_OFFSET)
                .chart();
        Chart byKey = sweep(BIKE)
                .over("frame.headAngleDeg", 69, 74, 1)
                .hold("trailMm")
                .by("fork.offsetMm")
                .track("trailMm", "fork.offsetMm")
                .chart();
        assertThat(byConstant).isEqualTo(byKey);
    }

    @Test
    void aMeasureMayBeHeldAtAValue() {
        double[] trail = sweep(BIKE)
                .over(HEAD_ANGLE, 70, 72, 1)
                .hold("trailMm", 58)
                .by("fork.offsetMm")
                .track("trailMm")
                .run()
                .columns()
                .get(0)
                .values()
                .toArray();
        assertThat(trail).hasSize(3).containsOnly(new double[] {58, 58, 58}, within(1e-9));
    }

    @Test
    void aSweepOverAWheelRefitsUnlessSaidOtherwise() {
        Sweeping tyres = sweep(BIKE).over(FRONT_TYRE, 28, 32, 2).track(TRAIL);
        assertThat(tyres.run().sweep().mode()).isEqualTo(Mode.REFIT);
        assertThat(tyres.asRedraw().run().sweep().mode()).isEqualTo(Mode.REDRAW);
        assertThat(sweep(BIKE)
                        .over(FORK_OFFSET, 40, 42, 1)
                        .track(TRAIL)
                        .asRefit()
                        .run()
                        .sweep()
                        .mode())
                .isEqualTo(Mode.REFIT);
    }

    @Test
    void eachWordLeavesTheSweepBeforeItAsItWas() {
        Sweeping first = sweep(BIKE).over(HEAD_ANGLE, 70, 72, 1).track(TRAIL);
        first.track("wheelbaseMm");
        assertThat(first.chart().panels()).hasSize(1);
    }

    @Test
    void aSweepWithoutARangeSaysWhatToAdd() {
        assertThatThrownBy(() -> sweep(BIKE).track(TRAIL).chart())
                .isInstanceOf(Refusal.class)
                .hasMessageContaining(".over(");
    }

    @Test
    void aMisspeltKeyIsRefusedWithTheNearest() {
        assertThatThrownBy(() -> sweep(BIKE).track("trialMm"))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("trailMm");
        assertThatThrownBy(() -> sweep(BIKE).over("frame.headAngle", 70, 72))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("frame.headAngleDeg");
        assertThatThrownBy(() -> sweep(BIKE).hold("trail"))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("trail");
    }

    @Test
    void handsMayBeMovedToTheDrops() {
        double drops = sweep(BIKE)
                .over(HEAD_ANGLE, 70.5, 72, 1)
                .hands("drops")
                .track("handYMm")
                .run()
                .columns()
                .get(0)
                .values()
                .at(0);
        assertThat(drops).isCloseTo(measure(BIKE, "barYMm") - 120, within(1e-9));
    }

    @Test
    void aMeasureIsReadByKeyAndByConstant() {
        assertThat(measure(BIKE, "trailMm")).isEqualTo(Bikes.value(BIKE, TRAIL)).isEqualTo(measure(BIKE, TRAIL));
    }

    @Test
    void measuresOfTwoBikesStandSideBySide() {
        assertThat(measures(BIKE, BIKE.named("Other")).columns())
                .extracting(column -> column.label())
                .contains(BIKE.name(), "Other");
    }

    @Test
    void aRefitTurnsTheFrame() {
        assertThat(measure(refit(BIKE, "wheels.front.tyreMm", 50), Measures.TRAIL))
                .isNotEqualTo(measure(BIKE.with("wheels.front.tyreMm", 50), Measures.TRAIL));
    }
}
