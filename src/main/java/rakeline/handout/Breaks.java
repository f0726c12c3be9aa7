package rakeline.handout;

import com.openhtmltopdf.extend.FSTextBreaker;
import java.text.BreakIterator;
import java.util.Locale;

/**
 * Where a line may end: where Java says, and within a word that no line can hold. It looks a little ahead and no
 * further, so that a word of a million letters takes no longer than as many letters in short words.
 */
final class Breaks implements FSTextBreaker {
    private static final int AHEAD = 160;
    private static final int LONGEST = 60;

    private final BreakIterator words = BreakIterator.getLineInstance(Locale.ROOT);
    private String text = "";
    private int at;

    @Override
    public void setText(String newText) {
        text = newText;
        at = 0;
    }

    @Override
    public int next() {
        if (at >= text.length()) {
            return BreakIterator.DONE;
        }
        int end = Math.min(text.length(), at + AHEAD);
        words.setText(text.substring(at, end));
        int step = words.next();
        at += at + step < end || end == text.length() ? step : LONGEST;
        if (at < text.length() && Character.isLowSurrogate(text.charAt(at))) {
            at++;
        }
        return at;
    }
}
