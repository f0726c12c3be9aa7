package rakeline.catalogue;

import rakeline.json.JsonText;
import rakeline.json.Piece;
import rakeline.quantity.Refusal;

/** What a file of the catalogue says it is. */
public final class Format {
    private Format() {}

    /**
     * The file's {@code format}; empty where it says none.
     *
     * @param file as named to the person in a refusal
     * @throws Refusal where it is no JSON
     */
    public static String of(byte[] bytes, String file) {
        try {
            Piece said = JsonText.parse(bytes).members().get("format");
            return said != null && said.value() instanceof String format ? format : "";
        } catch (Refusal e) {
            throw e.in(file);
        }
    }
}
