package rakeline.shell.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import rakeline.engine.Outcome;
import rakeline.engine.Result;
import rakeline.engine.State;
import rakeline.figure.Drawing;
import rakeline.worksheet.Row;
import rakeline.worksheet.Worksheet;

class BesideTest {
    private static final Worksheet PAGE = Worksheet.empty("Page")
            .withRows(List.of(
                    new Row.Note("title", "# Title"),
                    Row.Snippet.of("frames", "m"),
                    Row.Snippet.of("dialled", "it"),
                    Row.Snippet.of("over", "draw(it, m)")));
    private static final PageModel RUN = PageModel.of(PAGE, new Origin.New(), true)
            .after(drawn("frames", List.of()))
            .after(drawn("dialled", List.of("head")))
            .after(drawn("over", List.of("head")));

    private static Outcome drawn(String id, List<String> follows) {
        Result side = new Result.Shown(side(id));
        return new Outcome(id, id, State.FRESH, "", "", Optional.of(side), List.of(), follows);
    }

    private static Drawing side(String title) {
        return new Drawing("Side view", title, List.of(), List.of(), "", List.of());
    }

    private static String beside(PageModel page, String selected) {
        return Beside.of(page.selecting(Optional.of(selected))).get("Side view").title();
    }

    @Test
    void theLastDrawingAtOrAboveTheSelectedRowStandsBesideThePage() {
        assertThat(beside(RUN, "frames")).isEqualTo("frames");
        assertThat(beside(RUN, "over")).isEqualTo("over");
    }

    @Test
    void whereNoneStandsAboveItIsTheFirstThatFollowsADial() {
        assertThat(beside(RUN, "title")).isEqualTo("dialled");
    }

    @Test
    void whereNoneFollowsADialEitherItIsTheFirst() {
        PageModel still = PageModel.of(PAGE, new Origin.New(), true)
                .after(drawn("frames", List.of()))
                .after(drawn("over", List.of()));
        assertThat(beside(still, "title")).isEqualTo("frames");
    }

    @Test
    void aPageWithoutDrawingsHasNoneBesideIt() {
        assertThat(Beside.of(PageModel.of(PAGE, new Origin.New(), true))).isEmpty();
    }
}
