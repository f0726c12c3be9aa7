package rakeline.figure;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import rakeline.quantity.Decimals;

/** A figure's columns as one plain HTML table, as word processors take it from the clipboard. */
public final class HtmlTable {
    private HtmlTable() {}

    /** Title as caption, headings, then the cells as they are read, negative numbers with the hyphen that
     * spreadsheets take. */
    public static String write(Figure figure) {
        List<Column> columns = figure.columns();
        int rows = columns.stream().mapToInt(Column::size).max().orElse(0);
        String head = columns.stream()
                .map(column -> "<th scope=\"col\">" + safe(column.heading()) + "</th>")
                .collect(Collectors.joining());
        String body = IntStream.range(0, rows)
                .mapToObj(row -> "<tr>" + line(columns, row) + "</tr>")
                .collect(Collectors.joining("\n"));
        String caption = figure.title().isBlank() ? "" : "<caption>" + safe(figure.title()) + "</caption>";
        return "<table>" + caption + "<thead><tr>" + head + "</tr></thead><tbody>\n" + body + "\n</tbody></table>";
    }

    private static String line(List<Column> columns, int row) {
        return columns.stream().map(column -> cell(column, row)).collect(Collectors.joining());
    }

    private static String cell(Column column, int row) {
        String words = row < column.size() ? safe(Decimals.typed(column.shown().get(row))) : "";
        return (column.isNumeric() ? "<td align=\"right\">" : "<td>") + words + "</td>";
    }

    private static String safe(String words) {
        return words.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;");
    }
}
