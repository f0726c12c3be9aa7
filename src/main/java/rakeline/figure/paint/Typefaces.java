package rakeline.figure.paint;

import java.awt.Font;
import java.awt.FontFormatException;
import java.io.IOException;
import java.io.InputStream;

/** The typefaces of page and figures, read from the libraries that carry them; no window toolkit is started. */
public final class Typefaces {
    private static final String FOLDER = "/com/formdev/flatlaf/fonts/";

    /** Running text. */
    public static final Typefaces TEXT = new Typefaces("inter/Inter-Regular.otf", Font.SANS_SERIF, Font.PLAIN);

    /** Titles, labels, headings. */
    public static final Typefaces STRONG = new Typefaces("inter/Inter-SemiBold.otf", Font.SANS_SERIF, Font.BOLD);

    /** Code, and figures that must be of one width. */
    public static final Typefaces FIGURES =
            new Typefaces("jetbrains_mono/JetBrainsMono-Regular.ttf", Font.MONOSPACED, Font.PLAIN);

    /** What is said in passing. */
    public static final Typefaces SLANTED = new Typefaces("inter/Inter-Italic.otf", Font.SANS_SERIF, Font.ITALIC);

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
        InputStream in = Typefaces.class.getResourceAsStream(FOLDER + resource);
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
