package rakeline.handout;

import com.openhtmltopdf.bidi.BidiReorderer;
import com.openhtmltopdf.bidi.BidiSplitter;
import com.openhtmltopdf.bidi.BidiTextRun;
import java.text.Bidi;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Puts scripts that run from right to left in order, as Java does it, and joins Arabic letters. The library lays the
 * runs of a line one after another as its paragraph runs, so that a number inside such words of a line that runs left to
 * right would come to stand on their wrong side: there the words and their numbers are one run, ordered within.
 */
final class RightToLeft implements BidiSplitter, BidiReorderer {
    private List<BidiTextRun> runs = List.of();

    @Override
    public void setParagraph(String words, byte direction) {
        boolean rightToLeft = direction == RTL;
        Bidi bidi = new Bidi(words, rightToLeft ? Bidi.DIRECTION_RIGHT_TO_LEFT : Bidi.DIRECTION_LEFT_TO_RIGHT);
        runs = rightToLeft ? visual(bidi).map(run -> run(bidi, run, run)).toList() : islands(bidi);
    }

    @Override
    public int countTextRuns() {
        return runs.size();
    }

    @Override
    public BidiTextRun getVisualRun(int place) {
        return runs.get(place);
    }

    /** The runs, the leftmost first. */
    private static Stream<Integer> visual(Bidi bidi) {
        int count = bidi.getRunCount();
        byte[] levels = new byte[count];
        Integer[] order = IntStream.range(0, count).boxed().toArray(Integer[]::new);
        IntStream.range(0, count).forEach(run -> levels[run] = (byte) bidi.getRunLevel(run));
        Bidi.reorderVisually(levels, 0, order, 0, count);
        return Arrays.stream(order);
    }

    /** The runs of a paragraph that runs left to right, with all that lies deeper as one. */
    private static List<BidiTextRun> islands(Bidi bidi) {
        List<BidiTextRun> runs = new ArrayList<>();
        int first = 0;
        for (int run = 0; run < bidi.getRunCount(); run++) {
            boolean ends =
                    run + 1 == bidi.getRunCount() || bidi.getRunLevel(run) == 0 || bidi.getRunLevel(run + 1) == 0;
            if (ends) {
                runs.add(run(bidi, first, run));
                first = run + 1;
            }
        }
        return List.copyOf(runs);
    }

    private static BidiTextRun run(Bidi bidi, int from, int to) {
        int start = bidi.getRunStart(from);
        boolean rightToLeft = from < to || isRightToLeft(bidi, from);
        return new BidiTextRun(start, bidi.getRunLimit(to) - start, rightToLeft ? RTL : LTR);
    }

    private static boolean isRightToLeft(Bidi bidi, int run) {
        return bidi.getRunLevel(run) % 2 == 1;
    }

    @Override
    public byte getBaseDirection(String words) {
        Bidi bidi = new Bidi(words, Bidi.DIRECTION_DEFAULT_LEFT_TO_RIGHT);
        return bidi.baseIsLeftToRight() ? LTR : RTL;
    }

    @Override
    public String reorderRTLTextToLTR(String words) {
        Bidi bidi = new Bidi(words, Bidi.DIRECTION_RIGHT_TO_LEFT);
        return visual(bidi)
                .map(run -> {
                    String part = words.substring(bidi.getRunStart(run), bidi.getRunLimit(run));
                    return isRightToLeft(bidi, run) ? turned(part) : part;
                })
                .collect(Collectors.joining());
    }

    private static String turned(String words) {
        return new StringBuilder(words)
                .reverse()
                .codePoints()
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
