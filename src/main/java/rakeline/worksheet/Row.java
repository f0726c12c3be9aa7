package rakeline.worksheet;

import java.util.OptionalInt;
import rakeline.quantity.Refusal;

/**
 * A row of a worksheet: a note or a snippet.
 *
 * <p>Its id is stable, unique in its worksheet, and made of up to 40 letters {@code A..Z} and {@code a..z}, digits,
 * {@code -} and {@code _}. Its text is as typed, lines joined by {@code \n} whatever they were joined by.
 */
public sealed interface Row {
    /** The longest time limit of a row, in seconds. */
    int LONGEST_TIME_LIMIT = 3600;

    String id();

    String text();

    /** Whether the window shows it as one line until it is opened. */
    boolean folded();

    Row withText(String text);

    Row folded(boolean nowFolded);

    /** Prose in CommonMark. */
    record Note(String id, String text, boolean folded) implements Row {
        /** Stands open. */
        public Note(String id, String text) {
            this(id, text, false);
        }

        /** @throws Refusal where the id is not one */
        public Note {
            Names.checkId(id);
            text = lines(text);
        }

        @Override
        public Note withText(String newText) {
            return new Note(id, newText, folded);
        }

        @Override
        public Note folded(boolean nowFolded) {
            return new Note(id, text, nowFolded);
        }
    }

    /**
     * Java.
     *
     * @param waits true: runs only when asked
     * @param timeLimitSeconds 1 to {@value #LONGEST_TIME_LIMIT}; empty: the preferences' limit
     */
    record Snippet(String id, String text, boolean waits, boolean folded, OptionalInt timeLimitSeconds) implements Row {
        /** @throws Refusal where the id is not one, or the time limit is out of range */
        public Snippet {
            Names.checkId(id);
            checkTimeLimit(timeLimitSeconds);
            text = lines(text);
        }

        /** Runs by itself, stands open, has the preferences' time limit. */
        public static Snippet of(String id, String text) {
            return new Snippet(id, text, false, false, OptionalInt.empty());
        }

        @Override
        public Snippet withText(String newText) {
            return new Snippet(id, newText, waits, folded, timeLimitSeconds);
        }

        public Snippet waiting(boolean nowWaits) {
            return new Snippet(id, text, nowWaits, folded, timeLimitSeconds);
        }

        @Override
        public Snippet folded(boolean nowFolded) {
            return new Snippet(id, text, waits, nowFolded, timeLimitSeconds);
        }

        public Snippet withTimeLimit(OptionalInt seconds) {
            return new Snippet(id, text, waits, folded, seconds);
        }
    }

    private static void checkTimeLimit(OptionalInt seconds) {
        seconds.ifPresent(given -> {
            if (given < 1 || given > LONGEST_TIME_LIMIT) {
                throw new Refusal(
                        "the time limit is " + given + " s; accepted is a whole number 1.." + LONGEST_TIME_LIMIT + ".");
            }
        });
    }

    private static String lines(String text) {
        return text.replace("\r\n", "\n").replace('\r', '\n');
    }
}
