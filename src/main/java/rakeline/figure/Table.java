package rakeline.figure;

import java.util.List;
import rakeline.quantity.Caution;

/** Columns of equal length under headings. */
public record Table(String title, List<Column> columns, String held, List<Caution> cautions) implements Figure {
    public Table {
        columns = List.copyOf(columns);
        cautions = List.copyOf(cautions);
    }

    @Override
    public Table withCautions(List<Caution> others) {
        return new Table(title, columns, held, others);
    }

    public int rows() {
        return columns.isEmpty() ? 0 : columns.get(0).size();
    }
}
