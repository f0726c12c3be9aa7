package rakeline.worksheet;

import org.commonmark.node.Document;
import org.commonmark.node.FencedCodeBlock;
import org.commonmark.node.Node;
import org.commonmark.parser.Parser;

/**
 * Reads a note's CommonMark within bounds, so that no note takes for ever or is too deep to be walked through. One
 * beyond them is a single block of text, as it is written.
 */
public final class NoteText {
    /** Signs of one kind that may open something: for each the parser looks through the rest, or goes a level deeper. */
    static final int MOST_SIGNS = 2_000;

    private static final String SIGNS = "<[*_";

    /** Levels of lists, quotes, emphasis, one in another. */
    static final int DEEPEST = 50;

    private static final Parser PARSER = Parser.builder().build();

    private NoteText() {}

    public static Node parse(String commonMark) {
        if (SIGNS.chars().anyMatch(sign -> count(commonMark, sign) > MOST_SIGNS)) {
            return asWritten(commonMark);
        }
        Node note = PARSER.parse(commonMark);
        return isDeep(note) ? asWritten(commonMark) : note;
    }

    private static long count(String text, int sign) {
        return text.chars().filter(c -> c == sign).count();
    }

    /** Walks without recursion, which the depth would exhaust. */
    private static boolean isDeep(Node note) {
        int depth = 0;
        for (Node at = note; at != null && depth <= DEEPEST; depth++) {
            Node inner = at.getFirstChild();
            while (inner == null && at != null) {
                inner = at.getNext();
                at = at.getParent();
                depth--;
            }
            at = inner;
        }
        return depth > DEEPEST;
    }

    private static Node asWritten(String text) {
        FencedCodeBlock block = new FencedCodeBlock();
        block.setLiteral(text);
        Document document = new Document();
        document.appendChild(block);
        return document;
    }
}
