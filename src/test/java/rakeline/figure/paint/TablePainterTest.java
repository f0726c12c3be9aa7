package rakeline.figure.paint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.Dimension;
import java.awt.geom.Rectangle2D;
import java.util.List;
import org.junit.jupiter.api.Test;
import rakeline.figure.Column;
import rakeline.figure.Samples;
import rakeline.figure.Table;
import rakeline.figure.paint.TextRecorder.Text;
import rakeline.quantity.Numbers;

class TablePainterTest {
    private static TextRecorder drawn(Table table, int rows, int width) {
        TablePainter painter = new TablePainter(table, Palette.LIGHT, 1, Assignment.STANDARD, rows);
        Dimension size = painter.preferredSize(width);
        TextRecorder recorder = new TextRecorder();
        painter.draw(recorder, new Rectangle2D.Double(0, 0, size.width, size.height));
        return recorder;
    }

    private static Text text(TextRecorder recorder, String words) {
        return recorder.texts().stream()
                .filter(text -> text.words().equals(words))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void numbersOfAColumnEndOnOneLine() {
        TextRecorder recorder = drawn(Samples.table(), 30, 1400);
        assertThat(text(recorder, "−1.4").box().getMaxX())
                .isCloseTo(text(recorder, "17.2").box().getMaxX(), within(0.01));
    }

    @Test
    void digitsOfAColumnStandUnderOneAnother() {
        TextRecorder recorder = drawn(Samples.table(), 30, 1400);
        assertThat(text(recorder, "71.0").box().getWidth())
                .isCloseTo(text(recorder, "48.3").box().getWidth(), within(0.01));
    }

    @Test
    void wordsOfAColumnStartOnOneLine() {
        TextRecorder recorder = drawn(Samples.table(), 30, 1400);
        assertThat(text(recorder, "Bike").box().getX())
                .isEqualTo(text(recorder, "Frame 01, 41 mm fork").box().getX());
    }

    @Test
    void aLongTableSaysHowManyRowsAreNotShown() {
        assertThat(drawn(Samples.table(30), 12, 1400).words())
                .contains("The first 12 of 30 rows; 18 more are not shown.")
                .contains("Frame 12, 43 mm fork")
                .doesNotContain("Frame 13, 44 mm fork");
    }

    @Test
    void aTableIsDrawnToAThousandRows() {
        assertThat(drawn(Samples.table(1001), 5000, 1400).words())
                .contains("The first 1000 of 1001 rows; 1 more are not shown.");
    }

    @Test
    void theUnitOfAHeadingNeverStandsInALineByItself() {
        Column angle = new Column("angle", "Hip angle, crank up", "°", Numbers.of(67.1), List.of("67.1"));
        assertThat(drawn(new Table("", List.of(angle), "", List.of()), 1, 400).words())
                .doesNotContain("°")
                .anyMatch(words -> words.endsWith("up, °"));
    }

    @Test
    void aTableBreaksWhereItsColumnsDoNotFit() {
        TablePainter painter = new TablePainter(Samples.table(3), Palette.LIGHT, 2, Assignment.STANDARD, 3);
        assertThat(painter.breaks(840)).isTrue();
        assertThat(painter.breaks(2800)).isFalse();
    }

    @Test
    void columnsThatDoNotFitFollowBeneathTheFirstOnceMore() {
        assertThat(drawn(Samples.table(3), 3, 420).words())
                .filteredOn("Frame 02, 42 mm fork"::equals)
                .hasSize(2);
    }

    @Test
    void onlyRowsInSightAreDrawn() {
        TablePainter painter = new TablePainter(Samples.table(1000), Palette.LIGHT, 1, Assignment.STANDARD, 1000);
        Dimension size = painter.preferredSize(1400);
        TextRecorder recorder = new TextRecorder();
        recorder.setClip(new Rectangle2D.Double(0, 0, 1400, 300));
        painter.draw(recorder, new Rectangle2D.Double(0, 0, size.width, size.height));
        assertThat(recorder.texts()).hasSizeLessThan(150);
    }

    @Test
    void aTableWithoutRowsStillShowsItsHeadings() {
        Table empty = new Table("Nothing yet", Samples.table(0).columns(), "", List.of());
        assertThat(drawn(empty, 10, 1400).words()).contains("Bike", "Trail, mm");
    }
}
