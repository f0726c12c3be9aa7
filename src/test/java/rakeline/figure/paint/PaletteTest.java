package rakeline.figure.paint;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class PaletteTest {
    static Stream<Palette> palettes() {
        return Stream.of(Palette.LIGHT, Palette.DARK, Palette.CONTRAST);
    }

    /** Source: WCAG 2.1, contrast ratio. */
    private static double contrast(Color one, Color other) {
        double bright = Math.max(luminance(one), luminance(other));
        double dim = Math.min(luminance(one), luminance(other));
        return (bright + 0.05) / (dim + 0.05);
    }

    /** Source: WCAG 2.1, relative luminance. */
    private static double luminance(Color colour) {
        return 0.2126 * linear(colour.getRed())
                + 0.7152 * linear(colour.getGreen())
                + 0.0722 * linear(colour.getBlue());
    }

    private static double linear(int channel) {
        double share = channel / 255.0;
        return share <= 0.03928 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
    }

    @ParameterizedTest
    @MethodSource("palettes")
    void inkReachesSevenToOneOnPaperAndCard(Palette palette) {
        assertThat(contrast(palette.ink(), palette.paper())).isGreaterThanOrEqualTo(7);
        assertThat(contrast(palette.ink(), palette.card())).isGreaterThanOrEqualTo(7);
    }

    @ParameterizedTest
    @MethodSource("palettes")
    void softTextReachesFourAndAHalfToOneOnPaperCardAndWash(Palette palette) {
        assertThat(Stream.of(palette.paper(), palette.card(), palette.wash()))
                .allMatch(ground -> contrast(palette.soft(), ground) >= 4.5);
    }

    @ParameterizedTest
    @MethodSource("palettes")
    void cautionsReachFourAndAHalfToOne(Palette palette) {
        assertThat(contrast(palette.caution(), palette.paper())).isGreaterThanOrEqualTo(4.5);
        assertThat(contrast(palette.caution(), palette.card())).isGreaterThanOrEqualTo(4.5);
    }

    @ParameterizedTest
    @MethodSource("palettes")
    void curvesReachThreeToOneOnTheCard(Palette palette) {
        assertThat(palette.series()).allMatch(colour -> contrast(colour, palette.card()) >= 3);
    }

    @ParameterizedTest
    @MethodSource("palettes")
    void sixteenSeriesAllDiffer(Palette palette) {
        assertThat(IntStream.range(0, 16).mapToObj(palette::style)).doesNotHaveDuplicates();
    }

    @Test
    void onAnotherGroundTheCardAloneIsAnother() {
        assertThat(Palette.DARK.on(Palette.DARK.paper()).card()).isEqualTo(Palette.DARK.paper());
        assertThat(Palette.DARK.on(Palette.DARK.paper()).on(Palette.DARK.card()))
                .isEqualTo(Palette.DARK);
    }

    @Test
    void fourSeriesDifferInGreyByDashAndMarker() {
        assertThat(IntStream.range(0, 4).mapToObj(i -> Palette.LIGHT.style(i).dash()))
                .doesNotHaveDuplicates();
        assertThat(IntStream.range(0, 4).mapToObj(i -> Palette.LIGHT.style(i).marker()))
                .doesNotHaveDuplicates();
    }
}
