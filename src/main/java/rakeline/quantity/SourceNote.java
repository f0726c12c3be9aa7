package rakeline.quantity;

/**
 * What one part of a declaration rests on, and whether that source was read.
 *
 * @param part of the declaration: its definition, default, limit, formula or uncertainty
 * @param text the source; empty where the standing says all
 */
public record SourceNote(Part part, SourceStanding standing, String text) {
    /** What a declaration consists of, as far as it can have a source. */
    public enum Part {
        DEFINITION("definition"),
        DEFAULT("value where none is given"),
        LIMIT("limits"),
        FORMULA("formula"),
        UNCERTAINTY("uncertainty");

        private final String words;

        Part(String words) {
            this.words = words;
        }

        /** As it is called in a sentence. */
        public String words() {
            return words;
        }
    }

    /** The source, and how far it can be relied on. */
    public String source() {
        return text.isEmpty() ? standing.words() : text + ", " + standing.words();
    }

    /** The same behind what it is the source of. */
    public String words() {
        return part.words() + ": " + source();
    }
}
