package rakeline.figure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import rakeline.quantity.Numbers;

class MapFigureTest {
    private static final MapFigure MAP = Samples.map(Samples.TRAIL, 3, 4, 55);

    @Test
    void itsColumnsHaveOnePlaceARowTheFirstAxisSlowest() {
        assertThat(MAP.columns().get(0).values().toArray()).startsWith(69, 69, 69, 69, 71.5);
        assertThat(MAP.columns().get(1).values().toArray()).startsWith(40, 45, 50, 55, 40);
        assertThat(MAP.columns().get(2).values().at(5)).isEqualTo(Samples.trail(71.5, 45));
    }

    @Test
    void itsTableHasAColumnForEachX() {
        Table table = MAP.table(10, 10);
        assertThat(table.columns().get(2).label()).isEqualTo("Head angle 71.5°");
        assertThat(table.columns().get(2).values().at(1)).isEqualTo(Samples.trail(71.5, 45));
    }

    @Test
    void aShortenedTableKeepsBothEnds() {
        Table table = MAP.table(2, 2);
        assertThat(table.columns()).hasSize(3);
        assertThat(table.columns().get(0).values().toArray()).containsExactly(40, 55);
        assertThat(table.columns().get(2).label()).isEqualTo("Head angle 74°");
    }

    @Test
    void valuesThatDoNotFitTheAxesAreRefused() {
        assertThatThrownBy(() -> new MapFigure(
                        "", MAP.x(), MAP.y(), Samples.TRAIL, Numbers.of(1, 2), 0, List.of(), "", List.of()))
                .hasMessageContaining("3 by 4");
    }
}
