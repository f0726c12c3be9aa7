package rakeline.handout;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.List;
import nu.validator.client.EmbeddedValidator;
import org.xml.sax.SAXException;

/** A checker of conformance to HTML, which knows nothing of this program. */
public final class Conformance {
    private Conformance() {}

    /** What it objects to, up to twenty lines. */
    public static List<String> said(byte[] html) {
        EmbeddedValidator checker = new EmbeddedValidator();
        checker.setOutputFormat(EmbeddedValidator.OutputFormat.GNU);
        checker.setNoLangDetect(true);
        checker.setForceHTML(true);
        try {
            return checker.validate(new ByteArrayInputStream(html))
                    .lines()
                    .limit(20)
                    .toList();
        } catch (IOException | SAXException e) {
            throw new AssertionError(e);
        }
    }
}
