package rakeline.handout;

import java.nio.charset.StandardCharsets;
import java.util.List;
import rakeline.figure.Figure;

/**
 * A sheet laid out: valid HTML5 that is well-formed XHTML too.
 *
 * @param xhtml the whole text
 * @param title of the sheet
 * @param figures what its {@code svg} elements show, in their order
 * @param form how closely it is set
 */
public record Laid(String xhtml, String title, List<Figure> figures, Sheet.Form form) {
    public Laid {
        figures = List.copyOf(figures);
    }

    /** The file's bytes, in UTF-8. */
    public byte[] html() {
        return xhtml.getBytes(StandardCharsets.UTF_8);
    }

    /** The same as PDF. */
    public Pdf pdf(Paper paper) {
        return PdfWriter.write(this, paper);
    }
}
