package rakeline.handout;

import java.util.ArrayList;
import java.util.List;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.Text;
import org.w3c.dom.traversal.DocumentTraversal;
import org.w3c.dom.traversal.NodeFilter;
import org.w3c.dom.traversal.NodeIterator;

/**
 * Puts texts into elements of their own where the layout needs that: long ones in pieces, because with each line it
 * copies what is left of a text; and those beside other elements, because it writes them before these, so that a reader
 * who selects a line would find its words out of order.
 */
final class LongText {
    private static final int LONGEST = 4000;

    private LongText() {}

    static void split(Document document) {
        texts(document).forEach(text -> split(document, text));
    }

    private static List<Text> texts(Document document) {
        List<Text> found = new ArrayList<>();
        Node body = document.getElementsByTagName("body").item(0);
        NodeIterator texts = ((DocumentTraversal) document).createNodeIterator(body, NodeFilter.SHOW_TEXT, null, false);
        for (Node node = texts.nextNode(); node != null; node = texts.nextNode()) {
            if (needsElement((Text) node)) {
                found.add((Text) node);
            }
        }
        return found;
    }

    private static boolean needsElement(Text text) {
        boolean isBesideOthers = text.getPreviousSibling() != null || text.getNextSibling() != null;
        return text.getLength() > LONGEST || (isBesideOthers && !text.getData().isBlank());
    }

    private static void split(Document document, Text text) {
        String words = text.getData();
        for (int from = 0; from < words.length(); ) {
            int to = end(words, from);
            Element piece = document.createElement("span");
            piece.setTextContent(words.substring(from, to));
            text.getParentNode().insertBefore(piece, text);
            from = to;
        }
        text.getParentNode().removeChild(text);
    }

    /** After a blank where there is one, and never between two halves of a letter. */
    private static int end(String words, int from) {
        if (words.length() - from <= LONGEST) {
            return words.length();
        }
        int blank = words.lastIndexOf(' ', from + LONGEST - 1) + 1;
        int end = blank > from ? blank : from + LONGEST;
        return Character.isLowSurrogate(words.charAt(end)) ? end - 1 : end;
    }
}
