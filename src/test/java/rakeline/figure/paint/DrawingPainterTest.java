package rakeline.figure.paint;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rakeline.figure.Drawing;
import rakeline.figure.Drawing.Circle;
import rakeline.figure.Drawing.Dimension;
import rakeline.figure.Drawing.Ink;
import rakeline.figure.Drawing.Label;
import rakeline.figure.Drawing.Point;
import rakeline.figure.Samples;

class DrawingPainterTest {
    private static TextRecorder drawn(Drawing drawing, double width, double height) {
        TextRecorder recorder = new TextRecorder();
        FigurePainter.of(drawing, Palette.LIGHT, 1).draw(recorder, new Rectangle2D.Double(0, 0, width, height));
        return recorder;
    }

    @ParameterizedTest
    @CsvSource({"380,260", "420,900", "760,500", "1400,300", "1800,1000", "200,120"})
    void theWholeDrawingFitsItsArea(double width, double height) {
        Rectangle2D area = new Rectangle2D.Double(0, 0, width, height);
        assertThat(drawn(Samples.sideView(), width, height).shapes())
                .isNotEmpty()
                .allMatch(area::contains);
    }

    @ParameterizedTest
    @CsvSource({"380,300", "760,500", "1400,900"})
    void everyDimensionIsWritten(double width, double height) {
        assertThat(drawn(Samples.sideView(), width, height).words())
                .contains(
                        "wheelbase 971", "trail 65", "stack 508", "reach 370", "front-centre 573", "head angle 71.3°");
    }

    @Test
    void whatIsDrawnIsItsHeading() {
        assertThat(drawn(Samples.sideView(), 760, 500).words()).contains("Side view: Road XS");
    }

    @Test
    void bikesLaidOverEachOtherAreNamedAboveTheDrawing() {
        assertThat(drawn(layered("Small", "Large"), 400, 400).words()).contains("Small", "Large");
    }

    @Test
    void aBikeAloneNeedsNoKey() {
        assertThat(drawn(layered("Small"), 400, 400).words()).doesNotContain("Small");
    }

    @Test
    void layersAreToldApartWithoutColourToo() {
        assertThat(LayerStyle.stroke(Palette.LIGHT, 1, 2).getDashArray())
                .isNotEqualTo(LayerStyle.stroke(Palette.LIGHT, 0, 2).getDashArray())
                .isNotEqualTo(LayerStyle.stroke(Palette.LIGHT, 2, 2).getDashArray());
    }

    private static Drawing layered(String... names) {
        return new Drawing(
                "Side view",
                "",
                List.of(new Drawing.Circle(new Point(0, 0), 300, false, Ink.BOLD, 0)),
                List.of(rakeline.figure.Column.ofWords(Drawing.LAYER, "Bike", List.of(names))),
                "",
                List.of());
    }

    @Test
    void upIsUp() {
        Drawing two = new Drawing(
                "",
                "",
                List.of(
                        new Label(new Point(0, 500), "high", Ink.BOLD, 0),
                        new Label(new Point(0, 0), "low", Ink.BOLD, 0)),
                List.of(),
                "",
                List.of());
        List<TextRecorder.Text> texts = drawn(two, 400, 400).texts();
        assertThat(texts.get(0).box().getMaxY()).isLessThan(texts.get(1).box().getY());
    }

    @Test
    void labelsOfOnePlaceAreWrittenApart() {
        List<Drawing.Mark> crowd = IntStream.range(0, 8)
                .<Drawing.Mark>mapToObj(i -> new Label(new Point(0, 0), "label " + i, Ink.FINE, 0))
                .toList();
        List<TextRecorder.Text> texts = drawn(new Drawing("", "", crowd, List.of(), "", List.of()), 400, 400)
                .texts();
        assertThat(texts).hasSize(8);
        assertThat(texts)
                .allMatch(one -> texts.stream()
                        .filter(other -> !other.equals(one))
                        .noneMatch(other -> other.box().intersects(one.box())));
    }

    @Test
    void aDimensionAtTheEdgeIsWrittenOutsideIt() {
        Drawing edge = new Drawing(
                "",
                "",
                List.of(
                        new Circle(new Point(0, 0), 300, false, Ink.BOLD, 0),
                        new Dimension(new Point(310, -200), new Point(310, 200), 0, "400", "", Ink.FINE, 0)),
                List.of(),
                "",
                List.of());
        TextRecorder recorder = drawn(edge, 500, 400);
        double line = recorder.shapes().stream()
                .mapToDouble(Rectangle2D::getMaxX)
                .max()
                .orElseThrow();
        assertThat(recorder.texts().get(0).box().getX()).isGreaterThan(line - 3);
    }

    @Test
    void aDimensionOfNoLengthIsDrawn() {
        Dimension none = new Dimension(new Point(3, 3), new Point(3, 3), 0, "0", "trailMm", Ink.FINE, 0);
        Drawing drawing = new Drawing("", "", List.of(none), List.of(), "", List.of());
        assertThat(drawn(drawing, 400, 300).words()).containsExactly("0");
    }
}
