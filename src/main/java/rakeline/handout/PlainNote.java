package rakeline.handout;

import org.commonmark.node.Code;
import org.commonmark.node.HtmlInline;
import org.commonmark.node.Node;
import org.commonmark.node.SoftLineBreak;
import org.commonmark.node.Text;

/** The words of a piece of a note, without their markup. */
final class PlainNote {
    private PlainNote() {}

    static String words(Node whole) {
        StringBuilder words = new StringBuilder();
        Node node = whole.getFirstChild();
        while (node != null && node != whole) {
            words.append(own(node));
            node = next(node, whole);
        }
        return words.toString();
    }

    private static Node next(Node done, Node whole) {
        if (done.getFirstChild() != null) {
            return done.getFirstChild();
        }
        Node node = done;
        while (node.getNext() == null && node != whole) {
            node = node.getParent();
        }
        return node == whole ? whole : node.getNext();
    }

    private static String own(Node node) {
        if (node instanceof Text text) {
            return text.getLiteral();
        }
        if (node instanceof Code code) {
            return code.getLiteral();
        }
        if (node instanceof HtmlInline html) {
            return html.getLiteral();
        }
        return node instanceof SoftLineBreak ? " " : "";
    }
}
