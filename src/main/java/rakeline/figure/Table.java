package rakeline.figure;

import java.util.List;

/** Columns of equal length under headings. */
public record Table(String title, List<Column> columns, String held, List<String> cautions) implements Figure {
    public Table {
        columns = List.copyOf(columns);
        cautions = List.copyOf(cautions);
    }

    public int rows() {
        return columns.isEmpty() ? 0 : columns.get(0).size();
    }
}
