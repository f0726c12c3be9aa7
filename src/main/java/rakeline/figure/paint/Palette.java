package rakeline.figure.paint;

import java.awt.Color;
import java.util.List;
import rakeline.figure.paint.SeriesStyle.Dash;
import rakeline.figure.paint.SeriesStyle.Marker;

/**
 * The colours of the page and its figures, in one place: paper, cards on it, ink, and the series. Text keeps a contrast
 * of 7:1 on paper and card, soft text and cautions 4.5:1, curves 3:1. Source of the series colours: Okabe and Ito,
 * "Color Universal Design" (2008), lightened for the dark palette.
 *
 * @param soft lesser text
 * @param hairline thin lines between things
 * @param wash a quiet area
 * @param accent what is selected, and nothing else
 * @param series the colours of measures; beyond their number dash and marker tell them apart
 * @param weight what the width of every line is multiplied by
 */
public record Palette(
        String name,
        Color paper,
        Color card,
        Color ink,
        Color soft,
        Color hairline,
        Color wash,
        Color accent,
        Color caution,
        List<Color> series,
        float weight) {

    public static final Palette LIGHT = new Palette(
            "light",
            colour(0xFBFAF6),
            colour(0xFFFFFF),
            colour(0x20262B),
            colour(0x5D666E),
            colour(0xE3DFD5),
            colour(0xEFECE3),
            colour(0x0B6A6B),
            colour(0x8A5A00),
            List.of(colour(0x0072B2), colour(0xD55E00), colour(0x009E73), colour(0xCC79A7)),
            1);

    public static final Palette DARK = new Palette(
            "dark",
            colour(0x15191C),
            colour(0x1C2226),
            colour(0xE9E5DB),
            colour(0x9AA4AA),
            colour(0x2C3439),
            colour(0x20272B),
            colour(0x62C3BE),
            colour(0xE0B15A),
            List.of(colour(0x56B4E9), colour(0xE69F00), colour(0x2FC49A), colour(0xCC79A7)),
            1);

    /** For projectors and paper: black on white, heavier lines. */
    public static final Palette CONTRAST = new Palette(
            "contrast",
            colour(0xFFFFFF),
            colour(0xFFFFFF),
            colour(0x000000),
            colour(0x33393E),
            colour(0xB9B5AA),
            colour(0xF0EEE8),
            colour(0x064F50),
            colour(0x6B4500),
            List.of(colour(0x005A8E), colour(0xB34700), colour(0x00734F), colour(0xA04579)),
            1.4f);

    public Palette {
        series = List.copyOf(series);
    }

    /** The same for a figure that stands on another colour than that of a card. */
    public Palette on(Color ground) {
        return new Palette(name, paper, ground, ink, soft, hairline, wash, accent, caution, series, weight);
    }

    /** The style of the n-th series, from 0; sixteen of them differ. */
    public SeriesStyle style(int index) {
        int round = index / series.size();
        Dash[] dashes = Dash.values();
        Marker[] markers = Marker.values();
        return new SeriesStyle(
                series.get(index % series.size()),
                dashes[(index + round) % dashes.length],
                markers[(index + 2 * round) % markers.length]);
    }

    /** Ground and centre lines: half way from hairline to soft. */
    Color faint() {
        return new Color(
                (hairline.getRed() + soft.getRed()) / 2,
                (hairline.getGreen() + soft.getGreen()) / 2,
                (hairline.getBlue() + soft.getBlue()) / 2);
    }

    /** A width of a line at this palette's weight, in px. */
    float line(double width) {
        return (float) (width * weight);
    }

    private static Color colour(int rgb) {
        return new Color(rgb);
    }
}
