package rakeline.figure;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import rakeline.quantity.Caution;
import rakeline.quantity.Numbers;

class TextTableTest {
    private static final Table SMALL = new Table(
            "Two bikes",
            List.of(
                    Column.ofWords("bike", "Bike", List.of("small", "larger one")),
                    Column.of(Samples.TRAIL, Numbers.of(65.14, 101.26))),
            "the fork",
            List.of(new Caution("toes", "Mind the toes.")));

    @Test
    void numbersStandToTheRightAndWordsToTheLeft() {
        assertThat(TextTable.write(SMALL)).isEqualTo("""
                        Two bikes

                        Bike        Trail, mm
                        ----------  ---------
                        small            65.1
                        larger one      101.3

                        Held: the fork
                        Caution: Mind the toes.
                        """);
    }

    @Test
    void partsThatAFigureLacksAreLeftOut() {
        Table bare = new Table("", SMALL.columns(), "", List.of());
        assertThat(TextTable.write(bare)).startsWith("Bike").endsWith("101.3\n");
    }

    @Test
    void controlCharactersNeverReachTheTerminal() {
        Table hostile = new Table("\u001b[31mred", SMALL.columns(), "\u0007", List.of(new Caution("a", "a\u009bb")));
        assertThat(TextTable.write(hostile)).doesNotContain("\u001b", "\u0007", "\u009b");
    }

    @Test
    void aFigureOfNothingIsNothing() {
        assertThat(TextTable.write(new Table("", List.of(), "", List.of()))).isEmpty();
    }
}
