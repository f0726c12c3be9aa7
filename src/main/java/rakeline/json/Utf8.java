package rakeline.json;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import rakeline.quantity.Refusal;

/** Bytes as text in UTF-8. */
public final class Utf8 {
    private static final String MARK = "\uFEFF";

    private Utf8() {}

    /**
     * The text, without a byte order mark.
     *
     * @throws Refusal for bytes that are not UTF-8, and for a text of blanks alone
     */
    public static String text(byte[] bytes) {
        String text = decoded(bytes);
        String unmarked = text.startsWith(MARK) ? text.substring(1) : text;
        if (unmarked.isBlank()) {
            throw new Refusal("the file is empty.");
        }
        return unmarked;
    }

    private static String decoded(byte[] bytes) {
        try {
            return StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
        } catch (CharacterCodingException e) {
            throw new Refusal("the file is not text in UTF-8.", e);
        }
    }
}
