package rakeline.process;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What is shipped, and what the README says, works as it stands. */
class ShippedIT {
    private static final String PROMPT = "$ java -jar target/rakeline.jar ";

    @Test
    void everyRowOfEveryWorksheetIsFreshAfterARun() throws IOException {
        List<String> pages = files("worksheets", ".rakeline");
        Ended ended = Program.inTheProject().run(arguments(List.of("run", "--json"), pages));
        assertThat(ended.isDone().objects())
                .hasSameSizeAs(pages)
                .allSatisfy(page ->
                        assertThat(page.get("rows").findValuesAsText("state")).containsOnly("fresh"));
    }

    @Test
    void everyBikeAndEveryWorksheetIsClean() throws IOException {
        List<String> all = Stream.of(files("worksheets", ".rakeline"), files("demo-data", ".bike.json"))
                .flatMap(List::stream)
                .toList();
        assertThat(Program.inTheProject()
                        .run(arguments(List.of("check"), all))
                        .isDone()
                        .data())
                .isEmpty();
    }

    @ParameterizedTest
    @MethodSource("commandsOfTheReadme")
    void everyCommandOfTheReadmeIsDone(String command) {
        Ended ended = Program.inTheProject().run(command.split(" ", -1));
        assertThat(ended.code()).as(ended.messages()).isZero();
    }

    @Test
    void theReadmeShowsEveryCommandThatNeedsNoWindow() {
        assertThat(commandsOfTheReadme().map(line -> line.split(" ", -1)[0]))
                .contains("run", "measure", "sweep", "refit", "check");
    }

    @Test
    void theDialOfTheReadmeIsSet() {
        String run = commandsOfTheReadme()
                .filter(line -> line.contains("offset=50"))
                .findFirst()
                .orElseThrow();
        JsonNode page = Program.inTheProject().run(run.split(" ", -1)).objects().get(0);
        assertThat(page.get("rows").findValuesAsText("text")).anyMatch(text -> text.contains("offset 50 "));
    }

    static Stream<String> commandsOfTheReadme() {
        try (Stream<String> lines = Files.lines(Path.of("README.md"))) {
            return lines
                    .filter(line -> line.startsWith(PROMPT))
                    .map(line -> line.substring(PROMPT.length()))
                    .toList()
                    .stream();
        } catch (IOException e) {
            throw new AssertionError("the README cannot be read", e);
        }
    }

    private static String[] arguments(List<String> first, List<String> then) {
        return Stream.concat(first.stream(), then.stream()).toArray(String[]::new);
    }

    private static List<String> files(String folder, String extension) throws IOException {
        try (Stream<Path> found = Files.walk(Path.of(folder))) {
            return found.map(Path::toString)
                    .filter(file -> file.endsWith(extension))
                    .sorted()
                    .toList();
        }
    }
}
