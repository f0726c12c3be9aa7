package rakeline.process;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Small worksheets, written where a test wants them. */
final class Pages {
    private Pages() {}

    /** Writes a page of snippets, one a row, and returns its file. */
    static Path write(Path file, String... snippets) {
        return writeText(file, text(snippets));
    }

    static Path writeText(Path file, String text) {
        try {
            return Files.writeString(file, text);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A page's file of snippets, the rows called r0, r1, …. */
    static String text(String... snippets) {
        List<Map<String, Object>> rows = new ArrayList<>();
        for (String snippet : snippets) {
            rows.add(Map.of("id", "r" + rows.size(), "snippet", List.of(snippet)));
        }
        try {
            return new JsonMapper()
                    .writeValueAsString(
                            Map.of("format", "rakeline/worksheet", "version", 1, "title", "A test", "rows", rows));
        } catch (JsonProcessingException e) {
            throw new AssertionError(e);
        }
    }

    /** A statement by which a row leaves a file behind, with its worker's process id inside. */
    static String leave(Path mark) {
        return "java.nio.file.Files.writeString(java.nio.file.Path.of(java.net.URI.create(\"" + mark.toUri()
                + "\")), \"\" + ProcessHandle.current().pid());";
    }
}
