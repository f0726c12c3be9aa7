package rakeline.shell;

import java.awt.Color;
import java.awt.Component;
import javax.swing.BorderFactory;
import javax.swing.JList;
import javax.swing.JTextArea;
import javax.swing.ListCellRenderer;
import javax.swing.border.Border;
import rakeline.shell.look.Heights;
import rakeline.shell.look.Look;
import rakeline.shell.look.Words;

/** What stands on the shelf: a heading in soft letters, or a page, with the accent at its edge where it is open. */
final class ShelfCells implements ListCellRenderer<Shelf.Item> {
    private final Look look;
    private final int width;

    /**
     * @param width of the shelf, in pixels at scale 1
     */
    ShelfCells(Look look, int width) {
        this.look = look;
        this.width = width;
    }

    @Override
    public Component getListCellRendererComponent(
            JList<? extends Shelf.Item> list, Shelf.Item item, int index, boolean isSelected, boolean hasFocus) {
        JTextArea cell = item instanceof Shelf.Item.Heading
                ? heading(item.toString())
                : page(item, isSelected, hasFocus && list.isFocusOwner());
        cell.setSize(look.px(width) - 1, Heights.of(cell, look.px(width) - 1));
        return cell;
    }

    private JTextArea heading(String words) {
        JTextArea cell = Words.paragraph(words, look.softStrong(), look.soft());
        cell.setBorder(look.room(4, 4, 1, 2));
        return cell;
    }

    private JTextArea page(Shelf.Item item, boolean isSelected, boolean hasKeys) {
        JTextArea cell = Words.paragraph(item.toString(), look.body(), look.ink());
        cell.setOpaque(true);
        cell.setBackground(isSelected ? look.wash() : look.paper());
        cell.setBorder(edge(isSelected ? look.accent() : look.paper(), hasKeys ? look.edge() : cell.getBackground()));
        cell.setToolTipText(tip(item));
        cell.getAccessibleContext().setAccessibleName(item.toString());
        return cell;
    }

    /** The mark of the page that is open, and around it the ring of the keys. */
    private Border edge(Color mark, Color ring) {
        return BorderFactory.createCompoundBorder(
                BorderFactory.createMatteBorder(0, look.px(3), 0, 0, mark),
                BorderFactory.createCompoundBorder(
                        BorderFactory.createLineBorder(ring),
                        BorderFactory.createEmptyBorder(
                                look.px(5) - 1, look.px(13) - 1, look.px(5) - 1, look.px(8) - 1)));
    }

    private static String tip(Shelf.Item item) {
        return item instanceof Shelf.Item.Recent recent ? recent.file().toString() : item.toString();
    }
}
