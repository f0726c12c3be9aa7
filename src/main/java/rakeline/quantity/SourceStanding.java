package rakeline.quantity;

/** How far a source can be relied on: whether it was read, and where. */
public enum SourceStanding {
    READ("read in the source"),
    COPY("read in a secondary copy"),
    DERIVED("derived and checked by another calculation"),
    PRACTICE("common practice"),
    MEMORY("from memory, not verified");

    private final String words;

    SourceStanding(String words) {
        this.words = words;
    }

    /** In words, as they stand behind a source. */
    public String words() {
        return words;
    }
}
