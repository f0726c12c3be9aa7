package rakeline.handout;

import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import rakeline.figure.Column;
import rakeline.figure.Table;

/** Tables with many columns and rows. */
final class Wide {
    private Wide() {}

    static Table table(int columns, int rows) {
        List<Column> all = IntStream.range(0, columns)
                .mapToObj(i -> Column.ofWords("c" + i, "Column " + i, Collections.nCopies(rows, "cell")))
                .toList();
        return new Table("Wide", all, "", List.of());
    }
}
