package rakeline.handout;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import nu.validator.client.EmbeddedValidator;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.xml.sax.SAXException;

/** Sheets read by a checker of conformance to HTML, which knows nothing of this program. */
@Tag("slow")
class ConformanceTest {

    private static List<String> said(byte[] html) {
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

    @Test
    void aHandoutIsValid() {
        assertThat(said(Sheets.page(true).lay().html())).isEmpty();
    }

    @Test
    void aHandoutOfHostileWordsIsValid() {
        assertThat(said(Sheets.hostile().lay().html())).isEmpty();
    }

    @Test
    void aCloseSheetIsValid() {
        Sheet page = Sheets.page(false);
        Block.Beside beside = new Block.Beside(page.blocks());
        Sheet close = new Sheet(page.title(), page.about(), List.of(beside), page.imprint(), Sheet.Form.ONE_PAGE);
        assertThat(said(close.lay().html())).isEmpty();
    }

    @Test
    void theCheckerSeesWhatIsNotValid() {
        String broken = Sheets.page(false).lay().xhtml().replace("id=\"figure2\"", "id=\"figure1\"");
        assertThat(said(broken.getBytes(StandardCharsets.UTF_8))).anyMatch(line -> line.contains("Duplicate ID"));
    }
}
