package rakeline.figure;

import java.util.List;
import rakeline.quantity.Caution;

/** Columns of equal length under headings. */
public record Table(String title, List<Column> columns, String held, List<Caution> cautions, Basis basis)
        implements Figure {
    /** About no bicycle in particular. */
    public Table(String title, List<Column> columns, String held, List<Caution> cautions) {
        this(title, columns, held, cautions, Basis.NONE);
    }

    public Table {
        columns = List.copyOf(columns);
        cautions = List.copyOf(cautions);
    }

    /** The same, about these bicycles. */
    public Table about(Basis other) {
        return new Table(title, columns, held, cautions, other);
    }

    @Override
    public Table withCautions(List<Caution> others) {
        return new Table(title, columns, held, others, basis);
    }

    public int rows() {
        return columns.isEmpty() ? 0 : columns.get(0).size();
    }
}
