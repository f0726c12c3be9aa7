package rakeline.catalogue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import rakeline.quantity.Decimals;
import rakeline.quantity.Refusal;

/** Reads a file whole, bounded by its size, or refuses in one sentence. */
public final class Bytes {
    private Bytes() {}

    public static byte[] read(Path file, long limit) {
        if (Files.isDirectory(file)) {
            throw new Refusal(file + " is a folder; accepted is a file.");
        }
        if (!Files.exists(file)) {
            throw new Refusal(file + " does not exist.");
        }
        try (InputStream in = Files.newInputStream(file)) {
            return read(in, file.toString(), limit);
        } catch (IOException e) {
            throw new Refusal(file + " cannot be read: " + e.getMessage() + ".", e);
        }
    }

    static byte[] read(InputStream in, String name, long limit) throws IOException {
        byte[] bytes = in.readNBytes(Math.toIntExact(limit + 1));
        if (bytes.length > limit) {
            throw new Refusal(name + " is larger than " + Decimals.shortest(limit / 1e6) + " MB.");
        }
        if (bytes.length == 0) {
            throw new Refusal(name + " is empty.");
        }
        return bytes;
    }
}
