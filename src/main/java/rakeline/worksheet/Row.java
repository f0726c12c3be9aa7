package rakeline.worksheet;

import java.util.OptionalInt;

/** A row of a worksheet: a note or a snippet; the id is stable and unique in its worksheet. */
public sealed interface Row {
    String id();

    /** The text as typed, lines joined by {@code \n}, without a final line end. */
    String text();

    Row withText(String text);

    /** Prose in CommonMark. */
    record Note(String id, String text) implements Row {
        @Override
        public Note withText(String newText) {
            return new Note(id, newText);
        }
    }

    /**
     * Java.
     *
     * @param waits true: runs only when asked
     * @param folded true: the window shows it as one line
     * @param timeLimitSeconds empty: the preferences' limit
     */
    record Snippet(String id, String text, boolean waits, boolean folded, OptionalInt timeLimitSeconds) implements Row {
        @Override
        public Snippet withText(String newText) {
            return new Snippet(id, newText, waits, folded, timeLimitSeconds);
        }

        public Snippet waiting(boolean nowWaits) {
            return new Snippet(id, text, nowWaits, folded, timeLimitSeconds);
        }

        public Snippet folded(boolean nowFolded) {
            return new Snippet(id, text, waits, nowFolded, timeLimitSeconds);
        }
    }
}
