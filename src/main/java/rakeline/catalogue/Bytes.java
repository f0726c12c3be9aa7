package rakeline.catalogue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.AccessDeniedException;
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
            throw unreadable(file.toString(), e);
        }
    }

    /** One sentence for a file that the system does not give out. */
    static Refusal unreadable(String name, IOException e) {
        String reason = e instanceof AccessDeniedException ? "you have no permission to" : e.getMessage();
        return new Refusal(name + " cannot be read: " + reason + ".", e);
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
