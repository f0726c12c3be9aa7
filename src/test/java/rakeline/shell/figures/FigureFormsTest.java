package rakeline.shell.figures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.awt.datatransfer.DataFlavor;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import rakeline.figure.Chart;
import rakeline.figure.Column;
import rakeline.figure.Table;
import rakeline.quantity.Numbers;
import rakeline.quantity.Quantity;
import rakeline.quantity.Unit;

class FigureFormsTest {
    private final Table table = new Table("Table", List.of(Column.ofWords("a", "A", List.of("x"))), "", List.of());

    private String written(String name) {
        return new String(FigureCopies.bytes(table, Path.of(name)), StandardCharsets.ISO_8859_1);
    }

    @Test
    void theEndingOfTheNameSaysTheForm() {
        assertThat(written("a.SVG")).contains("<svg");
        assertThat(written("a.png")).startsWith("\u0089PNG");
        assertThat(written("a.csv")).isEqualTo("a\nx\n");
    }

    @Test
    void anotherEndingIsRefused() {
        assertThatThrownBy(() -> written("a.doc"))
                .hasMessage("a.doc says no form; accepted are names that end in .svg, .png or .csv.");
    }

    @Test
    void aTableOnTheClipboardHasBothForms() throws Exception {
        Clip clip = Clip.ofTable("<table></table>", "a\tb");
        assertThat(clip.getTransferData(DataFlavor.allHtmlFlavor)).isEqualTo("<table></table>");
        assertThat(clip.getTransferData(DataFlavor.stringFlavor)).isEqualTo("a\tb");
    }

    @Test
    void vectorsOnTheClipboardAreAnImageAndText() throws Exception {
        Clip clip = Clip.ofSvg("<svg/>");
        assertThat(clip.getTransferDataFlavors()).hasSize(2);
        assertThat(clip.getTransferData(DataFlavor.stringFlavor)).isEqualTo("<svg/>");
    }

    @Test
    void aGapSaysItsReason() {
        Quantity x =
                Quantity.of("frame.headAngleDeg", "Head angle", Unit.DEGREE, "").declared();
        Quantity trail = Quantity.of("trailMm", "Trail", Unit.MILLIMETRE, "").declared();
        Chart chart = new Chart(
                "",
                x,
                Numbers.of(70, 71),
                70,
                List.of(new Chart.Panel(trail, Numbers.of(60, Double.NaN), 60)),
                List.of(new Chart.Gap(1, "trailMm", "no offset holds it")),
                "",
                List.of());
        assertThat(List.of(Gaps.at(chart, 0), Gaps.at(chart, 1))).containsExactly("", "Trail: no offset holds it");
    }
}
