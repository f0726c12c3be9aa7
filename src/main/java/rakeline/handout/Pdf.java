package rakeline.handout;

import java.util.List;

/** A finished PDF. */
public final class Pdf {
    private final byte[] bytes;
    private final List<String> missing;

    /** @param missing letters that no typeface at hand has, each once; a mark stands in their place */
    Pdf(List<String> missing, byte... bytes) {
        this.bytes = bytes.clone();
        this.missing = List.copyOf(missing);
    }

    public byte[] bytes() {
        return bytes.clone();
    }

    /** One sentence on letters that are missing; empty where there are none. */
    public String said() {
        return missing.isEmpty()
                ? ""
                : "No typeface found here has " + String.join(" ", missing)
                        + "; a mark stands in their place in the PDF. The HTML has them.";
    }

    @Override
    public String toString() {
        return bytes.length + " bytes of PDF";
    }
}
