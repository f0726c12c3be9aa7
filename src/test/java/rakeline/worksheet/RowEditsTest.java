package rakeline.worksheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RowEditsTest {
    private static final Worksheet PAGE = Worksheet.empty("Five")
            .withRows(Stream.of("r1", "r2", "r3", "r4", "r5")
                    .<Row>map(id -> Row.Snippet.of(id, "int " + id + " = 1;"))
                    .toList());

    @ParameterizedTest
    @CsvSource({
        "r2 r3, 0, r2 r3 r1 r4 r5",
        "r2 r3, 1, r1 r2 r3 r4 r5",
        "r2 r3, 2, r1 r2 r3 r4 r5",
        "r2 r3, 5, r1 r4 r5 r2 r3",
        "r1 r4, 3, r2 r3 r1 r4 r5",
        "r5, 99, r1 r2 r3 r4 r5"
    })
    void rowsMoveTogetherToAPlace(String moved, int place, String expected) {
        assertThat(ids(RowEdits.moveTo(PAGE, List.of(moved.split(" ")), place))).isEqualTo(expected);
    }

    @ParameterizedTest
    @CsvSource({
        "r2 r3, -1, r2 r3 r1 r4 r5",
        "r2 r3, 1, r1 r4 r2 r3 r5",
        "r1, -1, r1 r2 r3 r4 r5",
        "r4 r5, 1, r1 r2 r3 r4 r5"
    })
    void rowsStepTogetherAndStayAtTheEnd(String moved, int by, String expected) {
        assertThat(ids(RowEdits.step(PAGE, List.of(moved.split(" ")), by))).isEqualTo(expected);
    }

    @Test
    void severalRowsGoAtOnce() {
        assertThat(ids(RowEdits.without(PAGE, Set.of("r1", "r4", "none")))).isEqualTo("r2 r3 r5");
    }

    @Test
    void pastedRowsHaveIdsOfTheirOwn() {
        assertThat(ids(RowEdits.insert(PAGE, 1, RowEdits.rows(PAGE, List.of("r4", "r2")))))
                .isEqualTo("r1 r6 r7 r2 r3 r4 r5");
    }

    @Test
    void pastedRowsKeepWhatTheyAre() {
        Row.Snippet folded = Row.Snippet.of("x", "1 + 1").folded(true).waiting(true);
        assertThat(RowEdits.insert(PAGE, 0, List.of(folded)).rows().get(0))
                .isEqualTo(new Row.Snippet("r6", "1 + 1", true, true, java.util.OptionalInt.empty()));
    }

    private static String ids(Worksheet page) {
        return String.join(" ", page.rows().stream().map(Row::id).toList());
    }
}
