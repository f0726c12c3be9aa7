package rakeline.shell.look;

import java.awt.Color;
import java.awt.Font;
import java.awt.Insets;
import java.util.Locale;
import javax.swing.BorderFactory;
import javax.swing.border.Border;
import rakeline.figure.paint.Palette;
import rakeline.figure.paint.Typefaces;

/**
 * Colours, type and spacing of the window, in one theme at one size.
 *
 * @param scale 1 to 2; every length and every letter grows with it
 */
public record Look(Palette palette, double scale) {
    private static final double CODE_PX = 12.5;

    public boolean dark() {
        return palette.equals(Palette.DARK);
    }

    private Color either(int light, int dim) {
        return new Color(dark() ? dim : light);
    }

    public Color paper() {
        return palette.paper();
    }

    public Color card() {
        return palette.card();
    }

    public Color ink() {
        return palette.ink();
    }

    public Color soft() {
        return palette.soft();
    }

    public Color hairline() {
        return palette.hairline();
    }

    public Color wash() {
        return palette.wash();
    }

    public Color accent() {
        return palette.accent();
    }

    public Color caution() {
        return palette.caution();
    }

    /** Texts in a snippet. */
    public Color quoted() {
        return palette.equals(Palette.CONTRAST) ? new Color(0x6E2A10) : either(0x8F3B1B, 0xE3A587);
    }

    /** The edge of a field: 3:1 against what it stands on, where contrast is to be high twice that. */
    public Color edge() {
        return palette.equals(Palette.CONTRAST) ? new Color(0x5F6468) : either(0x8A8F92, 0x6E7A81);
    }

    /** The accent as a property of a style. */
    public String hexAccent() {
        return hex(accent());
    }

    /** The card's colour as a property of a style. */
    public String hexCard() {
        return hex(card());
    }

    /** A colour as a property of a style. */
    public static String hex(Color colour) {
        return String.format(Locale.ROOT, "#%06X", colour.getRGB() & 0xFFFFFF);
    }

    /** So many pixels at scale 1. */
    public int px(double pixels) {
        return (int) Math.round(pixels * scale);
    }

    /** Multiples of the one spacing unit, 4 pixels. */
    public int space(int units) {
        return px(4.0 * units);
    }

    public Font body() {
        return text(13);
    }

    public Font strong() {
        return Typefaces.STRONG.at(13 * scale);
    }

    public Font softText() {
        return text(12);
    }

    public Font softStrong() {
        return Typefaces.STRONG.at(12 * scale);
    }

    public Font small() {
        return text(11.5);
    }

    public Font value() {
        return Typefaces.STRONG.at(15 * scale);
    }

    public Font title() {
        return Typefaces.STRONG.at(17 * scale);
    }

    public Font code() {
        return digits(CODE_PX);
    }

    /** What stands out in code: numbers, which are there to be tried. */
    public Font codeStrong() {
        return Typefaces.CODE_STRONG.at(CODE_PX * scale);
    }

    /** What code says and does not do: texts and comments. */
    public Font codeSlanted() {
        return Typefaces.CODE_SLANTED.at(CODE_PX * scale);
    }

    /** The face whose letters are all of one width, at a size in pixels at scale 1. */
    public Font digits(double size) {
        return Typefaces.FIGURES.at(size * scale);
    }

    /** The text face at a size in pixels at scale 1. */
    public Font text(double size) {
        return Typefaces.TEXT.at(size * scale);
    }

    /** Room inside, in spacing units. */
    public Border room(int top, int left, int bottom, int right) {
        return BorderFactory.createEmptyBorder(space(top), space(left), space(bottom), space(right));
    }

    public Insets insets(int vertical, int horizontal) {
        return new Insets(space(vertical), space(horizontal), space(vertical), space(horizontal));
    }

    /** One hairline below, above, left or right. */
    public Border line(int top, int left, int bottom, int right) {
        return BorderFactory.createMatteBorder(top, left, bottom, right, hairline());
    }
}
