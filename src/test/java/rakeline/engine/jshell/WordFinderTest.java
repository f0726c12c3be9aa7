package rakeline.engine.jshell;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import rakeline.engine.Suggestions;
import rakeline.geometry.Setting;
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

    @Test
    void whatAnyObjectCanBeAskedIsNotOffered() {
        assertThat(words("String s = \"\"; s."))
                .contains("length()", "strip()")
                .doesNotContain("notify()", "notifyAll()", "wait(", "getClass()", "hashCode()");
    }

    @Test
    void aConstantIsOfferedWhereOneOfItsTypeIsWanted() {
        assertThat(words("Bike xs = bike(\"a\"); measure(xs, "))
                .contains("TRAIL")
                .doesNotContain("HEAD_ANGLE");
        assertThat(words("Bike xs = bike(\"a\"); dial(")).contains("HEAD_ANGLE").doesNotContain("TRAIL");
    }

    @Test
    void whatFitsComesFirst() {
        assertThat(words("Bike m = bike(\"a\"); double d = m"))
                .containsSubsequence("max(", "measures(")
                .containsSubsequence("measure(", "m");
    }

    @Test
    void noKeyIsOfferedAsCode() {
        assertThat(words("Bike xs = bike(\"a\"); dial(fork")).isEmpty();
        assertThat(words("Bike xs = bike(\"a\"); dial(")).isNotEmpty().doesNotContainAnyElementsOf(Setting.keys());
    }

    @Test
    void insideQuotesTheParametersAreNamedThatCanTakeTheText() {
        assertThat(parameters("dial(\"fork")).containsExactlyInAnyOrder("inputKey", "label");
        assertThat(parameters("Bike xs = bike(\"")).containsExactly("bikeFile");
        assertThat(parameters("Bike xs = bike(\"a\"); sweep(xs).over(\"a\", 1, 2).track(\"b\", \"c"))
                .containsExactly("keys");
        assertThat(parameters("Bike xs = bike(\"a\"); measure(xs, \"tr")).containsExactly("key");
        assertThat(parameters("Bike xs = bike(\"a\"); xs.with(\"fr")).containsExactly("inputKey");
    }

    @Test
    void aTextThatIsNoArgumentNamesNothing() {
        assertThat(parameters("String s = \"fra")).isEmpty();
        assertThat(words("String s = \"fra")).isEmpty();
    }

    @Test
    void aCommentIsLeftAlone() {
        assertThat(words("double trail = 58; // tra")).isEmpty();
    }

    private static Set<String> parameters(String row) {
        return finder.at(page(row), "r0", row.length()).parameters();
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
