package rakeline.catalogue;

import java.util.Set;
import rakeline.json.Piece;

/** What every file of the catalogue begins with: {@code format}, {@code version}, {@code name}. */
final class FileHead {
    static final Set<String> KEYS = Set.of("format", "version", "name");

    private FileHead() {}

    /**
     * Checks the head of a file.
     *
     * @param format what the file has to say it is
     * @param version the newest that is read
     * @return the name
     * @throws rakeline.quantity.Refusal naming the key, its value and what is accepted
     */
    static String check(Piece root, String format, int version) {
        Piece said = needed(root, "format", "\"" + format + "\"");
        if (!format.equals(said.value())) {
            throw said.unlike("\"" + format + "\"");
        }
        checkVersion(needed(root, "version", String.valueOf(version)), version);
        return name(needed(root, "name", "a text that is not empty"));
    }

    /** The piece with a key, or a refusal that says what was wanted. */
    static Piece needed(Piece root, String key, String accepted) {
        Piece piece = root.members().get(key);
        if (piece == null) {
            throw root.refusal("has no \"" + key + "\"; accepted is " + accepted);
        }
        return piece;
    }

    private static void checkVersion(Piece said, int version) {
        if (!(said.value() instanceof Piece.Figure)) {
            throw said.unlike(String.valueOf(version));
        }
        if (said.whole() > version) {
            throw said.refusal("is " + said.whole() + ", from a newer Rakeline; this one reads " + version);
        }
        if (said.whole() != version) {
            throw said.unlike(String.valueOf(version));
        }
    }

    private static String name(Piece name) {
        if (name.oneLine().isBlank()) {
            throw name.unlike("a text that is not empty");
        }
        return name.oneLine();
    }
}
