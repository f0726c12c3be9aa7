package rakeline.figure;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import rakeline.quantity.Numbers;

class TableFormsTest {
    private final Table table = new Table(
            "A & B",
            List.of(
                    Column.ofWords("name", "Name", List.of("one\ttwo", "<b>")),
                    new Column("trailMm", "Trail", "mm", Numbers.of(58.123456, Double.NaN), List.of("58.1", "–"))),
            "",
            List.of());

    @Test
    void aSpreadsheetGetsFullPrecisionUnderHeadings() {
        assertThat(Tsv.write(table)).isEqualTo("Name\tTrail, mm\none two\t58.123456\n<b>\t\n");
    }

    @Test
    void aFigureWithoutColumnsIsAnEmptyTable() {
        assertThat(Tsv.write(new Table("", List.of(), "", List.of()))).isEmpty();
    }

    @Test
    void aWordProcessorGetsTheCellsAsTheyAreRead() {
        assertThat(HtmlTable.write(table))
                .contains("<caption>A &amp; B</caption>", "<td align=\"right\">58.1</td>", "<td>&lt;b&gt;</td>");
    }
}
