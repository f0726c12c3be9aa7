package rakeline.handout;

import java.io.File;
import java.io.IOException;
import java.net.URI;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.fontbox.util.autodetect.FontFileFinder;
import org.apache.pdfbox.io.RandomAccessReadBufferedFile;

/**
 * Typefaces of the machine for letters that the program's own lack.
 *
 * @param files those that together have most of them, upright sans-serif ones first
 * @param missing letters that none has
 */
record Fallbacks(List<File> files, Set<Integer> missing) {
    private static final Logger LOG = Logger.getLogger(Fallbacks.class.getName());
    private static final int MOST = 8;

    /** Looks through the machine's typefaces, which takes a moment, where anything is lacking. */
    static Fallbacks covering(Set<Integer> letters) {
        Set<Integer> left = new TreeSet<>(letters);
        List<File> files = new ArrayList<>();
        if (!left.isEmpty()) {
            for (File file : candidates()) {
                if (!left.isEmpty() && files.size() < MOST && takesFrom(left, file)) {
                    files.add(file);
                }
            }
        }
        return new Fallbacks(List.copyOf(files), left);
    }

    private static List<File> candidates() {
        return new FontFileFinder()
                .find().stream()
                        .filter(uri -> uri.getPath() != null
                                && uri.getPath().toLowerCase(Locale.ROOT).endsWith(".ttf"))
                        .map(Fallbacks::file)
                        .distinct()
                        .sorted(Comparator.comparing((File file) -> isPlain(file) ? 0 : 1)
                                .thenComparing(File::getName)
                                .thenComparing(File::getPath))
                        .toList();
    }

    private static File file(URI uri) {
        return new File(uri);
    }

    private static boolean isPlain(File file) {
        String name = file.getName().toLowerCase(Locale.ROOT);
        return name.contains("sans") && !name.matches(".*(bold|italic|oblique|mono|condensed|light|thin|black).*");
    }

    /** Whether the typeface has some of the letters, which are then left no more. */
    private static boolean takesFrom(Set<Integer> left, File file) {
        try (TrueTypeFont font = new TTFParser().parse(new RandomAccessReadBufferedFile(file))) {
            CmapLookup letters = font.getUnicodeCmapLookup(false);
            return letters != null && left.removeIf(letter -> letters.getGlyphId(letter) != 0);
        } catch (IOException | RuntimeException unreadable) {
            LOG.log(Level.FINE, "a typeface that cannot be read is left out", unreadable);
            return false;
        }
    }
}
