package rakeline.figure;

/** Words from a file or a row made fit for one line of a page, a terminal or an XML document. */
public final class PlainText {
    private static final int REPLACEMENT = 0xFFFD;

    private PlainText() {}

    /**
     * The same words with every control character as a blank and every code point that XML forbids as a replacement
     * character. Markup and any script stay as they are.
     */
    public static String oneLine(String words) {
        return words.codePoints()
                .map(PlainText::shown)
                .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
                .toString();
    }

    private static int shown(int codePoint) {
        if (Character.isISOControl(codePoint) || codePoint == 0x2028 || codePoint == 0x2029) {
            return ' ';
        }
        boolean surrogate = codePoint >= 0xD800 && codePoint <= 0xDFFF;
        return surrogate || (codePoint & 0xFFFE) == 0xFFFE ? REPLACEMENT : codePoint;
    }
}
