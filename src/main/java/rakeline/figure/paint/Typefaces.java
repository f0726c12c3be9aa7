package rakeline.figure.paint;

import java.awt.Font;
import java.awt.FontFormatException;
import java.io.IOException;
import java.io.InputStream;

/** The typefaces of page and figures, which come with the program; no window toolkit is started. */
public final class Typefaces {
    private static final String INTER = "/com/formdev/flatlaf/fonts/inter/Inter-";
    private static final String MONO = "RobotoMono-";

    /** Running text. */
    public static final Typefaces TEXT = new Typefaces(INTER + "Regular.otf", Font.SANS_SERIF, Font.PLAIN);

    /** Titles, labels, headings. */
    public static final Typefaces STRONG = new Typefaces(INTER + "SemiBold.otf", Font.SANS_SERIF, Font.BOLD);

    /** Code, and figures that must be of one width. */
    public static final Typefaces FIGURES = new Typefaces(MONO + "Regular.ttf", Font.MONOSPACED, Font.PLAIN);

    /** What stands out in code. */
    public static final Typefaces CODE_STRONG = new Typefaces(MONO + "Bold.ttf", Font.MONOSPACED, Font.BOLD);

    /** What is said in code, not done. */
    public static final Typefaces CODE_SLANTED = new Typefaces(MONO + "Italic.ttf", Font.MONOSPACED, Font.ITALIC);

    /** What is said in passing. */
    public static final Typefaces SLANTED = new Typefaces(INTER + "Italic.otf", Font.SANS_SERIF, Font.ITALIC);

    private final String resource;
    private final Font font;
    private final Font anyScript;

    private Typefaces(String resource, String logical, int style) {
        this.resource = resource;
        font = read(resource);
        anyScript = new Font(logical, style, 1);
    }

    /** The typeface at a size in px. */
    public Font at(double size) {
        return font.deriveFont((float) size);
    }

    /** The typeface, or where it lacks a letter of the words, one of the platform that has other scripts. */
    public Font showing(String words, double size) {
        Font fitting = font.canDisplayUpTo(words) < 0 ? font : anyScript;
        return fitting.deriveFont((float) size);
    }

    /** The typeface's file, to embed it in a document. */
    public InputStream open() {
        return open(resource);
    }

    private static InputStream open(String resource) {
        InputStream in = Typefaces.class.getResourceAsStream(resource);
        if (in == null) {
            throw new IllegalStateException("The typeface " + resource + " is missing.");
        }
        return in;
    }

    private static Font read(String resource) {
        try (InputStream in = open(resource)) {
            return Font.createFont(Font.TRUETYPE_FONT, in);
        } catch (IOException | FontFormatException failure) {
            throw new IllegalStateException("The typeface " + resource + " cannot be read.", failure);
        }
    }
}
