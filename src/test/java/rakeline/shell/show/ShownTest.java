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
import rakeline.quantity.Caution;
import rakeline.quantity.Numbers;

class ShownTest {
    private static final Table FIGURE = new Table(
            "Two sizes",
            List.of(Column.ofWords("rank", "Rank", List.of("1"))),
            "the hoods wanted; the sit point. The same in all: trail 66.5 mm.",
            List.of(new Caution("toe contact", "Toe contact can throw a rider.")));
    private static final Shown SHOWN = new Shown(
            "r1",
            FIGURE,
            new Outcome("r1", "sizes", State.FRESH, "", "", Optional.empty(), List.of(), List.of()),
            false,
            false);

    @Test
    void aFigureThatIsNotOfNowSaysSoFirstAndWhy() {
        Outcome failed = SHOWN.standing().in(State.FAILED).saying("Line 1: ';' expected\nJava's own words");
        assertThat(new Shown("r1", FIGURE, failed, true, false).words(false))
                .startsWith("Failed: this is the figure of the last good run. Line 1: ';' expected");
    }

    @Test
    void beneathAFigureStandsWhatWasHeldAndThenItsCautions() {
        assertThat(SHOWN.words(true)).isEqualTo("Held: " + FIGURE.held());
        assertThat(SHOWN.cautions(false)).isEqualTo("Caution: Toe contact can throw a rider.");
    }

    @Test
    void aCautionThatWasSaidBeforeIsAWordUntilItIsAskedFor() {
        Caution again = FIGURE.cautions().get(0).again();
        Shown second = new Shown("r2", FIGURE.withCautions(List.of(again)), SHOWN.standing(), false, false);
        assertThat(second.cautions(false)).isEqualTo("Caution: toe contact");
        assertThat(second.cautions(true)).isEqualTo("Caution: Toe contact can throw a rider.");
    }

    @Test
    void anAnswerThatIsClosedSaysNothingOfItself() {
        Shown closed = new Shown("r1", FIGURE, SHOWN.standing(), false, true);
        assertThat(closed.words(true)).isEqualTo("Answer. Press A to open it.");
    }

    @Test
    void whatWasHeldIsOneSentenceOfItsOwn() {
        assertThat(SHOWN.held()).isEqualTo("Held: " + FIGURE.held());
    }

    @Test
    void aCautionStandsBeneathThePartOfATableThatItBelongsTo() {
        Table all = table("Stack", "Toe room");
        Shown shown = new Shown("r1", all, SHOWN.standing(), false, false);
        assertThat(shown.cautions(table("Toe room"), false)).startsWith("Caution: Toe contact can throw a rider.");
        assertThat(shown.cautions(table("Stack"), false)).isEmpty();
    }

    @Test
    void aCautionThatNoRowOfATurnedTableNamesStandsBeneathEachPart() {
        Caution caution = Inputs.FORK_OFFSET.quantity().cautions().get(0);
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
        Shown shown = new Shown("r1", slopes, SHOWN.standing(), false, false);
        assertThat(shown.cautions(Sliced.rows(Sliced.turned(slopes), 0, 1), false))
                .isEqualTo("Caution: " + caution.sentence());
    }

    private static Table table(String... measures) {
        return new Table(
                "Two sizes",
                List.of(Column.ofWords("measure", "Measure", List.of(measures))),
                "",
                TOE_ROOM.quantity().cautions());
    }
}
