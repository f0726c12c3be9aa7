package rakeline.command;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import rakeline.study.Vocabulary;

/**
 * One command line, run, with what it wrote.
 *
 * @param data standard output
 * @param messages standard error
 */
record CommandLineRun(int code, String data, String messages) {
    /** A machine without a display. */
    static final Rakeline.Window NO_WINDOW = new Rakeline.Window() {
        @Override
        public boolean hasDisplay() {
            return false;
        }

        @Override
        public int open(Optional<Path> file) {
            throw new AssertionError("there is no display");
        }
    };

    static CommandLineRun of(String... arguments) {
        return with(Vocabulary.standard(), NO_WINDOW, arguments);
    }

    static CommandLineRun with(Vocabulary vocabulary, Rakeline.Window window, String... arguments) {
        ByteArrayOutputStream data = new ByteArrayOutputStream();
        ByteArrayOutputStream messages = new ByteArrayOutputStream();
        Console console = Console.of(data, messages);
        int code = Rakeline.run(console, vocabulary, window, arguments);
        return new CommandLineRun(
                code, data.toString(StandardCharsets.UTF_8), messages.toString(StandardCharsets.UTF_8));
    }

    /** Exit 2, nothing on standard output, and one plain sentence with these words. */
    void isRefusedFor(String... words) {
        assertThat(code).as(messages).isEqualTo(2);
        assertThat(data).isEmpty();
        assertThat(messages.strip()).matches(".*[^.?][.?]").doesNotContain("\n", "Exception", "java.", "\tat ");
        assertThat(List.of(words)).allSatisfy(word -> assertThat(messages).contains(word));
    }

    CommandLineRun isDone() {
        assertThat(code).as(messages).isZero();
        return this;
    }

    JsonNode json() {
        try {
            assertThat(data).endsWith(System.lineSeparator()).hasLineCount(1);
            return new JsonMapper().readTree(data);
        } catch (JsonProcessingException e) {
            throw new AssertionError(data, e);
        }
    }

    List<String> lines() {
        return data.lines().toList();
    }
}
