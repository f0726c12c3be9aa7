package rakeline.handout;

import com.openhtmltopdf.bidi.BidiReorderer;
import com.openhtmltopdf.bidi.BidiSplitter;
import com.openhtmltopdf.bidi.BidiTextRun;
import java.text.Bidi;
import java.util.stream.IntStream;

/** Puts scripts that run from right to left in order, as Java does it, and joins Arabic letters. */
final class RightToLeft implements BidiSplitter, BidiReorderer {
    private Bidi paragraph = new Bidi("", Bidi.DIRECTION_LEFT_TO_RIGHT);

    @Override
    public void setParagraph(String words, byte direction) {
        paragraph = new Bidi(words, direction == RTL ? Bidi.DIRECTION_RIGHT_TO_LEFT : Bidi.DIRECTION_LEFT_TO_RIGHT);
    }

    @Override
    public int countTextRuns() {
        return paragraph.getRunCount();
    }

    @Override
    public BidiTextRun getVisualRun(int place) {
        int runs = paragraph.getRunCount();
        byte[] levels = new byte[runs];
        Integer[] order = IntStream.range(0, runs).boxed().toArray(Integer[]::new);
        IntStream.range(0, runs).forEach(run -> levels[run] = (byte) paragraph.getRunLevel(run));
        Bidi.reorderVisually(levels, 0, order, 0, runs);
        int run = order[place];
        int start = paragraph.getRunStart(run);
        return new BidiTextRun(start, paragraph.getRunLimit(run) - start, levels[run] % 2 == 1 ? RTL : LTR);
    }

    @Override
    public byte getBaseDirection(String words) {
        Bidi bidi = new Bidi(words, Bidi.DIRECTION_DEFAULT_LEFT_TO_RIGHT);
        return bidi.baseIsLeftToRight() ? LTR : RTL;
    }

    @Override
    public String reorderRTLTextToLTR(String words) {
        StringBuilder reversed = new StringBuilder(words).reverse();
        return reversed.codePoints()
                .map(RightToLeft::mirrored)
                .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
                .toString();
    }

    /** Brackets face the other way. */
    private static int mirrored(int letter) {
        String pairs = "()[]{}<>«»‹›";
        int at = pairs.indexOf(letter);
        return at < 0 ? letter : pairs.charAt(at ^ 1);
    }

    @Override
    public String shapeText(String words) {
        return ArabicForms.joined(words);
    }

    @Override
    public String deshapeText(String words) {
        return ArabicForms.apart(words);
    }

    @Override
    public boolean isLiveImplementation() {
        return true;
    }
}
