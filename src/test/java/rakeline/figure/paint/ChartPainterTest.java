package rakeline.figure.paint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rakeline.figure.Chart;
import rakeline.figure.Samples;

class ChartPainterTest {
    private static final Rectangle2D AREA = new Rectangle2D.Double(30, 20, 760, 520);

    private static ChartPainter painter(Chart chart) {
        return (ChartPainter) FigurePainter.of(chart, Palette.LIGHT, 1);
    }

    private static List<String> words(Chart chart, View view) {
        TextRecorder recorder = new TextRecorder();
        painter(chart).draw(recorder, AREA, view);
        return recorder.words();
    }

    /** The horizontal place of a value, by the data area alone. */
    private static double px(Rectangle2D data, double value, double from, double to) {
        return data.getX() + (value - from) / (to - from) * data.getWidth();
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 57, 100, 199, 200})
    void aPlaceOverAStepFindsThatStep(int step) {
        Chart chart = Samples.sweep();
        ChartPainter painter = painter(chart);
        double px = px(painter.dataArea(AREA, View.WHOLE), chart.steps().at(step), 69, 74);
        assertThat(painter.nearestStep(AREA, View.WHOLE, px)).hasValue(step);
    }

    @Test
    void aPlaceBeforeTheCurvesFindsTheFirstStep() {
        assertThat(painter(Samples.sweep()).nearestStep(AREA, View.WHOLE, 0)).hasValue(0);
    }

    @Test
    void aPlaceOverAZoomedStepFindsThatStep() {
        Chart chart = Samples.sweep();
        View view = View.WHOLE.zoomed(72, 70);
        double px = px(painter(chart).dataArea(AREA, view), chart.steps().at(77), 70, 72);
        assertThat(painter(chart).nearestStep(AREA, view, px)).hasValue(77);
    }

    @Test
    void aPlaceIsTheValueUnderIt() {
        ChartPainter painter = painter(Samples.sweep());
        double middle = painter.dataArea(AREA, View.WHOLE).getCenterX();
        assertThat(painter.valueAt(AREA, View.WHOLE, middle)).isCloseTo(71.5, within(1e-9));
    }

    @Test
    void theMappingHoldsWhereTheFigureIsShrunk() {
        Rectangle2D small = new Rectangle2D.Double(5, 5, 300, 160);
        Chart chart = Samples.sweep();
        double px = px(painter(chart).dataArea(small, View.WHOLE), chart.steps().at(57), 69, 74);
        assertThat(painter(chart).nearestStep(small, View.WHOLE, px)).hasValue(57);
    }

    @Test
    void aChartWithoutStepsHasNoNearest() {
        Chart empty = Samples.sweep(0, List.of(Samples.TRAIL));
        assertThat(painter(empty).nearestStep(AREA, View.WHOLE, 200)).isEmpty();
    }

    @Test
    void theCrosshairSaysEveryValueAtItsStep() {
        Chart chart = Samples.sweep();
        assertThat(words(chart, View.WHOLE.at(0))).contains("69.0°", "79.8 mm", "1012.5 mm", "17.2 mm");
    }

    @Test
    void theCrosshairSaysWhereThereIsNoValue() {
        long without = words(Samples.held(), View.WHOLE).stream()
                .filter("no value"::equals)
                .count();
        assertThat(words(Samples.held(), View.WHOLE.at(100)))
                .filteredOn("no value"::equals)
                .hasSize((int) without + 3);
    }

    @Test
    void aCrosshairOutsideTheWindowIsNotDrawn() {
        assertThat(words(Samples.sweep(), View.WHOLE.zoomed(72, 74).at(0))).doesNotContain("79.8 mm");
    }

    @Test
    void theReadoutGivesTheReasonOfAGap() {
        assertThat(painter(Samples.held()).readout(100))
                .contains("Trail has no value: no fork offset within 42..60 gives a trail of 58 mm");
    }

    @Test
    void everyPanelIsNamedWithItsUnitAndItsValueHere() {
        assertThat(words(Samples.sweep(), View.WHOLE))
                .contains(
                        "Trail, mm", "65.1 mm here", "Wheelbase, mm", "991.9 mm here", "Toe room, mm", "−3.4 mm here");
    }

    @Test
    void degreesAreTickedAsDegrees() {
        assertThat(words(Samples.sweep(), View.WHOLE))
                .contains("69°", "70°", "71°", "72°", "73°", "74°", "Head angle, °");
    }

    @Test
    void aLimitNearTheValuesIsNamedWithItsSource() {
        assertThat(words(Samples.sweep(), View.WHOLE)).contains("touching from here down · definition of toe room");
    }

    @Test
    void aLimitFarFromTheValuesIsNotDrawn() {
        Chart far = Samples.sweep(
                51,
                List.of(Samples.limitedTrail().limit(500, "far away", "nobody").declared()));
        assertThat(words(far, View.WHOLE)).noneMatch(text -> text.contains("far away"));
    }

    @Test
    void aNarrowChartGivesTheSourceBeneath() {
        TextRecorder recorder = new TextRecorder();
        painter(Samples.sweep()).draw(recorder, new Rectangle2D.Double(0, 0, 420, 600), View.WHOLE);
        assertThat(String.join(" ", recorder.words()))
                .contains("Toe room 0 mm, touching from here down: definition of toe room.");
    }

    @ParameterizedTest
    @ValueSource(doubles = {340, 500, 760, 1400})
    void aLimitIsNamedClearOfTheCurve(double width) {
        Chart chart = Samples.sweep(201, List.of(Samples.TOE_ROOM));
        Rectangle2D area = new Rectangle2D.Double(0, 0, width, 260);
        TextRecorder recorder = new TextRecorder();
        painter(chart).draw(recorder, area, View.WHOLE);
        ChartLayout layout = ChartLayout.of(chart, painter(chart).frame(area).body(), View.WHOLE);
        ChartLayout.PanelLayout panel = layout.panels().get(0);
        Chart.Panel values = chart.panels().get(0);
        List<Rectangle2D> names = recorder.texts().stream()
                .filter(text -> text.words().startsWith("touching"))
                .map(TextRecorder.Text::box)
                .filter(panel.area()::intersects)
                .toList();
        assertThat(names)
                .isNotEmpty()
                .allSatisfy(name -> assertThat(IntStream.range(0, 201)
                                .noneMatch(i -> name.contains(
                                        layout.stepX(i),
                                        panel.toY(values.values().at(i)))))
                        .isTrue());
    }

    @Test
    void limitsOfOneSourceAreOneSentence() {
        Chart crowded = Samples.sweep(
                51,
                List.of(Samples.limitedTrail()
                        .limit(60, "first", "one source")
                        .limit(60.2, "second", "one source")
                        .limit(60.4, "third", "one source")
                        .declared()));
        assertThat(words(crowded, View.WHOLE))
                .contains("Trail 60 mm, first; Trail 60.2 mm, second; Trail 60.4 mm, third: one source.");
    }

    @Test
    void manyLimitsAreAllNamedBeneath() {
        Chart crowded = Samples.sweep(
                51,
                List.of(Samples.limitedTrail()
                        .limit(60, "first", "one source")
                        .limit(60.2, "second", "another")
                        .limit(60.4, "third", "")
                        .declared()));
        assertThat(words(crowded, View.WHOLE))
                .contains(
                        "Trail 60 mm, first: one source.", "Trail 60.2 mm, second: another.", "Trail 60.4 mm, third.");
    }

    @Test
    void aZoomBeyondTheStepsEndsWithThem() {
        ChartPainter painter = painter(Samples.sweep());
        View view = View.WHOLE.zoomed(60, 71);
        double left = painter.dataArea(AREA, view).getX();
        assertThat(painter.valueAt(AREA, view, left)).isEqualTo(69);
    }

    @Test
    void aChartWithoutStepsSaysSo() {
        assertThat(words(Samples.sweep(0, List.of(Samples.TRAIL)), View.WHOLE)).contains("There are no steps to show.");
    }

    @Test
    void aGapIsExplainedBeneath() {
        assertThat(words(Samples.held(), View.WHOLE))
                .contains("No value from 73.3° to 74.0°: no fork offset within 42..60 gives a trail of 58 mm.");
    }

    @Test
    void whatWasHeldAndTheCautionStandBeneath() {
        assertThat(words(Samples.sweep(), View.WHOLE)).contains("Held:", Samples.HELD, Samples.CAUTION);
    }

    @Test
    void aPanelIsNeverLowerThanItsLeastHeight() {
        ChartPainter painter = painter(Samples.sweep());
        Rectangle2D wanted = new Rectangle2D.Double(0, 0, 420, painter.preferredSize(420).height);
        double three = 3 * ChartLayout.PANEL_HEIGHT + 2 * ChartLayout.BETWEEN;
        assertThat(painter.dataArea(wanted, View.WHOLE).getHeight()).isGreaterThanOrEqualTo(three);
    }

    @Test
    void aZoomOfNoWidthIsTheWhole() {
        assertThat(View.WHOLE.zoomed(70, 71).zoomed(70, 70)).isEqualTo(View.WHOLE);
    }
}
