package rakeline.worksheet;

import java.nio.charset.StandardCharsets;
import rakeline.json.JsonText;
import rakeline.quantity.Refusal;

/**
 * The worksheet file: UTF-8 JSON, {@code *.rakeline}. A byte order mark and any line ends are read; what is written has
 * neither mark nor carriage returns, its keys in one order, each line of text on a line of its own, and no results.
 * Reading what was written gives the same worksheet.
 */
public final class WorksheetFile {
    /** With the dot. */
    public static final String EXTENSION = ".rakeline";

    /** The largest file that is read, in bytes. */
    public static final int LIMIT_BYTES = 8_000_000;

    static final String FORMAT = "rakeline/worksheet";

    /** The version that is written; it and all before it are read. */
    static final int VERSION = 1;

    private WorksheetFile() {}

    /**
     * Reads a worksheet.
     *
     * @param name of the file, as it is to be called in a refusal
     * @throws Refusal in one sentence with file, place and what is accepted
     */
    public static Worksheet read(byte[] bytes, String name) {
        try {
            return WorksheetReader.read(JsonText.parse(bounded(bytes)));
        } catch (Refusal refusal) {
            throw refusal.in(name);
        }
    }

    /**
     * Writes a worksheet.
     *
     * @throws Refusal where the file would be larger than {@link #LIMIT_BYTES}
     */
    public static byte[] write(Worksheet page) {
        return bounded(WorksheetWriter.write(page).getBytes(StandardCharsets.UTF_8));
    }

    private static byte[] bounded(byte[] bytes) {
        if (bytes.length > LIMIT_BYTES) {
            throw new Refusal(
                    "the file is larger than " + LIMIT_BYTES / 1_000_000 + " MB, the most that a worksheet may have.");
        }
        return bytes;
    }
}
