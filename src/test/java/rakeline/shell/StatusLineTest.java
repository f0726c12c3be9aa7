package rakeline.shell;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import rakeline.shell.page.PageModel;

class StatusLineTest {
    private static final PageModel.Progress ONE = new PageModel.Progress(0, 1);

    @Test
    void aRunOfOneLongRowSaysForHowLongItHasGoneOn() {
        assertThat(StatusLine.words(ONE, 7)).isEqualTo("Running: 0 of 1 row, 7 s");
    }

    @Test
    void aShortRunSaysHowManyRowsHaveRunAlone() {
        assertThat(StatusLine.words(ONE, 0)).isEqualTo("Running: 0 of 1 row");
    }
}
