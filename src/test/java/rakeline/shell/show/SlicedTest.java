package rakeline.shell.show;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import rakeline.figure.Column;
import rakeline.figure.Drawing;
import rakeline.figure.Table;

class SlicedTest {
    private static final Drawing BIKE = new Drawing(
            "side",
            "Side view",
            List.of(dimension("trail 65.1", "trailMm"), dimension("front-centre, horizontal 567.2", "other")),
            List.of(),
            "",
            List.of());

    @Test
    void aDrawingBesideATableHasTheDimensionsOfTheMeasuresThatStandInIt() {
        assertThat(Sliced.about(BIKE, table("Trail", "Front-centre"), true).marks())
                .containsExactly(dimension("trail 65.1", "trailMm"));
    }

    @Test
    void aDrawingInALittleRoomHasNoDimensionsOfOtherThings() {
        assertThat(Sliced.about(BIKE, table("Toe room"), false).marks()).isEmpty();
    }

    @Test
    void aSentenceOnADrawingIsSaidBeneathItInPlaceOfAcrossIt() {
        Drawing.Label turned = label("turned 12.0°");
        Drawing.Label room = label("the room is least at 21.0° of steer; they never meet");
        Drawing foot = BIKE.withMarks(List.of(turned, room));
        assertThat(((Drawing) Sliced.bare(foot)).marks()).containsExactly(turned);
        assertThat(Sliced.sentences(foot)).containsExactly("The room is least at 21.0° of steer; they never meet.");
    }

    private static Drawing.Label label(String text) {
        return new Drawing.Label(new Drawing.Point(0, 0), text, Drawing.Ink.SOFT, 0);
    }

    private static Drawing.Dimension dimension(String text, String key) {
        return new Drawing.Dimension(
                new Drawing.Point(0, 0), new Drawing.Point(1, 0), 5, text, key, Drawing.Ink.SOFT, 0);
    }

    private static Table table(String... measures) {
        return new Table("", List.of(Column.ofWords("measure", "Measure", List.of(measures))), "", List.of());
    }
}
