package rakeline.desk;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import rakeline.json.JsonText;
import rakeline.json.Piece;
import rakeline.quantity.Refusal;
import rakeline.worksheet.Worksheet;
import rakeline.worksheet.WorksheetFile;

/**
 * A page with changes that no file has yet, as the journal keeps it: one line about it, then the worksheet as it would
 * be saved.
 *
 * @param file that it was read from or saved to last; none for a page that never was
 * @param allowed whether its rows may run
 * @param at when it stood so
 */
public record Draft(Worksheet page, Optional<Path> file, boolean allowed, Instant at) {
    static final String FORMAT = "rakeline/journal";
    static final int VERSION = 1;
    static final int LIMIT_BYTES = WorksheetFile.LIMIT_BYTES + 100_000;

    byte[] bytes() {
        ByteArrayOutputStream all = new ByteArrayOutputStream();
        all.writeBytes(head().getBytes(StandardCharsets.UTF_8));
        all.write('\n');
        all.writeBytes(WorksheetFile.write(page));
        return all.toByteArray();
    }

    private String head() {
        Map<String, Object> keys = new LinkedHashMap<>();
        keys.put("format", FORMAT);
        keys.put("version", VERSION);
        file.ifPresent(path -> keys.put("file", path.toString()));
        keys.put("allowed", allowed);
        keys.put("at", at.toString());
        try {
            return JsonMapper.builder().build().writeValueAsString(keys);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("words can be written", e);
        }
    }

    /**
     * Reads what {@link #bytes} wrote.
     *
     * @param name of the journal, as it is to be called in a refusal
     * @throws Refusal where it is not a journal of this version
     */
    static Draft read(byte[] bytes, String name) {
        int end = lineEnd(bytes);
        try {
            Piece head = JsonText.parse(Arrays.copyOf(bytes, end));
            check(head);
            byte[] rest = Arrays.copyOfRange(bytes, Math.min(end + 1, bytes.length), bytes.length);
            return new Draft(
                    WorksheetFile.read(rest, "its worksheet"),
                    Optional.ofNullable(head.members().get("file")).map(Draft::path),
                    head.member("allowed").flag(),
                    instant(head.member("at")));
        } catch (Refusal refusal) {
            throw refusal.in(name);
        }
    }

    private static int lineEnd(byte[] bytes) {
        int end = 0;
        while (end < bytes.length && bytes[end] != '\n') {
            end++;
        }
        return end;
    }

    private static void check(Piece head) {
        if (!head.member("format").text().equals(FORMAT)) {
            throw head.member("format").unlike("\"" + FORMAT + "\"");
        }
        if (head.member("version").whole() != VERSION) {
            throw head.member("version").unlike(String.valueOf(VERSION));
        }
    }

    private static Path path(Piece piece) {
        try {
            return Path.of(piece.text());
        } catch (InvalidPathException e) {
            throw piece.unlike("a path of this system");
        }
    }

    private static Instant instant(Piece piece) {
        try {
            return Instant.parse(piece.text());
        } catch (DateTimeException e) {
            throw piece.unlike("a time as in 2026-01-31T12:00:00Z");
        }
    }
}
