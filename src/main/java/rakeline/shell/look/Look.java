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

    /** Strings in a snippet. */
    public Color quoted() {
        return either(0x00714F, 0x2FC49A);
    }

    /** Numbers in a snippet. */
    public Color number() {
        return either(0x005B94, 0x56B4E9);
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
        return digits(12.5);
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
