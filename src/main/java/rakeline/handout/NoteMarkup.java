package rakeline.handout;

import java.util.Optional;
import org.commonmark.node.BlockQuote;
import org.commonmark.node.BulletList;
import org.commonmark.node.Code;
import org.commonmark.node.Emphasis;
import org.commonmark.node.FencedCodeBlock;
import org.commonmark.node.HardLineBreak;
import org.commonmark.node.Heading;
import org.commonmark.node.HtmlBlock;
import org.commonmark.node.HtmlInline;
import org.commonmark.node.Image;
import org.commonmark.node.IndentedCodeBlock;
import org.commonmark.node.Link;
import org.commonmark.node.ListBlock;
import org.commonmark.node.ListItem;
import org.commonmark.node.Node;
import org.commonmark.node.OrderedList;
import org.commonmark.node.Paragraph;
import org.commonmark.node.SoftLineBreak;
import org.commonmark.node.StrongEmphasis;
import org.commonmark.node.Text;
import org.commonmark.node.ThematicBreak;
import rakeline.worksheet.NoteText;

/**
 * A note's CommonMark as XHTML. HTML in it is text, an image its words, a link its words with the address after them;
 * nothing is fetched. It is walked without recursion, and what lies nested deeper than {@value #DEEPEST} levels stands
 * on that level, so that no note can be too deep.
 */
final class NoteMarkup {
    private static final int DEEPEST = 12;

    private final Markup out;
    private final Headings headings;
    private final int under;
    private int depth;

    private NoteMarkup(Markup out, Headings headings, int under) {
        this.out = out;
        this.headings = headings;
        this.under = under;
    }

    /** Writes a note; its headings stand below that which it stands under. */
    static void write(Block.Prose note, Markup out, Headings headings) {
        Node document = NoteText.parse(note.commonMark());
        if (repeats(document.getFirstChild(), note.omitting())) {
            document.getFirstChild().unlink();
        }
        new NoteMarkup(out, headings, note.under()).walk(document);
    }

    private static boolean repeats(Node first, String title) {
        return first instanceof Heading
                && first.getFirstChild() instanceof Text text
                && text.getNext() == null
                && text.getLiteral().equals(title);
    }

    private void walk(Node document) {
        Node node = document.getFirstChild();
        while (node != null && node != document) {
            enter(node);
            if (node.getFirstChild() != null && isEntered(node)) {
                node = node.getFirstChild();
            } else {
                node = onward(node, document);
            }
        }
    }

    /** The next node after all of this one, those that end there left. */
    private Node onward(Node done, Node document) {
        Node node = done;
        leave(node);
        while (node.getNext() == null && node.getParent() != document) {
            node = node.getParent();
            leave(node);
        }
        return node.getNext();
    }

    private static boolean isEntered(Node node) {
        return !(node instanceof Heading);
    }

    private void enter(Node node) {
        literal(node).ifPresent(out::text);
        if (node instanceof Heading heading) {
            headings.write(out, Math.min(6, heading.getLevel() + under), PlainNote.words(heading));
        } else if (codeOf(node).isPresent()) {
            out.open("pre").element("code", codeOf(node).get().stripTrailing()).close();
        } else if (node instanceof Code code) {
            out.element("code", code.getLiteral());
        } else if (node instanceof HtmlBlock html) {
            out.element("p", html.getLiteral(), "dir", "auto");
        } else if (node instanceof ThematicBreak) {
            out.lone("hr");
        } else if (node instanceof HardLineBreak) {
            out.lone("br");
        } else if (node instanceof Image) {
            out.text("[");
        }
        element(node).ifPresent(name -> begin(node, name));
    }

    private void begin(Node node, String name) {
        depth++;
        if (depth > DEEPEST) {
            return;
        }
        if (node instanceof OrderedList list
                && list.getMarkerStartNumber() != null
                && list.getMarkerStartNumber() != 1) {
            out.open(name, "start", String.valueOf(list.getMarkerStartNumber()));
        } else if (node instanceof Paragraph) {
            out.open(name, "dir", "auto");
        } else {
            out.open(name);
        }
    }

    private void leave(Node node) {
        if (node instanceof Link link) {
            out.open("span", "class", "address")
                    .text(" (" + link.getDestination() + ")")
                    .close();
        } else if (node instanceof Image) {
            out.text("]");
        }
        if (element(node).isPresent()) {
            if (depth <= DEEPEST) {
                out.close();
            }
            depth--;
        }
    }

    private static Optional<String> literal(Node node) {
        if (node instanceof Text text) {
            return Optional.of(text.getLiteral());
        }
        if (node instanceof HtmlInline html) {
            return Optional.of(html.getLiteral());
        }
        return node instanceof SoftLineBreak ? Optional.of("\n") : Optional.empty();
    }

    private static Optional<String> codeOf(Node node) {
        if (node instanceof FencedCodeBlock fenced) {
            return Optional.of(fenced.getLiteral());
        }
        return node instanceof IndentedCodeBlock indented ? Optional.of(indented.getLiteral()) : Optional.empty();
    }

    /** The element that stands for a node that holds others; none where its place says that already. */
    private static Optional<String> element(Node node) {
        if (node instanceof Paragraph) {
            return node.getParent().getParent() instanceof ListBlock list && list.isTight()
                    ? Optional.empty()
                    : Optional.of("p");
        }
        if (node instanceof BlockQuote) {
            return Optional.of("blockquote");
        }
        if (node instanceof ListBlock) {
            return Optional.of(node instanceof BulletList ? "ul" : "ol");
        }
        if (node instanceof ListItem) {
            return Optional.of("li");
        }
        return node instanceof Emphasis
                ? Optional.of("em")
                : node instanceof StrongEmphasis ? Optional.of("strong") : Optional.empty();
    }
}
