package rakeline.figure.paint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.Color;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import rakeline.figure.MapFigure;
import rakeline.figure.Samples;

class MapPainterTest {
    private static final Rectangle2D AREA = new Rectangle2D.Double(0, 0, 800, 560);
    private static final MapFigure MAP = Samples.map(Samples.TRAIL, 61, 61, 55);

    static Stream<Palette> palettes() {
        return Stream.of(Palette.LIGHT, Palette.DARK, Palette.CONTRAST);
    }

    @Test
    void everyLineCarriesItsValue() {
        // trail runs from 43.9 to 87.6: 45, 50, … 85 lie between; only the last corners are too short for a number
        assertThat(words(MAP)).contains("50", "55", "60", "65", "70", "75", "80");
    }

    @Test
    void theBikeAsItIsIsShownWithItsValue() {
        assertThat(words(MAP)).contains("The ring is the bike as it is: Head angle 71.3°, Fork offset 47.0 mm.");
        assertThat(words(MAP)).contains("65.1 mm here");
    }

    @Test
    void limitsAreNamed() {
        MapFigure limited = Samples.map(
                Samples.limitedTrail()
                        .limit(63, "usual on the road", "common practice")
                        .declared(),
                61,
                61,
                55);
        assertThat(words(limited)).contains("63 mm usual on the road");
        assertThat(words(limited)).contains("Trail 63 mm, usual on the road, dotted: common practice.");
    }

    @Test
    void gapsSayWhy() {
        assertThat(words(Samples.map(Samples.TRAIL, 21, 21, 50))).contains("No value in some places: no such fork.");
    }

    @ParameterizedTest
    @MethodSource("palettes")
    void shadesKeepTheirOrderInGrey(Palette palette) {
        MapLevels levels = MapLevels.of(MAP).orElseThrow();
        double before = grey(levels.shade(0, palette));
        double direction = Math.signum(grey(levels.shade(1, palette)) - before);
        for (int i = 1; i <= levels.values().size(); i++) {
            double here = grey(levels.shade(i, palette));
            assertThat((here - before) * direction).isGreaterThan(1);
            before = here;
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {50, 63.3, 80})
    void aLineLiesWhereTheMeasureHasItsValue(double level) {
        MapLayout layout = MapLayout.of(MAP, AREA);
        List<List<Point2D>> lines = Contours.of(layout, level);
        assertThat(lines).hasSize(1);
        for (Point2D point : lines.get(0)) {
            Rectangle2D data = layout.data();
            double head = 69 + 5 * (point.getX() - data.getX()) / data.getWidth();
            double offset = 40 + 15 * (data.getMaxY() - point.getY()) / data.getHeight();
            assertThat(Samples.trail(head, offset)).isCloseTo(level, within(0.01));
        }
    }

    @Test
    void shadesAndLinesMeet() {
        MapLayout layout = MapLayout.of(MAP, AREA);
        Path2D above = new MapCells(layout).above(65);
        double x = layout.toX(71.3);
        // trail 65 at 71.3° needs an offset of 47.1
        assertThat(above.contains(x, layout.toY(46.9))).isTrue();
        assertThat(above.contains(x, layout.toY(47.4))).isFalse();
    }

    @Test
    void aClosedLineEndsWhereItBegins() {
        MapFigure hill = new MapFigure(
                "",
                MAP.x(),
                MAP.y(),
                Samples.TRAIL,
                rakeline.quantity.Numbers.generate(61 * 61, i -> -Math.hypot(i / 61 - 30, i % 61 - 30)),
                0,
                List.of(),
                "",
                List.of());
        List<List<Point2D>> lines = Contours.of(MapLayout.of(hill, AREA), -10.5);
        assertThat(lines).hasSize(1);
        assertThat(lines.get(0).get(0)).isEqualTo(lines.get(0).get(lines.get(0).size() - 1));
    }

    @Test
    void gapsAreNoPartOfAnyShade() {
        MapLayout layout = MapLayout.of(Samples.map(Samples.TRAIL, 21, 21, 50), AREA);
        Point2D gap = new Point2D.Double(layout.toX(71.1), layout.toY(53.1));
        assertThat(new MapCells(layout).above(Double.NEGATIVE_INFINITY).contains(gap))
                .isFalse();
        assertThat(new MapCells(layout).gaps().contains(gap)).isTrue();
    }

    @Test
    void aMapWithoutAnyValueIsDrawnAsAGap() {
        assertThat(words(Samples.map(Samples.TRAIL, 5, 5, 0))).contains("Head angle, °", "Fork offset, mm");
    }

    /** Luminance, 0 to 255: ITU-R BT.601. */
    private static double grey(Color colour) {
        return 0.299 * colour.getRed() + 0.587 * colour.getGreen() + 0.114 * colour.getBlue();
    }

    private static List<String> words(MapFigure map) {
        TextRecorder recorder = new TextRecorder();
        FigurePainter.of(map, Palette.LIGHT, 1).draw(recorder, AREA);
        return recorder.words();
    }
}
