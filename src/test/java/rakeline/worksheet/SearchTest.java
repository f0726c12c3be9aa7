package rakeline.worksheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class SearchTest {
    private static final Worksheet PAGE = Worksheet.empty("Words")
            .withRows(List.of(
                    new Row.Note("n1", "Trail and more trail"),
                    Row.Snippet.of("r1", "double trail = measure(it, TRAIL);")));

    @Test
    void wordsAreFoundInNotesAndSnippetsInPageOrder() {
        assertThat(new Search("trail", true).in(PAGE))
                .containsExactly(new Search.Hit("n1", 15, 20), new Search.Hit("r1", 7, 12));
    }

    @Test
    void capitalsNeedNotCount() {
        assertThat(new Search("trail", false).in(PAGE)).hasSize(4);
    }

    @Test
    void wordsAreTakenAsTheyAre() {
        assertThat(new Search("measure(it", true).in(PAGE)).containsExactly(new Search.Hit("r1", 15, 25));
    }

    @Test
    void noWordsFindNothing() {
        assertThat(new Search("", false).in(PAGE)).isEmpty();
    }

    @Test
    void onePlaceIsReplaced() {
        assertThat(Search.replace(PAGE, new Search.Hit("n1", 15, 20), "rake")
                        .rows()
                        .get(0)
                        .text())
                .isEqualTo("Trail and more rake");
    }

    @Test
    void allPlacesAreReplacedAndASignInTheNewWordsIsJustThat() {
        assertThat(new Search("trail", false)
                        .replaceAll(PAGE, "$1\\")
                        .rows()
                        .get(0)
                        .text())
                .isEqualTo("$1\\ and more $1\\");
    }

    @Test
    void aDottedCapitalIsFoundWhateverTheLanguage() {
        Worksheet page = Worksheet.empty("").insert(0, new Row.Note("n1", "TITLE"));
        assertThat(new Search("title", false).in(page)).hasSize(1);
    }
}
