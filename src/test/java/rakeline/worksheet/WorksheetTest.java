package rakeline.worksheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.OptionalInt;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import rakeline.worksheet.Row.Note;
import rakeline.worksheet.Row.Snippet;

class WorksheetTest {
    private static final Worksheet PAGE = page("r1", "r2", "r3");

    @Test
    void aRowIsPutBelowAnother() {
        assertThat(ids(PAGE.insertAfter("r1", new Note("n", "")))).containsExactly("r1", "n", "r2", "r3");
    }

    @Test
    void aRowIsPutAtTheTop() {
        assertThat(ids(PAGE.insert(0, new Note("n", "")))).containsExactly("n", "r1", "r2", "r3");
    }

    @Test
    void aRowPutBeyondTheEndStandsAtTheEnd() {
        assertThat(ids(PAGE.insert(99, new Note("n", "")))).containsExactly("r1", "r2", "r3", "n");
    }

    @Test
    void aRowIsTakenAway() {
        assertThat(ids(PAGE.without("r2"))).containsExactly("r1", "r3");
    }

    @Test
    void aRowMovesUp() {
        assertThat(ids(PAGE.move("r3", 0))).containsExactly("r3", "r1", "r2");
    }

    @Test
    void aRowMovesDown() {
        assertThat(ids(PAGE.move("r1", 1))).containsExactly("r2", "r1", "r3");
    }

    @Test
    void aRowMovedBeyondTheTopStandsAtTheTop() {
        assertThat(ids(PAGE.move("r2", -1))).containsExactly("r2", "r1", "r3");
    }

    @Test
    void anotherTextLeavesTheRestOfTheRow() {
        Worksheet page = PAGE.withRow(new Snippet("r2", "1", true, true, OptionalInt.of(5)));
        assertThat(page.withText("r2", "2").row("r2")).contains(new Snippet("r2", "2", true, true, OptionalInt.of(5)));
    }

    @Test
    void aNoteMayBecomeASnippet() {
        assertThat(PAGE.withRow(Snippet.of("r2", "1 + 1")).rows().get(1)).isEqualTo(Snippet.of("r2", "1 + 1"));
    }

    @Test
    void aRowThatIsNotThereIsNamed() {
        assertThatThrownBy(() -> PAGE.withText("r9", "")).hasMessage("the page has no row \"r9\".");
    }

    @Test
    void aFreshIdIsOneThatNoRowHas() {
        assertThat(page("r1", "r7", "other", "r3").freshId()).isEqualTo("r8");
    }

    @Test
    void theFirstFreshIdIsOne() {
        assertThat(Worksheet.empty("t").freshId()).isEqualTo("r1");
    }

    @Test
    void anIdOfManyDigitsIsNoNumber() {
        assertThat(page("r99999999999999").freshId()).isEqualTo("r1");
    }

    @Test
    void twoRowsNeverShareAnId() {
        assertThatThrownBy(() -> PAGE.insert(0, new Note("r2", "")))
                .hasMessage("the row id \"r2\" stands 2 times; each row has one of its own.");
    }

    @Test
    void aDialIsFinite() {
        assertThatThrownBy(() -> PAGE.withDial("head", Double.NaN))
                .hasMessage("the dial head is NaN; accepted is a finite number.");
    }

    private static Worksheet page(String... ids) {
        return Worksheet.empty("t")
                .withRows(Stream.of(ids).<Row>map(id -> new Note(id, id)).toList());
    }

    private static List<String> ids(Worksheet page) {
        return page.rows().stream().map(Row::id).toList();
    }
}
