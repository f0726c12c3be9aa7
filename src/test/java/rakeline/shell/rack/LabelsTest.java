package rakeline.shell.rack;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import rakeline.catalogue.chart.ChartFile;
import rakeline.catalogue.chart.ChartImport;
import rakeline.figure.BikesTable;
import rakeline.geometry.Bikes;

class LabelsTest {
    @Test
    void aKeyIsCalledByItsLabel() {
        assertThat(Labels.in("S: frame.headAngleDeg is missing.")).isEqualTo("S: head angle is missing.");
    }

    @Test
    void aKeyBehindItsLabelIsLeftOut() {
        assertThat(Labels.in("Head angle (frame.headAngleDeg) is 95°; accepted is 50..85°."))
                .isEqualTo("Head angle is 95°; accepted is 50..85°.");
        assertThat(Labels.in("S is not whole; missing: stack (frame.stackMm, 200..800 mm)."))
                .isEqualTo("S is not whole; missing: stack (200..800 mm).");
    }

    @Test
    void aLabelInCapitalsKeepsThem() {
        assertThat(Labels.in("is 900 for frame.bbDropMm; accepted is −150 to 150 mm."))
                .isEqualTo("is 900 for BB drop; accepted is −150 to 150 mm.");
    }

    @Test
    void aNumberBehindAKeyHasItsUnit() {
        assertThat(Labels.in("S: frame.bbDropMm 70 (solved).")).isEqualTo("S: BB drop 70 mm (solved).");
    }

    @Test
    void whatAChartItselfSaysStaysAsItIs() {
        assertThat(Labels.in("column 2 \"frame.stackMm\" is frame.stackMm, in mm."))
                .isEqualTo("column 2 \"frame.stackMm\" is stack, in mm.");
    }

    @Test
    void theKeysOfASentenceAreFound() {
        assertThat(Labels.keysIn("frame.stackMm, frame.reachMm are missing; see chart.csv."))
                .containsExactly("frame.stackMm", "frame.reachMm");
    }

    @Test
    void aTableOfBikesReadsInLabels() {
        List<String> numbers = Labels.in(BikesTable.sideBySide(List.of(Bikes.plain())))
                .columns()
                .get(0)
                .shown();
        assertThat(numbers).contains("Stack", "Head angle", "Front tyre").noneMatch(label -> label.contains("."));
    }

    @Test
    void nothingThatIsSaidOfAChartNamesAKeyInItsLabels() {
        ChartImport chart = ChartFile.read(
                "Size,Stack (mm),Reach (mm),Head angle,BB height\nS,535,9000,72,270\n".getBytes(StandardCharsets.UTF_8),
                "chart.csv",
                new ChartImport.Wanted("chart", "", Map.of()));
        assertThat(chart.doubts()).isNotEmpty();
        assertThat(chart.doubts())
                .extracting(doubt -> Labels.keysIn(Labels.in(doubt.sentence())))
                .allMatch(List::isEmpty);
    }
}
