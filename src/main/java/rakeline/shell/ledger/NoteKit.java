package rakeline.shell.ledger;

import java.awt.Graphics;
import java.awt.Rectangle;
import java.awt.Shape;
import javax.swing.text.AbstractDocument;
import javax.swing.text.Element;
import javax.swing.text.ParagraphView;
import javax.swing.text.StyledEditorKit;
import javax.swing.text.ViewFactory;

/** Shows a note's paragraphs; one with a hanging first line is painted once, not twice as the toolkit has it. */
final class NoteKit extends StyledEditorKit {
    @Override
    public ViewFactory getViewFactory() {
        ViewFactory usual = super.getViewFactory();
        return element -> AbstractDocument.ParagraphElementName.equals(element.getName())
                ? new Hanging(element)
                : usual.create(element);
    }

    private static final class Hanging extends ParagraphView {
        private boolean firstLinePainted;

        private Hanging(Element element) {
            super(element);
        }

        @Override
        public void paint(Graphics g, Shape allocation) {
            firstLinePainted = false;
            super.paint(g, allocation);
        }

        @Override
        protected void paintChild(Graphics g, Rectangle allocation, int index) {
            boolean again = index == 0 && firstLinePainted;
            firstLinePainted = firstLinePainted || index == 0;
            if (!again) {
                super.paintChild(g, allocation, index);
            }
        }
    }
}
