package rakeline.figure;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import rakeline.quantity.Decimals;

/**
 * A figure as plain text for a terminal: title, aligned columns under headings, what was held, cautions. Numbers stand
 * to the right of their column, words to the left; lines end with a line feed. A negative number begins with a hyphen.
 */
public final class TextTable {
    private static final String BETWEEN = "  ";

    private TextTable() {}

    /** The whole text; parts that the figure does not have are left out. */
    public static String write(Figure figure) {
        return Decimals.typed(Stream.of(heading(figure.title()), body(figure.columns()), foot(figure))
                .filter(part -> !part.isEmpty())
                .collect(Collectors.joining("\n")));
    }

    private static String heading(String title) {
        return title.isBlank() ? "" : PlainText.oneLine(title) + "\n";
    }

    private static String foot(Figure figure) {
        Stream<String> held = figure.held().isBlank() ? Stream.empty() : Stream.of("Held: " + figure.held());
        Stream<String> basis = Stream.of(figure.basis().words()).filter(words -> !words.isEmpty());
        return Stream.concat(
                        Stream.concat(held, basis),
                        CautionsSaid.paragraphs(figure.cautions()).stream().map(words -> "Caution: " + words))
                .map(line -> PlainText.oneLine(line) + "\n")
                .collect(Collectors.joining());
    }

    private static String body(List<Column> columns) {
        if (columns.isEmpty()) {
            return "";
        }
        List<List<String>> laidOut = columns.stream().map(TextTable::cells).toList();
        int lines = laidOut.stream().mapToInt(List::size).max().orElse(0);
        return IntStream.range(0, lines)
                .mapToObj(line -> line(laidOut, line))
                .collect(Collectors.joining("\n", "", "\n"));
    }

    private static String line(List<List<String>> columns, int line) {
        return columns.stream()
                .map(cells -> line < cells.size() ? cells.get(line) : padded("", widest(cells), false))
                .collect(Collectors.joining(BETWEEN))
                .stripTrailing();
    }

    /** Heading, rule and cells, all of one width. */
    private static List<String> cells(Column column) {
        String head = PlainText.oneLine(column.heading());
        List<String> shown = column.shown().stream().map(PlainText::oneLine).toList();
        int width = Math.max(length(head), widest(shown));
        Stream<String> top = Stream.of(padded(head, width, column.isNumeric()), "-".repeat(width));
        return Stream.concat(top, shown.stream().map(cell -> padded(cell, width, column.isNumeric())))
                .toList();
    }

    private static int widest(List<String> cells) {
        return cells.stream().mapToInt(TextTable::length).max().orElse(0);
    }

    private static String padded(String cell, int width, boolean right) {
        String blanks = " ".repeat(Math.max(0, width - length(cell)));
        return right ? blanks + cell : cell + blanks;
    }

    private static int length(String cell) {
        return cell.codePointCount(0, cell.length());
    }
}
