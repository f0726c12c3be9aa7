package rakeline.figure;

import java.util.List;
import rakeline.quantity.Caution;

/** Something to look at: a chart, a table, a drawing or a map. */
public sealed interface Figure permits Chart, Table, Drawing, MapFigure {
    /** One line; may be empty. */
    String title();

    /** What was held, in words; empty where nothing is swept. */
    String held();

    /** Cautions that belong to the numbers shown, each a sentence or two. */
    List<Caution> cautions();

    /** The same with other cautions. */
    Figure withCautions(List<Caution> others);

    /** The bicycles that it is about, and whose shoe they have. */
    Basis basis();

    /** The figure's numbers as columns: its CSV, its JSON and its text alternative. */
    List<Column> columns();
}
