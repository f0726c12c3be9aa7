package rakeline.engine;

import java.util.List;
import java.util.Set;
import rakeline.worksheet.Worksheet;

/** Says what could be typed next in a row, from Java, the library and the rows above. Runs nothing. */
public interface Suggestions extends AutoCloseable {
    /**
     * A word that fits.
     *
     * @param word in place of what is typed from {@link Offer#from()} on; a method with its opening bracket
     * @param signatures each way to call it, or its type; may be empty
     */
    record Suggestion(String word, List<String> signatures) {
        public Suggestion {
            signatures = List.copyOf(signatures);
        }
    }

    /**
     * All words that fit at a place.
     *
     * @param from where the word that they stand for begins in the row's text
     * @param words in code, best first: those whose type fits, then those that could lead there
     * @param parameters inside quotes, the names of the parameters that may take the text; none in code
     */
    record Offer(int from, List<Suggestion> words, Set<String> parameters) {
        public Offer {
            words = List.copyOf(words);
            parameters = Set.copyOf(parameters);
        }
    }

    /** What fits at a place of a row's text; takes its time the first time, so not to be called on the event thread. */
    Offer at(Worksheet page, String row, int caret);

    /** Java's own documentation of what stands before a place, where this Java has its sources; else its signatures. */
    List<String> explain(Worksheet page, String row, int caret);

    @Override
    void close();
}
