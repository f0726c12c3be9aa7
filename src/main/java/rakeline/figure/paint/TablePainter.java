package rakeline.figure.paint;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import rakeline.figure.Table;
import rakeline.figure.paint.TableLayout.Block;
import rakeline.figure.paint.TableLayout.Cell;
import rakeline.figure.paint.TableLayout.Line;

/**
 * Draws a table: hairlines between rows, numbers to the right in figures of one width, words to the left. Columns that
 * do not fit beside the others follow beneath, after the first column once more; of a long table the first rows are drawn.
 */
public final class TablePainter extends FigurePainter {
    /** The most rows that are drawn of a table; the rest is counted in words. */
    public static final int MOST_ROWS = 1000;

    private final Table table;
    private final Assignment assignment;
    private final int rows;

    /**
     * The painter of the first rows of a table.
     *
     * @param rows at least 1, at most {@link #MOST_ROWS}
     */
    public TablePainter(Table table, Palette palette, double scale, Assignment assignment, int rows) {
        super(table, palette, scale);
        this.table = table;
        this.assignment = assignment;
        this.rows = Math.min(table.rows(), bounded(rows));
    }

    @Override
    double bodyHeight(double width) {
        return layout(width).height();
    }

    @Override
    List<String> notes(double width) {
        int more = table.rows() - rows;
        return more <= 0
                ? List.of()
                : List.of("The first " + rows + " of " + table.rows() + " rows; " + more + " more are not shown.");
    }

    @Override
    void paintBody(Graphics2D pen, Rectangle2D body) {
        double top = body.getY();
        for (Block block : layout(body.getWidth()).blocks()) {
            draw(pen, block, body.getX(), top);
            top += block.height() + TableLayout.BETWEEN_BLOCKS;
        }
    }

    /** Whether at its scale some columns stand beneath the others in a picture of a width, in px. */
    public boolean breaks(double width) {
        return layout(innerWidth(width)).blocks().size() > 1;
    }

    private static int bounded(int rows) {
        return Math.max(1, Math.min(MOST_ROWS, rows));
    }

    private TableLayout layout(double width) {
        return TableLayout.of(table.columns(), rows, width);
    }

    private void draw(Graphics2D pen, Block block, double x, double y) {
        double top = y;
        for (Line line : block.lines()) {
            if (isSeen(pen, top, line.height())) {
                draw(pen, line, x, top);
                drawRule(pen, line, x, top + line.height(), block.width());
            }
            top += line.height();
        }
    }

    private static boolean isSeen(Graphics2D pen, double top, double height) {
        return pen.getClipBounds() == null
                || (top + height >= pen.getClipBounds().getMinY() - 1
                        && top <= pen.getClipBounds().getMaxY() + 1);
    }

    private void draw(Graphics2D pen, Line line, double x, double top) {
        for (Cell cell : line.cells()) {
            double lineTop = top + TableLayout.PAD + (line.isHead() ? line.slack(cell) : 0);
            for (String words : cell.lines()) {
                double left = x
                        + cell.x()
                        + (cell.toRight() ? cell.width() - cell.lettering().width(words) : 0);
                cell.lettering()
                        .draw(pen, line.isHead() ? palette().soft() : palette().ink(), words, left, lineTop);
                lineTop += cell.lettering().lineHeight();
            }
        }
    }

    private void drawRule(Graphics2D pen, Line line, double x, double y, double width) {
        double crisp = ChartAxes.crisp(y) - 1;
        pen.setStroke(new BasicStroke(1));
        pen.setColor(line.isHead() ? palette().soft() : palette().hairline());
        pen.draw(new Line2D.Double(x, crisp, x + width, crisp));
        if (line.isHead()) {
            line.cells().forEach(cell -> drawSwatch(pen, cell, x, crisp));
        }
    }

    /** The colour of a measure that has one, under its heading. */
    private void drawSwatch(Graphics2D pen, Cell cell, double x, double y) {
        if (assignment.names(cell.key())) {
            SeriesStyle style = palette().style(assignment.place(cell.key()));
            pen.setColor(style.colour());
            pen.setStroke(style.stroke(palette().line(2)));
            double right = x + cell.x() + cell.width();
            pen.draw(new Line2D.Double(right - Math.min(26, cell.width()), y, right, y));
        }
    }
}
