package rakeline.handout;

/** Headings as they are written, each with an id of its own and never more than one level below the one before. */
final class Headings {
    private static final int DEEPEST = 6;

    private int written;
    private int level = 1;

    void write(Markup out, int wanted, String words) {
        written++;
        level = Math.max(2, Math.min(Math.min(wanted, level + 1), DEEPEST));
        out.element("h" + level, words, "id", "h" + written, "dir", "auto").line();
    }
}
