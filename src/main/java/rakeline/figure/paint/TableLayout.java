package rakeline.figure.paint;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import rakeline.figure.Column;
import rakeline.figure.PlainText;

/** Where the cells of a table lie: columns as wide as they need, in as many blocks as the width asks for. */
record TableLayout(List<Block> blocks) {
    static final double PAD = 4;
    static final double BETWEEN_BLOCKS = 18;
    private static final double GUTTER = 24;
    private static final double NARROW_GUTTER = 14;
    private static final double WIDEST_WORDS = 280;
    private static final double WIDEST_HEADING = 120;

    /** A space at which no line ends. */
    private static final char NO_BREAK = '\u00A0';

    /** Columns beside one another: a line of headings, then the rows. */
    record Block(List<Line> lines, double width) {
        double height() {
            return lines.stream().mapToDouble(Line::height).sum();
        }
    }

    /** The cells of one row. */
    record Line(List<Cell> cells, boolean isHead, double height) {
        static Line of(List<Cell> cells, boolean isHead) {
            return new Line(
                    List.copyOf(cells),
                    isHead,
                    cells.stream().mapToDouble(Cell::height).max().orElse(0) + 2 * PAD + 1);
        }

        /** How much lower a cell with fewer lines starts, to stand on the line. */
        double slack(Cell cell) {
            return height - 2 * PAD - 1 - cell.height();
        }
    }

    /** The words of one cell from its left edge on. */
    record Cell(String key, List<String> lines, Lettering lettering, double x, double width, boolean toRight) {
        double height() {
            return Math.max(1, lines.size()) * lettering.lineHeight();
        }
    }

    static TableLayout of(List<Column> columns, int rows, double width) {
        List<Fitted> fitted = columns.stream()
                .map(column -> Fitted.of(column, rows, Math.min(WIDEST_WORDS, 0.4 * width)))
                .toList();
        double gutter = gutter(fitted, width);
        return new TableLayout(groups(fitted, width, gutter).stream()
                .map(group -> block(group, rows, gutter))
                .toList());
    }

    /** The wide one, unless the narrow one saves a block. */
    private static double gutter(List<Fitted> columns, double width) {
        int wide = groups(columns, width, GUTTER).size();
        return groups(columns, width, NARROW_GUTTER).size() < wide ? NARROW_GUTTER : GUTTER;
    }

    double height() {
        double between = BETWEEN_BLOCKS * Math.max(0, blocks.size() - 1);
        return blocks.stream().mapToDouble(Block::height).sum() + between;
    }

    /** A column with its width and the lines of its cells. */
    private record Fitted(Column column, double width, List<String> heading, List<List<String>> cells) {
        static Fitted of(Column column, int rows, double most) {
            Lettering face = face(column);
            List<String> heading = heading(column, column.isNumeric() ? WIDEST_HEADING : most);
            List<List<String>> cells = column.shown().stream()
                    .limit(rows)
                    .map(words -> column.isNumeric() ? List.of(PlainText.oneLine(words)) : face.lines(words, most))
                    .toList();
            double widest = cells.stream().mapToDouble(face::width).max().orElse(0);
            return new Fitted(column, Math.ceil(Math.max(widest, Lettering.STRONG.width(heading))), heading, cells);
        }

        /** The lines of its heading, the unit never in a line by itself. */
        private static List<String> heading(Column column, double most) {
            String whole = column.unit().isEmpty() ? column.label() : column.label() + "," + NO_BREAK + column.unit();
            return Lettering.STRONG.lines(whole, most).stream()
                    .map(line -> line.replace(NO_BREAK, ' '))
                    .toList();
        }

        Cell head(double x) {
            return new Cell(column.key(), heading, Lettering.STRONG, x, width, column.isNumeric());
        }

        /** Empty where the column is shorter than others. */
        Cell cell(int row, double x) {
            List<String> words = row < cells.size() ? cells.get(row) : List.of();
            return new Cell(column.key(), words, face(column), x, width, column.isNumeric());
        }

        private static Lettering face(Column column) {
            return column.isNumeric() ? Lettering.FIGURES : Lettering.SMALL;
        }
    }

    private static List<List<Fitted>> groups(List<Fitted> columns, double width, double gutter) {
        List<List<Fitted>> groups = new ArrayList<>();
        List<Fitted> group = new ArrayList<>();
        for (Fitted column : columns) {
            if (group.size() > 1 && width(group, gutter) + gutter + column.width() > width) {
                groups.add(List.copyOf(group));
                group = new ArrayList<>(List.of(columns.get(0)));
            }
            group.add(column);
        }
        if (!group.isEmpty()) {
            groups.add(List.copyOf(group));
        }
        return groups;
    }

    private static double width(List<Fitted> group, double gutter) {
        return group.stream().mapToDouble(Fitted::width).sum() + gutter * (group.size() - 1);
    }

    private static Block block(List<Fitted> group, int rows, double gutter) {
        List<Line> lines = new ArrayList<>();
        lines.add(line(group, true, -1, gutter));
        IntStream.range(0, rows)
                .mapToObj(row -> line(group, false, row, gutter))
                .forEach(lines::add);
        return new Block(List.copyOf(lines), width(group, gutter));
    }

    private static Line line(List<Fitted> group, boolean isHead, int row, double gutter) {
        List<Cell> cells = new ArrayList<>();
        double x = 0;
        for (Fitted each : group) {
            cells.add(isHead ? each.head(x) : each.cell(row, x));
            x += each.width() + gutter;
        }
        return Line.of(cells, isHead);
    }
}
