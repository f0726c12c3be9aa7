package rakeline.figure;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** A figure's columns as a spreadsheet takes them from the clipboard: headings, then a line a row, fields parted by tabs. */
public final class Tsv {
    private Tsv() {}

    /** Numbers in full precision with a decimal point, a gap as an empty field; each line ended by a line feed. */
    public static String write(Figure figure) {
        List<Column> columns = figure.columns();
        int rows = columns.stream().mapToInt(Column::size).max().orElse(0);
        String head =
                columns.stream().map(column -> plain(column.heading())).collect(Collectors.joining("\t", "", "\n"));
        return columns.isEmpty()
                ? ""
                : IntStream.range(0, rows)
                        .mapToObj(row -> line(columns, row))
                        .collect(Collectors.joining("", head, ""));
    }

    private static String line(List<Column> columns, int row) {
        return columns.stream().map(column -> plain(column.field(row))).collect(Collectors.joining("\t", "", "\n"));
    }

    /** Nothing in a field may end it. */
    private static String plain(String words) {
        return words.replaceAll("[\t\r\n]+", " ");
    }
}
