package rakeline.shell.show;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import rakeline.figure.Column;
import rakeline.figure.Figure;
import rakeline.figure.Table;
import rakeline.figure.paint.Palette;
import rakeline.quantity.Numbers;
import rakeline.shell.look.Look;

class PartsTest {
    private static final Look LARGE = new Look(Palette.LIGHT, 2.2);

    @Test
    void aTableTooWideForTheScreenIsTurned() {
        assertThat(parts(table(15, 2)).get(0).columns())
                .extracting(Column::heading)
                .containsExactly("Size", "No. 0", "No. 1", "Unit");
    }

    @Test
    void aTurnedTableKeepsEveryNumber() {
        assertThat(parts(table(15, 2)).stream().flatMap(part -> part.columns().get(2).shown().stream()))
                .containsExactlyElementsOf(
                        IntStream.range(0, 15).mapToObj(i -> i + ".1").toList());
    }

    @Test
    void aTableThatFitsIsShownAsItIs() {
        assertThat(parts(table(3, 2)).get(0).columns())
                .extracting(Column::label)
                .containsExactly("Size", "Width 0", "Width 1", "Width 2");
    }

    @Test
    void aTableTooWideBothWaysStaysAsItIs() {
        assertThat(parts(table(15, 15)).get(0).columns()).hasSize(16);
    }

    @Test
    void aPartWithMoreSaidOfItHasLessOfTheFigure() {
        assertThat(new Parts(LARGE, 955, part -> part.columns().get(0).shown().contains("No. 0") ? 280 : 400)
                        .of(table(1, 6)))
                .extracting(part -> ((Table) part).rows())
                .containsExactly(2, 4);
    }

    private static List<Figure> parts(Table table) {
        return new Parts(LARGE, 955, part -> 330).of(table);
    }

    private static Table table(int columns, int rows) {
        Column first = Column.ofWords(
                "", "Size", IntStream.range(0, rows).mapToObj(i -> "No. " + i).toList());
        Stream<Column> others = IntStream.range(0, columns)
                .mapToObj(i -> new Column(
                        "key" + i,
                        "Width " + i,
                        "mm",
                        Numbers.generate(rows, row -> i + row / 10.0),
                        IntStream.range(0, rows).mapToObj(row -> i + "." + row).toList()));
        return new Table("Sizes", Stream.concat(Stream.of(first), others).toList(), "", List.of());
    }
}
