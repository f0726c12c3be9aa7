package rakeline.shell.ledger;

import java.awt.Color;
import java.awt.Font;
import java.awt.font.FontRenderContext;
import java.awt.geom.Rectangle2D;
import javax.swing.text.MutableAttributeSet;
import javax.swing.text.SimpleAttributeSet;
import javax.swing.text.StyleConstants;
import javax.swing.text.StyledDocument;
import org.commonmark.node.AbstractVisitor;
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
import org.commonmark.node.ListItem;
import org.commonmark.node.Node;
import org.commonmark.node.OrderedList;
import org.commonmark.node.Paragraph;
import org.commonmark.node.SoftLineBreak;
import org.commonmark.node.StrongEmphasis;
import org.commonmark.node.Text;
import org.commonmark.node.ThematicBreak;
import rakeline.shell.look.Look;
import rakeline.worksheet.NoteText;

/**
 * Sets a note's CommonMark as text to read. Nothing is fetched: an image shows as its words, a link as its words with
 * the address after them; HTML shows as it is written.
 */
final class NoteWriter extends AbstractVisitor {
    private final Look look;
    private final NoteDocument document = new NoteDocument();
    private MutableAttributeSet style = new SimpleAttributeSet();
    private int depth;
    private int hanging;

    private NoteWriter(Look look) {
        this.look = look;
    }

    /** The note as a document for a text pane. */
    static StyledDocument write(String commonMark, Look look) {
        NoteWriter writer = new NoteWriter(look);
        writer.setFont(look.body());
        StyleConstants.setForeground(writer.style, look.ink());
        NoteText.parse(commonMark).accept(writer);
        writer.document.endNote();
        return writer.document;
    }

    @Override
    public void visit(Heading heading) {
        Font font = heading.getLevel() == 1 ? look.title() : heading.getLevel() == 2 ? look.value() : look.strong();
        int above = heading.getPrevious() == null ? 0 : 2;
        within(() -> setFont(font), () -> {
            visitChildren(heading);
            document.endParagraph(paragraph(above, heading.getLevel() < 3 ? 2 : 1));
        });
    }

    @Override
    public void visit(Paragraph paragraph) {
        block(paragraph, paragraph.getParent() instanceof ListItem ? 1 : 2);
    }

    @Override
    public void visit(BulletList list) {
        deeper(() -> visitChildren(list));
    }

    @Override
    public void visit(OrderedList list) {
        deeper(() -> visitChildren(list));
    }

    @Override
    public void visit(ListItem item) {
        String bullet = bulletOf(item) + "  ";
        Rectangle2D box = look.body().getStringBounds(bullet, new FontRenderContext(null, true, true));
        hanging = (int) Math.ceil(box.getWidth());
        put(bullet);
        visitChildren(item);
    }

    private static String bulletOf(ListItem item) {
        if (!(item.getParent() instanceof OrderedList list)) {
            return "•";
        }
        int number = list.getMarkerStartNumber() == null ? 1 : list.getMarkerStartNumber();
        for (Node before = item.getPrevious(); before != null; before = before.getPrevious()) {
            number++;
        }
        return number + ".";
    }

    @Override
    public void visit(BlockQuote quote) {
        within(() -> colour(look.soft()), () -> deeper(() -> visitChildren(quote)));
    }

    @Override
    public void visit(FencedCodeBlock code) {
        codeBlock(code.getLiteral());
    }

    @Override
    public void visit(IndentedCodeBlock code) {
        codeBlock(code.getLiteral());
    }

    private void codeBlock(String literal) {
        within(() -> setFont(look.code()), () -> {
            put(literal.stripTrailing());
            endBlock(2);
        });
    }

    @Override
    public void visit(HtmlBlock html) {
        put(html.getLiteral());
        endBlock(2);
    }

    @Override
    public void visit(ThematicBreak line) {
        within(() -> colour(look.soft()), () -> put("—"));
        endBlock(2);
    }

    @Override
    public void visit(Emphasis emphasis) {
        within(() -> StyleConstants.setItalic(style, true), () -> visitChildren(emphasis));
    }

    @Override
    public void visit(StrongEmphasis strong) {
        within(() -> setFont(look.strong()), () -> visitChildren(strong));
    }

    @Override
    public void visit(Code code) {
        within(() -> setFont(look.code()), () -> put(code.getLiteral()));
    }

    @Override
    public void visit(Link link) {
        within(() -> StyleConstants.setUnderline(style, true), () -> visitChildren(link));
        within(() -> colour(look.soft()), () -> put(" (" + link.getDestination() + ")"));
    }

    @Override
    public void visit(Image image) {
        put("[");
        visitChildren(image);
        put("]");
    }

    @Override
    public void visit(HtmlInline html) {
        put(html.getLiteral());
    }

    @Override
    public void visit(Text text) {
        put(text.getLiteral());
    }

    @Override
    public void visit(SoftLineBreak softBreak) {
        put(" ");
    }

    @Override
    public void visit(HardLineBreak hardBreak) {
        put("\n");
    }

    private void block(Node node, int unitsBelow) {
        visitChildren(node);
        endBlock(unitsBelow);
    }

    /** Ends a paragraph: its indent, its lines' distance and the room below it. */
    private void endBlock(int unitsBelow) {
        document.endParagraph(paragraph(0, unitsBelow));
    }

    private MutableAttributeSet paragraph(int unitsAbove, int unitsBelow) {
        MutableAttributeSet paragraph = new SimpleAttributeSet();
        StyleConstants.setLineSpacing(paragraph, 0.18f);
        StyleConstants.setSpaceAbove(paragraph, look.space(unitsAbove));
        StyleConstants.setSpaceBelow(paragraph, look.space(unitsBelow));
        StyleConstants.setLeftIndent(paragraph, look.space(5 * depth));
        StyleConstants.setFirstLineIndent(paragraph, -hanging);
        hanging = 0;
        return paragraph;
    }

    private void deeper(Runnable content) {
        depth++;
        content.run();
        depth--;
    }

    private void within(Runnable change, Runnable content) {
        MutableAttributeSet before = style;
        style = new SimpleAttributeSet(before);
        change.run();
        content.run();
        style = before;
    }

    private void setFont(Font font) {
        style.addAttribute(NoteDocument.FONT, font);
    }

    private void colour(Color colour) {
        StyleConstants.setForeground(style, colour);
    }

    private void put(String words) {
        document.append(words, style);
    }
}
