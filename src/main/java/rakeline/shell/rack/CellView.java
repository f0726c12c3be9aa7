package rakeline.shell.rack;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Component;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import javax.swing.JLabel;
import javax.swing.JTable;
import javax.swing.table.TableCellRenderer;
import rakeline.shell.look.Look;

/** A cell: its number, and beneath it the word or two that belong to it. */
final class CellView extends JLabel implements TableCellRenderer {
    private final transient Look look;
    private final transient RackGrid grid;
    private transient RackCell cell = new RackCell("", "", RackCell.Mark.NONE);
    private boolean selected;
    private boolean focused;
    private boolean typed;

    CellView(Look look, RackGrid grid) {
        this.look = look;
        this.grid = grid;
        setOpaque(true);
        putClientProperty("html.disable", true);
    }

    @Override
    public Component getTableCellRendererComponent(
            JTable table, Object value, boolean isSelected, boolean hasFocus, int row, int column) {
        cell = (RackCell) value;
        selected = isSelected;
        focused = hasFocus;
        typed = grid.column(column).isTyped();
        setText(cell.text());
        getAccessibleContext().setAccessibleName(grid.spoken(row, column));
        return this;
    }

    private Font number() {
        return cell.mark() == RackCell.Mark.DISAGREES ? look.strong() : look.body();
    }

    /** The width that the cell needs, in pixels. */
    int wanted(RackCell of) {
        int text = getFontMetrics(look.strong()).stringWidth(of.text());
        int note = getFontMetrics(look.small()).stringWidth(of.note());
        return Math.max(text, note) + look.space(4);
    }

    static int height(Look look, Component on) {
        return on.getFontMetrics(look.strong()).getHeight()
                + on.getFontMetrics(look.small()).getHeight()
                + look.space(2);
    }

    @Override
    protected void paintComponent(Graphics g) {
        Graphics2D pen = (Graphics2D) g.create();
        pen.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        pen.setColor(selected ? look.wash() : typed ? look.card() : look.paper());
        pen.fillRect(0, 0, getWidth(), getHeight());
        FontMetrics above = getFontMetrics(number());
        int base = look.space(1) + above.getAscent();
        write(pen, number(), colour(), cell.text(), base);
        FontMetrics beneath = getFontMetrics(look.small());
        write(
                pen,
                look.small(),
                cell.mark() == RackCell.Mark.DISAGREES ? look.caution() : look.soft(),
                cell.note(),
                look.space(1) + above.getHeight() + beneath.getAscent());
        if (focused) {
            pen.setColor(look.accent());
            pen.setStroke(new BasicStroke(look.px(2)));
            pen.drawRect(look.px(1), look.px(1), getWidth() - look.px(2), getHeight() - look.px(2));
        }
        pen.dispose();
    }

    private Color colour() {
        boolean own = cell.mark() == RackCell.Mark.GIVEN || cell.mark() == RackCell.Mark.DISAGREES;
        return own || !typed ? look.ink() : look.soft();
    }

    private void write(Graphics2D pen, Font font, Color colour, String words, int base) {
        pen.setFont(font);
        pen.setColor(colour);
        pen.drawString(words, getWidth() - look.space(2) - pen.getFontMetrics().stringWidth(words), base);
    }
}
