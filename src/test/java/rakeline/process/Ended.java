package rakeline.process;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.util.List;

/**
 * A process that has ended.
 *
 * @param data what it wrote to standard output
 * @param messages what it wrote to standard error
 */
record Ended(int code, String data, String messages) {
    private static final JsonMapper JSON = new JsonMapper();

    /** Exit 0 and nothing on standard error. */
    Ended isDone() {
        assertThat(messages).isEmpty();
        assertThat(code).isZero();
        return this;
    }

    /** Exit 2, nothing on standard output, and one plain sentence that has these words. */
    Ended isRefusedFor(String... words) {
        assertThat(code).as(messages).isEqualTo(2);
        assertThat(data).isEmpty();
        assertThat(messages.strip()).matches(".*[.?]").doesNotContain("\n", "Exception", "java.lang", "\tat ");
        assertThat(messages).contains(words);
        return this;
    }

    /** Standard output, one JSON object a line. */
    List<JsonNode> objects() {
        return data.lines().map(Ended::object).toList();
    }

    private static JsonNode object(String line) {
        try {
            return JSON.readTree(line);
        } catch (JsonProcessingException e) {
            throw new AssertionError("no JSON: " + line, e);
        }
    }
}
