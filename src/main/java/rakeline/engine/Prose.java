package rakeline.engine;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import rakeline.quantity.Refusal;

/**
 * Fills a note with what the rows of its page came to. A place to be filled is written {@code {{what|decimals}}}:
 *
 * <ul>
 *   <li>{@code {{trail|1}}}: the number that the variable {@code trail} holds, with one decimal; without {@code |1} as
 *       the row shows it;
 *   <li>{@code {{each.trail|1}}}: the same, of the row whose id, or else whose name, is {@code each};
 *   <li>{@code {{curve.trailMm|1}}}: of the chart {@code curve} the trail where its line stands, of a table of one line
 *       that line's;
 *   <li>{@code {{curve.trailMm[first]}}}, {@code [last]}, {@code [least]}, {@code [most]}, {@code [#3]} the third,
 *       {@code [70.5]} or {@code [Front-centre]} the line whose first cell says so.
 * </ul>
 *
 * <p>What stands in a code span stays as it is. What cannot be filled becomes a dash, and is told.
 */
public final class Prose {
    private static final Pattern PLACE =
            Pattern.compile("`[^`\\n]*`|\\{\\{([^{}|\\n]{1,200})(?:\\|\\s*([0-9])\\s*)?}}");
    private static final Pattern MARKS = Pattern.compile("[\\\\`*_{}\\[\\]<>()#!&~|]");
    private static final String DASH = "–";

    private final RowNumbers numbers;

    private Prose(RowNumbers numbers) {
        this.numbers = numbers;
    }

    /** What notes can be filled with once rows have run. */
    public static Prose of(List<Outcome> outcomes) {
        return new Prose(new RowNumbers(outcomes));
    }

    /**
     * A note that is filled.
     *
     * @param text CommonMark still
     * @param missing for each place that could not be filled, one sentence
     */
    public record Filled(String text, List<String> missing) {
        public Filled {
            missing = List.copyOf(missing);
        }
    }

    /** Fills a note's text. */
    public Filled fill(String note) {
        List<String> missing = new ArrayList<>();
        String text = PLACE.matcher(note).replaceAll(found -> Matcher.quoteReplacement(filled(found.group(), missing)));
        return new Filled(text, missing);
    }

    private String filled(String place, List<String> missing) {
        Matcher parts = PLACE.matcher(place);
        if (!parts.matches() || parts.group(1) == null) {
            return place;
        }
        try {
            int decimals = parts.group(2) == null ? RowNumbers.AS_SHOWN : Integer.parseInt(parts.group(2));
            return MARKS.matcher(numbers.words(parts.group(1).strip(), decimals))
                    .replaceAll("\\\\$0");
        } catch (Refusal refusal) {
            missing.add(place + " " + refusal.getMessage());
            return DASH;
        }
    }
}
