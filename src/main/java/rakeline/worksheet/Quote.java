package rakeline.worksheet;

/** What someone wrote, made fit to stand in a sentence: on one line and not too long. */
final class Quote {
    private static final int LONGEST = 40;

    private Quote() {}

    static String of(String text) {
        String cut = text.length() <= LONGEST ? text : text.substring(0, LONGEST) + "…";
        return cut.replaceAll("[\\p{Cntrl}\u0085\u2028\u2029]", "?");
    }
}
