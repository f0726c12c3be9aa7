package rakeline.shell.show;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import rakeline.engine.Outcome;
import rakeline.engine.State;
import rakeline.figure.Column;
import rakeline.figure.Table;

class ShownTest {
    private static final Table FIGURE = new Table(
            "Two sizes",
            List.of(Column.ofWords("rank", "Rank", List.of("1"))),
            "the hoods wanted; the sit point. The same in all: trail 66.5 mm.",
            List.of("Toe contact can throw a rider."));
    private static final Shown SHOWN = new Shown(
            "r1", FIGURE, new Outcome("r1", "sizes", State.FRESH, "", "", Optional.empty(), List.of(), List.of()));

    @Test
    void beneathAFigureStandsWhatWasHeldAndItsCautions() {
        assertThat(SHOWN.words(true)).startsWith("Held: the hoods").endsWith("Toe contact can throw a rider.");
    }

    @Test
    void cautionsStayWhereWhatWasHeldStandsApart() {
        assertThat(SHOWN.words(false)).isEqualTo("Toe contact can throw a rider.");
    }

    @Test
    void whatWasHeldIsOneSentenceOfItsOwn() {
        assertThat(SHOWN.held()).isEqualTo("Held: " + FIGURE.held());
    }
}
