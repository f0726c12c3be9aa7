package rakeline.shell.rack;

import java.awt.Component;
import java.awt.Dimension;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.util.ArrayList;
import java.util.List;
import javax.swing.JLabel;
import javax.swing.JTable;
import javax.swing.table.TableCellRenderer;
import rakeline.shell.look.Look;

/** The head of a column: its label over up to three lines, its unit, and whether it is computed. */
final class HeadView extends JLabel implements TableCellRenderer {
    private static final int LINES = 3;

    private final transient Look look;
    private final transient RackStore store;
    private transient RackColumn column = RackColumn.of(RackChoices.USUAL.get(0));

    HeadView(Look look, RackStore store) {
        this.look = look;
        this.store = store;
        putClientProperty("html.disable", true);
    }

    @Override
    public Component getTableCellRendererComponent(
            JTable table, Object value, boolean isSelected, boolean hasFocus, int row, int index) {
        column = store.state().columns().get(index);
        String spoken = column.heading(store.state().lengths()) + (column.isTyped() ? "" : ", computed");
        setText(spoken);
        setToolTipText(column.quantity().definition() + " (" + column.key() + ")");
        getAccessibleContext().setAccessibleName(spoken);
        return this;
    }

    private String foot() {
        return column.unitIn(store.state().lengths()) + (column.isTyped() ? "" : ", computed");
    }

    /** The width that a column's head needs, in pixels. */
    int wanted(RackColumn of) {
        column = of;
        FontMetrics metrics = getFontMetrics(look.softStrong());
        int widest = getFontMetrics(look.small()).stringWidth(foot());
        for (String word : of.quantity().label().split(" ", -1)) {
            widest = Math.max(widest, metrics.stringWidth(word));
        }
        while (lines(of.quantity().label(), metrics, widest).size() > LINES) {
            widest += look.space(2);
        }
        return widest + look.space(4);
    }

    static List<String> lines(String label, FontMetrics metrics, int width) {
        List<String> lines = new ArrayList<>();
        String line = "";
        for (String word : label.split(" ", -1)) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (!line.isEmpty() && metrics.stringWidth(longer) > width) {
                lines.add(line);
                line = word;
            } else {
                line = longer;
            }
        }
        lines.add(line);
        return lines;
    }

    @Override
    public Dimension getPreferredSize() {
        int label = getFontMetrics(look.softStrong()).getHeight();
        return new Dimension(
                look.px(60), LINES * label + getFontMetrics(look.small()).getHeight() + look.space(3));
    }

    @Override
    protected void paintComponent(Graphics g) {
        Graphics2D pen = (Graphics2D) g.create();
        pen.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        pen.setColor(look.paper());
        pen.fillRect(0, 0, getWidth(), getHeight());
        FontMetrics small = getFontMetrics(look.small());
        int base = getHeight() - look.space(1) - small.getDescent();
        pen.setFont(look.small());
        pen.setColor(look.soft());
        right(pen, small, foot(), base);
        FontMetrics strong = getFontMetrics(look.softStrong());
        List<String> lines = lines(column.quantity().label(), strong, getWidth() - look.space(4));
        pen.setFont(look.softStrong());
        pen.setColor(look.ink());
        int y = base - small.getHeight() - (lines.size() - 1) * strong.getHeight();
        for (String line : lines) {
            right(pen, strong, line, y);
            y += strong.getHeight();
        }
        pen.setColor(look.hairline());
        pen.drawLine(0, getHeight() - 1, getWidth(), getHeight() - 1);
        pen.dispose();
    }

    private void right(Graphics2D pen, FontMetrics metrics, String words, int base) {
        pen.drawString(words, getWidth() - look.space(2) - metrics.stringWidth(words), base);
    }
}
