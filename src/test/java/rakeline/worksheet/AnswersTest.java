package rakeline.worksheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The bundled worksheets answer every question that the README lists. */
class AnswersTest {
    private static final Pattern FILLED = Pattern.compile("\\{\\{[^}]*}}");
    private static final Pattern NUMBER_WITH_UNIT = Pattern.compile(
            "(?<![\\w.])\\d+(?:[.,]\\d+)?\\s?(?:mm|cm|m|km/h|m/s|rad/s|N m|N|kg|°|%|s|Hz|degrees?|millimetres?)(?!\\w)");
    private static final Path FOLDER = Path.of("worksheets");

    @Test
    void everyQuestionHasAWorksheet() throws IOException {
        Set<String> answered = new TreeSet<>();
        for (Worksheet page : pages()) {
            answered.addAll(page.answers());
        }
        assertThat(answered).containsExactlyInAnyOrderElementsOf(questions());
    }

    @Test
    void everyWorksheetButTheWelcomePageSaysForWhomItIs() throws IOException {
        assertThat(pages())
                .filteredOn(page -> !page.answers().isEmpty())
                .allSatisfy(page -> assertThat(page.audience()).isPresent());
    }

    @Test
    void everyAnswerBeginsWithAPrediction() throws IOException {
        assertThat(pages())
                .filteredOn(page -> !page.answers().isEmpty() && !page.answers().contains("F16"))
                .allSatisfy(page -> assertThat(page.rows().get(0).text()).contains("**Before you "));
    }

    @Test
    void everyAnswerForStudentsHasAnExerciseWhoseAnswerIsFolded() throws IOException {
        assertThat(pages())
                .filteredOn(page -> page.audience()
                        .filter(Worksheet.Audience.STUDENT::equals)
                        .isPresent())
                .allSatisfy(page -> assertThat(page.rows())
                        .anyMatch(row -> row.text().startsWith("## Exercise"))
                        .anyMatch(row -> row instanceof Row.Note note
                                && note.folded()
                                && note.text().startsWith("Worked answer:")));
    }

    /** Numbers in prose are filled in by the run, so that they cannot go stale; a source's own stand beside its name. */
    @Test
    void noNoteHasANumberWithAUnitOfItsOwn() throws IOException {
        assertThat(pages().stream()
                        .flatMap(page -> page.rows().stream())
                        .filter(Row.Note.class::isInstance)
                        .flatMap(note -> Stream.of(note.text().split("\\n\\n", -1)))
                        .filter(paragraph -> !paragraph.contains("Source:"))
                        .map(paragraph -> FILLED.matcher(paragraph).replaceAll("")))
                .noneMatch(paragraph -> NUMBER_WITH_UNIT.matcher(paragraph).find());
    }

    @Test
    void aNumberWithAUnitIsFound() {
        assertThat(List.of("12 mm", "the 71.3° of it", "at 4 m/s", "by 3 %"))
                .allMatch(text -> NUMBER_WITH_UNIT.matcher(text).find());
    }

    private static List<String> questions() {
        return Stream.of(numbered("E", 10), numbered("F", 16), numbered("S", 10))
                .flatMap(each -> each)
                .toList();
    }

    private static Stream<String> numbered(String letter, int count) {
        return IntStream.rangeClosed(1, count).mapToObj(number -> letter + number);
    }

    private static List<Worksheet> pages() throws IOException {
        try (Stream<Path> files = Files.list(FOLDER)) {
            return files.filter(file -> file.toString().endsWith(".rakeline"))
                    .map(AnswersTest::read)
                    .toList();
        }
    }

    private static Worksheet read(Path file) {
        try {
            return WorksheetFile.read(Files.readAllBytes(file), file.toString());
        } catch (IOException e) {
            throw new AssertionError(file.toString(), e);
        }
    }
}
