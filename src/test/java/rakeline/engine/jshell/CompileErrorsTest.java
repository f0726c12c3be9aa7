package rakeline.engine.jshell;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Set;
import java.util.stream.Collectors;
import jdk.jshell.Diag;
import jdk.jshell.JShell;
import jdk.jshell.SnippetEvent;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rakeline.engine.RowSource;

/** The first line of what a row says is ours and plain; it is the same whatever language Java's own words are in. */
class CompileErrorsTest {
    private static JShell shell;
    private static SourceReader reader;

    @BeforeAll
    static void open() {
        shell = Shells.open(new NoEngine());
        reader = new SourceReader(shell.sourceCodeAnalysis());
    }

    @AfterAll
    static void close() {
        shell.close();
    }

    private static String said(String text) {
        RowSource row = reader.read(text);
        CompileErrors errors = new CompileErrors(row, Set.of("trail"));
        return shell.eval(text).stream()
                .map(SnippetEvent::snippet)
                .flatMap(part -> shell.diagnostics(part).filter(Diag::isError))
                .limit(1)
                .map(diag -> errors.sentence(diag, text, 0))
                .collect(Collectors.joining());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "trial + 1|Line 1, column 1: nothing is called trial here; did you mean trail?",
                "HEAD_ANGEL + 1|Line 1, column 1: nothing is called HEAD_ANGEL here; did you mean HEAD_ANGLE?",
                "int a = \"x\";|Line 1, column 9: a value of another type is needed here.",
                "String s = \"open;|Line 1, column 12: the text is not closed by a quote.",
                "int a = (1 + ;|Line 1, column 14: Java cannot read this here.",
                "\"a\" - 1|Line 1, column 5: these values cannot be combined so.",
                "Math.sin(\"x\")|Line 1, column 10: a value of another type is needed here.",
                "record P(int a) { P {} }|Line 1, column 19: the record's constructor must fit its head; write it as public.",
                "Math.sine(1)|Line 1, column 5: there is no sine in what stands before it."
            })
    void theSentenceIsOurs(String text, String sentence) {
        assertThat(said(text).lines().findFirst()).contains(sentence);
    }

    @Test
    void thePlaceWhereANameIsMissingIsNotGivenWithoutAName() {
        assertThat(said("gone + 1")).endsWith("symbol:   variable gone");
    }
}
