package rakeline.figure.paint;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rakeline.catalogue.BikeFile;
import rakeline.catalogue.RiderFile;
import rakeline.figure.BikeDrawing;
import rakeline.figure.Drawing;
import rakeline.figure.Drawing.Dimension;
import rakeline.figure.Drawing.Ink;
import rakeline.figure.Drawing.Point;
import rakeline.figure.paint.DrawnWords.Word;
import rakeline.geometry.Hands;
import rakeline.handling.Ride;
import rakeline.rider.Rider;

class DrawnWordsTest {
    private static Ride ride(String bike) throws IOException {
        Path folder = Path.of("demo-data");
        Rider rider = RiderFile.read(Files.readAllBytes(folder.resolve("customer/customer.rider.json")), "rider");
        return Ride.of(
                BikeFile.read(Files.readAllBytes(folder.resolve("bikes/" + bike + ".bike.json")), bike),
                Optional.of(rider),
                Hands.HOODS);
    }

    private static boolean isClear(Word word, List<Line2D> lines) {
        return lines.stream().noneMatch(line -> line.intersects(word.box()));
    }

    @ParameterizedTest
    @CsvSource({
        "endurance-xs, endurance-s, 300",
        "road-xxs, touring-l, 340",
        "gravel-584-xs, gravel-l, 620",
        "track-xl, road-571-xxs, 800"
    })
    void wordsStandOnNoLineAndNoRider(String one, String other, double width) throws IOException {
        Drawing whole = BikeDrawing.sideView(List.of(ride(one), ride(other)));
        Drawing drawing = width < 600 ? whole.brief() : whole;
        Rectangle2D area = new Rectangle2D.Double(90, 30, width, width);
        double rough = Placement.fitting(Outline.bounds(drawing), area).pxPerMm();
        Drawing spread = Spread.at(rough, drawing);
        Placement placement = Placement.fitting(Outline.bounds(spread), area);
        Rectangle2D sheet = new Rectangle2D.Double(0, 0, width + 180, width + 60);
        List<Line2D> lines = Outline.pieces(spread, placement);
        assertThat(DrawnWords.placed(spread, placement, sheet).words())
                .isNotEmpty()
                .allMatch(word -> isClear(word, lines));
    }

    private static Drawing stacked() {
        return new Drawing(
                "",
                "",
                List.of(
                        new Dimension(new Point(0, 0), new Point(500, 0), -45, "near", "", Ink.FINE, 0),
                        new Dimension(new Point(-400, 0), new Point(500, 0), -107, "far", "", Ink.FINE, 0)),
                List.of(),
                "",
                List.of());
    }

    @Test
    void levelDimensionsLieFurtherApartWhereTheScaleIsSmall() {
        Drawing spread = Spread.at(0.1, stacked());
        double near = ((Dimension) spread.marks().get(0)).offset();
        double far = ((Dimension) spread.marks().get(1)).offset();
        assertThat(0.1 * (near - far)).isGreaterThan(Lettering.SMALL.lineHeight());
    }

    @Test
    void theyStayWhereTheyAreWhereThereIsRoom() {
        assertThat(Spread.at(0.5, stacked())).isEqualTo(stacked());
    }
}
