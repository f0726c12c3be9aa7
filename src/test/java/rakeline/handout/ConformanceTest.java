package rakeline.handout;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Sheets read by a checker of conformance to HTML, which knows nothing of this program. */
@Tag("slow")
class ConformanceTest {

    @Test
    void aHandoutIsValid() {
        assertThat(Conformance.said(Sheets.page(true).lay().html())).isEmpty();
    }

    @Test
    void aHandoutOfHostileWordsIsValid() {
        assertThat(Conformance.said(Sheets.hostile().lay().html())).isEmpty();
    }

    @Test
    void aCloseSheetIsValid() {
        Sheet page = Sheets.page(false);
        Block.Beside beside = new Block.Beside(page.blocks());
        Sheet close = new Sheet(page.title(), page.about(), List.of(beside), page.imprint(), Sheet.Form.ONE_PAGE);
        assertThat(Conformance.said(close.lay().html())).isEmpty();
    }

    @Test
    void theCheckerSeesWhatIsNotValid() {
        String broken = Sheets.page(false).lay().xhtml().replace("id=\"figure2\"", "id=\"figure1\"");
        assertThat(Conformance.said(broken.getBytes(StandardCharsets.UTF_8)))
                .anyMatch(line -> line.contains("Duplicate ID"));
    }
}
