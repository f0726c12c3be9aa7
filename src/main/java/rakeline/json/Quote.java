package rakeline.json;

/** What someone wrote, made fit to stand in a sentence: on one line and not too long. */
public final class Quote {
    private static final int LONGEST = 40;

    private Quote() {}

    /** At most 40 characters of it, control characters as question marks. */
    public static String of(String text) {
        String cut = text.length() <= LONGEST ? text : text.substring(0, LONGEST) + "…";
        return cut.replaceAll("[\\p{Cntrl}\u0085\u2028\u2029]", "?");
    }
}
