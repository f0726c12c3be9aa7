package rakeline.figure;

import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * A figure's columns as comma-separated values: a header of keys, then one record a row, each ended by a line feed;
 * numbers in full precision with a decimal point, a gap as an empty field. Source of the quoting: RFC 4180.
 */
public final class Csv {
    private static final Pattern NEEDS_QUOTES = Pattern.compile("[\",\r\n]|^\\s|\\s$");

    private Csv() {}

    /** The whole text, to be stored as UTF-8; empty for a figure without columns. */
    public static String write(Figure figure) {
        List<Column> columns = figure.columns();
        int rows = columns.stream().mapToInt(Column::size).max().orElse(0);
        Stream<String> header = columns.isEmpty() ? Stream.empty() : Stream.of(header(columns));
        return Stream.concat(header, IntStream.range(0, rows).mapToObj(row -> record(columns, row)))
                .collect(Collectors.joining());
    }

    private static String header(List<Column> columns) {
        return columns.stream().map(Column::key).map(Csv::quoted).collect(Collectors.joining(",", "", "\n"));
    }

    private static String record(List<Column> columns, int row) {
        return columns.stream().map(column -> quoted(column.field(row))).collect(Collectors.joining(",", "", "\n"));
    }

    private static String quoted(String field) {
        return NEEDS_QUOTES.matcher(field).find() ? '"' + field.replace("\"", "\"\"") + '"' : field;
    }
}
