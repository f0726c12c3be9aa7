package rakeline.desk;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/**
 * What tells one content of a file from another, whatever its date says.
 *
 * @param sha256 of the bytes, in hexadecimal digits
 */
public record Stamp(String sha256) {
    /** The stamp of these bytes. */
    public static Stamp of(byte[] bytes) {
        try {
            return new Stamp(HexFormat.of()
                    .formatHex(MessageDigest.getInstance("SHA-256").digest(bytes)));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
