package rakeline.engine.jshell;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import rakeline.engine.Suggestions;
import rakeline.worksheet.Row;
import rakeline.worksheet.Worksheet;

@Tag("slow")
class WordFinderTest {
    private static Suggestions finder;

    @BeforeAll
    static void open() {
        finder = Sessions.suggestions();
    }

    @AfterAll
    static void close() {
        finder.close();
    }

    @Test
    void aVariableOfARowAboveIsOffered() {
        assertThat(words("double offset = 47;", "off")).contains("offset");
    }

    @Test
    void aVariableOfARowBelowIsNot() {
        Worksheet page = page("off", "double offset = 47;");
        assertThat(finder.at(page, "r0", 3).words())
                .noneMatch(word -> word.word().equals("offset"));
    }

    @Test
    void theTypeOfAnExpressionIsKnownWithoutRunningIt() {
        assertThat(words("var all = List.of(1, 2);", "all.str")).contains("stream()");
    }

    @Test
    void nothingRuns() {
        System.clearProperty("rakeline.ran");
        words("String ran = System.setProperty(\"rakeline.ran\", \"yes\");", "ran.len");
        assertThat(System.getProperty("rakeline.ran")).isNull();
    }

    @Test
    void anEarlierSnippetOfTheRowCounts() {
        assertThat(words("double trail = 58; tra")).contains("trail");
    }

    @Test
    void theWordBeginsWhereItIsTyped() {
        assertThat(finder.at(page("double trail = 58; tra"), "r0", 22).from()).isEqualTo(19);
    }

    @Test
    void aMethodWithoutArgumentsComesWithItsSignature() {
        assertThat(finder.at(page("String s = \"\"; s.isEmp"), "r0", 22)
                        .words()
                        .get(0)
                        .signatures())
                .containsExactly("boolean String.isEmpty()");
    }

    @Test
    void aMethodComesWithItsSignatures() {
        assertThat(finder.at(page("String s = \"\"; s.charA"), "r0", 22)
                        .words()
                        .get(0)
                        .signatures())
                .containsExactly("char String.charAt(int index)");
    }

    @Test
    void aRowThatChangesIsForgotten() {
        words("double before = 1;", "bef");
        assertThat(words("double after = 1;", "bef")).doesNotContain("before");
    }

    private static List<String> words(String... rows) {
        String last = rows[rows.length - 1];
        return finder.at(page(rows), "r" + (rows.length - 1), last.length()).words().stream()
                .map(Suggestions.Suggestion::word)
                .toList();
    }

    private static Worksheet page(String... rows) {
        Worksheet page = Worksheet.empty("Words");
        for (int i = 0; i < rows.length; i++) {
            page = page.insert(i, Row.Snippet.of("r" + i, rows[i]));
        }
        return page;
    }
}
