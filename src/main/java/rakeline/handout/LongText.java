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
 * Splits long texts into pieces that follow each other without a gap: the layout copies what is left of a text with each
 * line that it sets.
 */
final class LongText {
    private static final int LONGEST = 4000;

    private LongText() {}

    static void split(Document document) {
        tooLong(document).forEach(text -> split(document, text));
    }

    private static List<Text> tooLong(Document document) {
        List<Text> found = new ArrayList<>();
        Node body = document.getElementsByTagName("body").item(0);
        NodeIterator texts = ((DocumentTraversal) document).createNodeIterator(body, NodeFilter.SHOW_TEXT, null, false);
        for (Node node = texts.nextNode(); node != null; node = texts.nextNode()) {
            if (node.getNodeValue().length() > LONGEST) {
                found.add((Text) node);
            }
        }
        return found;
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
