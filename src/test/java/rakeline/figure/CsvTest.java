package rakeline.figure;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import rakeline.quantity.Numbers;

class CsvTest {
    private static Table table(Column... columns) {
        return new Table("", List.of(columns), "", List.of());
    }

    @Test
    void theHeaderIsTheKeysWithTheSweptFirst() {
        assertThat(Csv.write(Samples.sweep())).startsWith("frame.headAngleDeg,trailMm,wheelbaseMm,toeRoomMm\n");
    }

    @Test
    void everyStepIsOneRecordEndedByALineFeed() {
        assertThat(Csv.write(Samples.sweep()).chars().filter(c -> c == '\n').count())
                .isEqualTo(202);
    }

    @Test
    void everyNumberReadsBackExactly() {
        double[] values = {0.1 + 0.2, 1e-7 / 3, 1e9 / 7, -2.0 / 3, 165};
        String[] lines =
                Csv.write(table(Column.of(Samples.TRAIL, Numbers.of(values)))).split("\n", -1);
        for (int i = 0; i < values.length; i++) {
            assertThat(Double.parseDouble(lines[i + 1])).isEqualTo(values[i]);
        }
    }

    @Test
    void aNumberHasADecimalPointAndNoNeedlessZero() {
        assertThat(Csv.write(table(Column.of(Samples.TRAIL, Numbers.of(71.3, 165)))))
                .isEqualTo("trailMm\n71.3\n165\n");
    }

    @Test
    void aGapIsAnEmptyField() {
        Table gap = table(
                Column.of(Samples.HEAD_ANGLE, Numbers.of(70, 71)),
                Column.of(Samples.TRAIL, Numbers.of(Double.NaN, Double.POSITIVE_INFINITY)));
        assertThat(Csv.write(gap)).isEqualTo("frame.headAngleDeg,trailMm\n70,\n71,\n");
    }

    @Test
    void wordsWithCommasQuotesAndBreaksAreQuoted() {
        Table words = table(Column.ofWords("bike", "Bike", List.of("a,b", "say \"x\"", "two\nlines", "plain")));
        assertThat(Csv.write(words)).isEqualTo("bike\n\"a,b\"\n\"say \"\"x\"\"\"\n\"two\nlines\"\nplain\n");
    }

    @Test
    void aFigureWithoutColumnsIsEmpty() {
        assertThat(Csv.write(table())).isEmpty();
    }
}
