package rakeline.desk;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Function;
import rakeline.json.JsonText;
import rakeline.json.Piece;
import rakeline.quantity.Refusal;

/**
 * A small JSON file of the program's own, read at the start and written whenever it changes. One of a newer version is
 * left as it is, a broken one is set aside under another name, and both are said.
 */
public final class Kept<T> {
    private static final int LIMIT_BYTES = 1_000_000;
    private static final int VERSION = 1;

    /**
     * What a file held.
     *
     * @param said one sentence for the user where it could not be taken as it was; else empty
     */
    public record Recalled<T>(T value, String said) {}

    private final SafeFile disk;
    private final Path file;
    private final T standard;
    private final Function<Piece, T> read;
    private final Function<T, Map<String, Object>> write;

    Kept(SafeFile disk, Path file, T standard, Function<Piece, T> read, Function<T, Map<String, Object>> write) {
        this.disk = disk;
        this.file = file;
        this.standard = standard;
        this.read = read;
        this.write = write;
    }

    /** Whether there is a file of it yet. */
    public boolean isKept() {
        return disk.exists(file);
    }

    /** What was kept; what stands at first where nothing was or it cannot be read. */
    public Recalled<T> recall() {
        if (!disk.exists(file)) {
            return new Recalled<>(standard, "");
        }
        try {
            return parsed(disk.read(file, LIMIT_BYTES));
        } catch (Refusal unreadable) {
            return new Recalled<>(standard, unreadable.getMessage());
        }
    }

    private Recalled<T> parsed(byte[] bytes) {
        try {
            Piece piece = JsonText.parse(bytes);
            return isNewer(piece)
                    ? new Recalled<>(standard, newer())
                    : new Recalled<>(read.apply(piece.member("is")), "");
        } catch (Refusal broken) {
            Path aside = disk.setAside(file);
            return new Recalled<>(
                    standard,
                    file + " was broken and is now called " + aside.getFileName() + ": " + broken.getMessage());
        }
    }

    private static boolean isNewer(Piece piece) {
        return piece.member("version").whole() > VERSION;
    }

    private String newer() {
        return file + " was made by a newer Rakeline; it stays as it is, and what is set here is not kept.";
    }

    /**
     * Writes the file.
     *
     * @throws Refusal where it cannot be written, or a newer program has written it
     */
    public void keep(T value) {
        if (isKeptByNewer()) {
            throw new Refusal(newer());
        }
        Map<String, Object> content = new LinkedHashMap<>();
        content.put("version", VERSION);
        content.put("is", write.apply(value));
        disk.writeOwn(file, json(content).getBytes(StandardCharsets.UTF_8));
    }

    private boolean isKeptByNewer() {
        return disk.exists(file) && recall().said().equals(newer());
    }

    private static String json(Map<String, Object> content) {
        try {
            return JsonMapper.builder().build().writerWithDefaultPrettyPrinter().writeValueAsString(content) + "\n";
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("maps of words and numbers can be written", e);
        }
    }
}
