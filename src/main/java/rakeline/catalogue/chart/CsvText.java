package rakeline.catalogue.chart;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.MappingIterator;
import com.fasterxml.jackson.databind.ObjectReader;
import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvParser;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import rakeline.json.Utf8;
import rakeline.quantity.Refusal;

/**
 * Reads comma-separated values in UTF-8 into a grid: commas, semicolons or tabs, whichever most lines hold; quotes as in
 * RFC 4180. Bounded in cells; whoever calls bounds the size.
 */
final class CsvText {
    private static final int MOST_CELLS = 100_000;
    private static final int LOOKED_AT = 50;
    private static final int LONGEST = 400;
    private static final String NAMES_SEPARATOR = "(?i)sep=";
    private static final ObjectReader READER =
            new CsvMapper().enable(CsvParser.Feature.WRAP_AS_ARRAY).readerFor(String[].class);

    private CsvText() {}

    /**
     * The grid.
     *
     * @throws Refusal for bytes that are not such a text, or too many cells
     */
    static Grid parse(byte[] bytes) {
        String text = Utf8.text(bytes);
        if (text.indexOf('\0') >= 0) {
            throw new Refusal("the file is not a table of comma-separated values: it holds zero bytes.");
        }
        try {
            return filled(rows(text, separator(text)));
        } catch (JsonProcessingException e) {
            throw new Refusal(
                    "line " + e.getLocation().getLineNr()
                            + " is not comma-separated values: a quoted field does not end" + " where it should.",
                    e);
        } catch (IOException e) {
            throw new UncheckedIOException("a text in memory cannot fail to be read", e);
        }
    }

    private static List<String[]> rows(String text, char separator) throws IOException {
        CsvSchema schema = CsvSchema.emptySchema().withColumnSeparator(separator);
        List<String[]> rows = new ArrayList<>();
        int widest = 0;
        try (MappingIterator<String[]> lines = READER.with(schema).readValues(text)) {
            while (lines.hasNextValue()) {
                rows.add(lines.nextValue());
                widest = Math.max(widest, rows.get(rows.size() - 1).length);
                checkSize((long) rows.size() * widest);
            }
        }
        return rows;
    }

    private static void checkSize(long cells) {
        if (cells > MOST_CELLS) {
            throw new Refusal("the table has more than " + MOST_CELLS + " cells.");
        }
    }

    /** Every row as long as the longest; the first, where it only names the separator, as if it were empty. */
    private static Grid filled(List<String[]> rows) {
        int width = rows.stream().mapToInt(row -> row.length).max().orElse(0);
        return new Grid(IntStream.range(0, rows.size())
                .mapToObj(i -> IntStream.range(0, width)
                        .mapToObj(j -> checked(new Cell(i + 1, j + 1, text(rows.get(i), j))))
                        .toList())
                .toList());
    }

    private static Cell checked(Cell cell) {
        if (cell.text().length() > LONGEST) {
            throw new Refusal(cell.place() + " holds more than " + LONGEST + " letters.");
        }
        return cell;
    }

    private static String text(String[] row, int field) {
        return field >= row.length || row[field] == null || row[0].matches(NAMES_SEPARATOR) ? "" : row[field];
    }

    private static char separator(String text) {
        List<String> lines = text.lines()
                .filter(line -> !line.isBlank())
                .limit(LOOKED_AT)
                .map(line -> line.replaceAll("\"[^\"]*\"", ""))
                .toList();
        return isUsual(lines, ';') ? ';' : isUsual(lines, '\t') ? '\t' : ',';
    }

    private static boolean isUsual(List<String> lines, char separator) {
        long with = lines.stream().filter(line -> line.indexOf(separator) >= 0).count();
        return with > 0 && with * 2 >= lines.size();
    }
}
