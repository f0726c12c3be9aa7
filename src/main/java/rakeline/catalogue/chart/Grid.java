package rakeline.catalogue.chart;

import java.util.List;
import java.util.stream.IntStream;

/** The cells of a chart, line by line, all lines of one length; a line is a row, or turned, a column. */
record Grid(List<List<Cell>> lines) {
    Grid {
        lines = List.copyOf(lines);
    }

    int width() {
        return lines.isEmpty() ? 0 : lines.get(0).size();
    }

    /** Columns as lines; every cell keeps its place. */
    Grid turned() {
        return new Grid(IntStream.range(0, width())
                .mapToObj(field -> lines.stream().map(line -> line.get(field)).toList())
                .toList());
    }

    List<Cell> after(int line, int field) {
        return lines.stream().skip(line + 1L).map(cells -> cells.get(field)).toList();
    }
}
