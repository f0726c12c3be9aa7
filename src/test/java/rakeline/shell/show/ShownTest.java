package rakeline.shell.show;

import static org.assertj.core.api.Assertions.assertThat;
import static rakeline.geometry.ToeMeasures.TOE_ROOM;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import rakeline.engine.Outcome;
import rakeline.engine.State;
import rakeline.figure.Column;
import rakeline.figure.Table;
import rakeline.geometry.Inputs;
import rakeline.quantity.Numbers;

class ShownTest {
    private static final Table FIGURE = new Table(
            "Two sizes",
            List.of(Column.ofWords("rank", "Rank", List.of("1"))),
            "the hoods wanted; the sit point. The same in all: trail 66.5 mm.",
            List.of("Toe contact can throw a rider."));
    private static final Shown SHOWN = new Shown(
            "r1",
            FIGURE,
            new Outcome("r1", "sizes", State.FRESH, "", "", Optional.empty(), List.of(), List.of()),
            false);

    @Test
    void aFigureThatIsNotOfNowSaysSoFirstAndWhy() {
        Outcome failed = SHOWN.standing().in(State.FAILED).saying("Line 1: ';' expected\nJava's own words");
        assertThat(new Shown("r1", FIGURE, failed, true).words(false))
                .startsWith("Failed: this is the figure of the last good run. Line 1: ';' expected Toe contact");
    }

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

    @Test
    void aCautionStandsBeneathThePartOfATableThatItBelongsTo() {
        Table all = table("Stack", "Toe room");
        Shown shown = new Shown("r1", all, SHOWN.standing(), SHOWN.old());
        assertThat(shown.words(table("Toe room"), true)).startsWith("Toe contact can throw a rider.");
        assertThat(shown.words(table("Stack"), true)).isEmpty();
    }

    @Test
    void aCautionThatNoRowOfATurnedTableNamesStandsBeneathEachPart() {
        String caution = Inputs.FORK_OFFSET.quantity().caution();
        Table slopes = new Table(
                "Slopes",
                List.of(
                        Column.ofWords("measure", "Measure", List.of("Trail, mm")),
                        new Column(
                                Inputs.FORK_OFFSET.quantity().key(),
                                "Fork offset, per mm",
                                "",
                                Numbers.of(-1),
                                List.of("−1"))),
                "",
                List.of(caution));
        Shown shown = new Shown("r1", slopes, SHOWN.standing(), SHOWN.old());
        assertThat(caution).isNotEmpty();
        assertThat(shown.words(Sliced.rows(Sliced.turned(slopes), 0, 1), true)).isEqualTo(caution);
    }

    private static Table table(String... measures) {
        return new Table(
                "Two sizes",
                List.of(Column.ofWords("measure", "Measure", List.of(measures))),
                "",
                List.of(TOE_ROOM.quantity().caution()));
    }
}
