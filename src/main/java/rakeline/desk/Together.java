package rakeline.desk;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rakeline.quantity.Refusal;

/** Writes several files, all of them or none: where one cannot be written, those before it are put back. */
public final class Together {
    private static final int LARGEST_REPLACED = 64_000_000;

    private final SafeFile files;
    private final Map<Path, Optional<byte[]>> former = new LinkedHashMap<>();

    private Together(SafeFile files) {
        this.files = files;
    }

    /**
     * Writes them in order.
     *
     * @throws Refusal naming the one that cannot be written; then every file is as it was
     */
    public static void write(SafeFile files, Map<Path, byte[]> contents) {
        new Together(files).write(contents);
    }

    private void write(Map<Path, byte[]> contents) {
        try {
            contents.forEach(this::write);
        } catch (Refusal refusal) {
            List<Path> written = new ArrayList<>(former.keySet());
            written.forEach(file -> putBack(file, refusal));
            throw refusal;
        }
    }

    private void write(Path file, byte[] bytes) {
        Optional<byte[]> before =
                files.exists(file) ? Optional.of(files.read(file, LARGEST_REPLACED)) : Optional.empty();
        files.write(file, bytes);
        former.put(file, before);
    }

    private void putBack(Path file, Refusal refusal) {
        try {
            former.get(file).ifPresentOrElse(bytes -> files.write(file, bytes), () -> files.delete(file));
        } catch (Refusal another) {
            refusal.addSuppressed(another);
        }
    }
}
