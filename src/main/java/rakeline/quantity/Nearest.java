package rakeline.quantity;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;

/** The nearest known word to a misspelt one. */
public final class Nearest {
    private Nearest() {}

    /** The nearest of the known words, or none when all are far off (more than a third of the letters differ). */
    public static Optional<String> of(String word, Collection<String> known) {
        return known.stream()
                .filter(candidate -> caseAside(word, candidate) <= Math.max(2, candidate.length() / 3))
                .min(Comparator.<String>comparingInt(candidate -> caseAside(word, candidate))
                        .thenComparingInt(candidate -> distance(word, candidate))
                        .thenComparing(Comparator.naturalOrder()));
    }

    /** The end of a sentence that refuses a word: {@code ; did you mean trailMm?}, or a full stop. */
    public static String hint(String word, Collection<String> known) {
        return of(word, known).map(near -> "; did you mean " + near + "?").orElse(".");
    }

    private static int caseAside(String left, String right) {
        return distance(left.toLowerCase(Locale.ROOT), right.toLowerCase(Locale.ROOT));
    }

    /** Insertions, deletions and changes of letters (Wagner and Fischer 1974). */
    private static int distance(String a, String b) {
        int[] row = new int[b.length() + 1];
        for (int j = 0; j <= b.length(); j++) {
            row[j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            int diagonal = row[0];
            row[0] = i;
            for (int j = 1; j <= b.length(); j++) {
                int change = diagonal + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
                diagonal = row[j];
                row[j] = Math.min(change, Math.min(row[j], row[j - 1]) + 1);
            }
        }
        return row[b.length()];
    }
}
