package rakeline.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import rakeline.study.Vocabulary;

/** What all commands share. */
class RakelineTest {
    private static final String DEMO =
            Path.of("demo-data", "bikes", "road-xs.bike.json").toString();

    @ParameterizedTest
    @ValueSource(strings = {"open", "run", "measure", "sweep", "refit", "check"})
    void everyCommandHasHelp(String command) {
        CommandLineRun run = CommandLineRun.of(command, "--help").isDone();
        assertThat(run.data()).contains("Usage: rakeline " + command, "--help", "--version");
        assertThat(run.messages()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"open", "run", "measure", "sweep", "refit", "check"})
    void everyCommandHasTheVersionOfTheBuild(String command) {
        CommandLineRun run = CommandLineRun.of(command, "--version").isDone();
        assertThat(run.data().strip()).matches("Rakeline \\d+\\.\\d+\\.\\d+.*");
    }

    @Test
    void theProgramHasHelpAndVersion() {
        assertThat(CommandLineRun.of("--help").isDone().data())
                .contains("open", "run", "measure", "sweep", "refit", "check");
        assertThat(CommandLineRun.of("--version").isDone().data()).startsWith("Rakeline ");
    }

    @ParameterizedTest
    @ValueSource(strings = {"run", "measure", "sweep", "refit", "check"})
    void aMissingFileArgumentIsRefused(String command) {
        CommandLineRun.of(command).isRefusedFor("rakeline " + command + " --help");
    }

    @ParameterizedTest
    @ValueSource(strings = {"open", "run", "measure", "check"})
    void anUnknownOptionIsRefused(String command) {
        CommandLineRun.of(command, DEMO, "--colour").isRefusedFor("--colour", "rakeline " + command + " --help");
    }

    @Test
    void anUnknownOptionOfTheProgramIsRefused() {
        CommandLineRun.of("--colour").isRefusedFor("--colour");
    }

    @ParameterizedTest
    @CsvSource({"No space left on device, 2", "Broken pipe, 0"})
    void whatDoesNotGetThroughIsSaidUnlessTheReaderLeft(String reason, int code) {
        OutputStream full = new OutputStream() {
            @Override
            public void write(int b) throws IOException {
                throw new IOException(reason);
            }
        };
        ByteArrayOutputStream messages = new ByteArrayOutputStream();
        Console console = Console.of(full, messages);
        assertThat(Rakeline.run(console, Vocabulary.standard(), CommandLineRun.NO_WINDOW, "measure", DEMO))
                .isEqualTo(code);
        assertThat(messages.toString(StandardCharsets.UTF_8).contains(reason)).isEqualTo(code == 2);
    }

    @Test
    void anUnknownCommandWithArgumentsIsRefused() {
        CommandLineRun.of("mesure", DEMO).isRefusedFor("mesure");
    }

    @Test
    void aSecondBikeIsRefused() {
        CommandLineRun.of("measure", DEMO, DEMO).isRefusedFor("road-xs.bike.json");
    }

    @Test
    void anOptionWithoutItsValueIsRefused() {
        CommandLineRun.of("measure", DEMO, "--set").isRefusedFor("--set");
    }

    @Test
    void withADisplayAFileIsOpenedInTheWindow() {
        List<Optional<Path>> opened = new ArrayList<>();
        CommandLineRun run = CommandLineRun.with(Vocabulary.standard(), display(opened), "page.rakeline");
        assertThat(run.code()).isZero();
        assertThat(opened).containsExactly(Optional.of(Path.of("page.rakeline")));
    }

    @Test
    void withADisplayAndWithoutAFileTheWelcomePageIsOpened() {
        List<Optional<Path>> opened = new ArrayList<>();
        CommandLineRun.with(Vocabulary.standard(), display(opened)).isDone();
        CommandLineRun.with(Vocabulary.standard(), display(opened), "open").isDone();
        assertThat(opened).containsExactly(Optional.empty(), Optional.empty());
    }

    @Test
    void withoutADisplayAFileIsPointedToRun() {
        CommandLineRun.of("open", "page.rakeline").isRefusedFor("rakeline run page.rakeline");
    }

    private static Rakeline.Window display(List<Optional<Path>> opened) {
        return new Rakeline.Window() {
            @Override
            public boolean hasDisplay() {
                return true;
            }

            @Override
            public int open(Optional<Path> file) {
                opened.add(file);
                return 0;
            }
        };
    }
}
