package rakeline.figure;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import rakeline.quantity.Caution;

class CautionsSaidTest {
    private static final Caution TOES = new Caution("toe contact", "Toes can meet the tyre.");
    private static final Caution FORK = new Caution("fork", "Ask the fork's maker.");

    @Test
    void aCautionIsSaidInFullWhereItFirstStandsAndInAWordFromThenOn() {
        CautionsSaid said = new CautionsSaid();
        assertThat(said.next(List.of(TOES))).containsExactly(TOES);
        assertThat(said.next(List.of(FORK, TOES))).containsExactly(FORK, TOES.again());
        assertThat(said.next(List.of(TOES.again()))).containsExactly(TOES.again());
    }

    @Test
    void anotherPageBeginsAnew() {
        new CautionsSaid().next(List.of(TOES));
        assertThat(new CautionsSaid().next(List.of(TOES.again()))).containsExactly(TOES);
    }

    @Test
    void wordsStandTogetherAfterWhatIsSaidInFull() {
        assertThat(CautionsSaid.paragraphs(List.of(TOES.again(), FORK, TOES.again())))
                .containsExactly("Ask the fork's maker.", "toe contact, toe contact");
    }

    @Test
    void aTableOfAPageSaysAgainInAWord() {
        CautionsSaid said = new CautionsSaid();
        said.next(Samples.sweep());
        assertThat(TextTable.write(said.next(Samples.sweep()))).contains("Caution: toe contact\n");
    }
}
