package rakeline.handout;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import rakeline.figure.Column;
import rakeline.figure.Table;

/**
 * A table as a table. Beyond {@value #MOST_COLUMNS} columns it is cut into several that begin with the same column;
 * beyond {@value #MOST_ROWS} rows it ends with how many there are.
 */
final class TableMarkup {
    static final int MOST_COLUMNS = 9;
    static final int MOST_ROWS = 200;

    /** As many as no page's end shall cut. */
    private static final int SHORT_ROWS = 20;

    /** A word of more letters is broken where its column is narrower. */
    private static final Pattern LONG_WORD = Pattern.compile("\\S{21}");

    private TableMarkup() {}

    static void write(Table table, CautionMarkup cautions, Markup out) {
        List<List<Column>> parts = parts(table.columns());
        for (int i = 0; i < parts.size(); i++) {
            String title = i == 0 ? table.title() : table.title() + ", continued";
            part(title.isBlank() || title.startsWith(", ") ? "" : title, parts.get(i), out);
        }
        foot(table, out);
        cautions.write(table.cautions(), out);
    }

    private static void foot(Table table, Markup out) {
        if (table.rows() > MOST_ROWS) {
            out.element("p", "The first " + MOST_ROWS + " of " + table.rows() + " rows.", "class", "quiet");
        }
        if (!table.held().isBlank()) {
            out.element("p", "Held: " + table.held(), "class", "quiet", "dir", "auto");
        }
        if (!table.basis().words().isEmpty()) {
            out.element("p", table.basis().words(), "class", "quiet", "dir", "auto");
        }
    }

    private static List<List<Column>> parts(List<Column> columns) {
        List<List<Column>> parts = new ArrayList<>();
        int from = 0;
        while (from < columns.size()) {
            List<Column> part = new ArrayList<>();
            if (from > 0) {
                part.add(columns.get(0));
            }
            int to = Math.min(columns.size(), from + MOST_COLUMNS - part.size());
            part.addAll(columns.subList(from, to));
            parts.add(part);
            from = to;
        }
        return parts;
    }

    private static void part(String title, List<Column> columns, Markup out) {
        int rows = columns.stream().mapToInt(Column::size).max().orElse(0);
        out.open("div", "class", rows > SHORT_ROWS ? "table" : "table short")
                .open("table")
                .line();
        if (!title.isEmpty()) {
            out.element("caption", title, "dir", "auto").line();
        }
        out.open("thead").open("tr");
        columns.forEach(column -> head(column, out));
        out.close().close().line().open("tbody").line();
        for (int row = 0; row < Math.min(rows, MOST_ROWS); row++) {
            row(columns, row, out);
        }
        out.close().close().close().line();
    }

    private static void head(Column column, Markup out) {
        if (column.isNumeric()) {
            out.element("th", column.heading(), "scope", "col", "class", "number");
        } else {
            out.element("th", column.heading(), "scope", "col", "class", kind(column.heading()));
        }
    }

    private static String kind(String words) {
        return LONG_WORD.matcher(words).find() ? "long" : "words";
    }

    private static void row(List<Column> columns, int row, Markup out) {
        out.open("tr");
        for (Column column : columns) {
            String words = row < column.size() ? column.shown().get(row) : "";
            if (column.isNumeric()) {
                out.element("td", words, "class", "number");
            } else {
                out.element("td", words, "class", kind(words), "dir", "auto");
            }
        }
        out.close().line();
    }
}
