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
        JTextArea cell = item instanceof Shelf.Item.Heading heading ? heading(heading.words()) : page(item, isSelected);
        cell.setSize(look.px(width) - 1, Heights.of(cell, look.px(width) - 1));
        return cell;
    }

    private JTextArea heading(String words) {
        JTextArea cell = Words.paragraph(words, look.softStrong(), look.soft());
        cell.setBorder(look.room(4, 4, 1, 2));
        return cell;
    }

    private JTextArea page(Shelf.Item item, boolean isSelected) {
        JTextArea cell = Words.paragraph(words(item), look.body(), look.ink());
        cell.setOpaque(true);
        cell.setBackground(isSelected ? look.wash() : look.paper());
        cell.setBorder(edge(isSelected ? look.accent() : look.paper()));
        cell.setToolTipText(tip(item));
        cell.getAccessibleContext().setAccessibleName(words(item));
        return cell;
    }

    private Border edge(Color colour) {
        return BorderFactory.createCompoundBorder(
                BorderFactory.createMatteBorder(0, look.px(3), 0, 0, colour),
                BorderFactory.createEmptyBorder(look.px(5), look.px(13), look.px(5), look.px(8)));
    }

    private static String words(Shelf.Item item) {
        return item instanceof Shelf.Item.Bundled bundled
                ? bundled.entry().title()
                : String.valueOf(((Shelf.Item.Recent) item).file().getFileName());
    }

    private static String tip(Shelf.Item item) {
        return item instanceof Shelf.Item.Recent recent ? recent.file().toString() : words(item);
    }
}
