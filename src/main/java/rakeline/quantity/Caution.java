package rakeline.quantity;

/**
 * What has to stand next to a number where that number can mislead or hurt someone. It is said in full where it first
 * stands on a page, and in a word from then on.
 *
 * @param word a few words that name it: {@code toe contact}
 * @param sentence all of it, a sentence or two
 * @param repeated whether it has been said in full before
 */
public record Caution(String word, String sentence, boolean repeated) {
    /** One that has not been said yet. */
    public Caution(String word, String sentence) {
        this(word, sentence, false);
    }

    /** The same, said before. */
    public Caution again() {
        return new Caution(word, sentence, true);
    }

    /** As it stands on the page: all of it, or its word. */
    public String text() {
        return repeated ? word : sentence;
    }
}
