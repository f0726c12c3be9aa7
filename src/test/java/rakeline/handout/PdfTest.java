package rakeline.handout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.StreamSupport;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureNode;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import rakeline.figure.Samples;

/** The PDF of handouts, read back. */
@Tag("slow")
class PdfTest {
    private static final PDDocument PAGE = read(Sheets.page(false), Paper.A4);

    @AfterAll
    static void close() throws IOException {
        PAGE.close();
    }

    private static PDDocument read(Sheet sheet, Paper paper) {
        try {
            return Loader.loadPDF(sheet.lay().pdf(paper).bytes());
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    private static String text(PDDocument pdf) {
        try {
            return new PDFTextStripper().getText(pdf);
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    @Test
    void notesFiguresAndTablesAreTextThatCanBeSelected() {
        assertThat(text(PAGE)).contains("More offset, less trail: 5.0 mm.", "Wheelbase, mm", "Head angle, °", "70.5°");
    }

    @Test
    void everyFontIsEmbedded() throws IOException {
        for (PDPage page : PAGE.getPages()) {
            for (PDFont font : fonts(page.getResources())) {
                assertThat(font.isEmbedded()).as(font.getName()).isTrue();
            }
        }
    }

    private static List<PDFont> fonts(PDResources resources) throws IOException {
        List<PDFont> fonts = new ArrayList<>();
        for (COSName name : resources.getFontNames()) {
            fonts.add(resources.getFont(name));
        }
        return fonts;
    }

    @Test
    void onlyTheGlyphsThatAreUsedTakeRoom() {
        assertThat(Sheets.note("few").lay().pdf(Paper.A4).bytes().length).isLessThan(250_000);
    }

    @Test
    void figuresAreVectors() throws IOException {
        for (PDPage page : PAGE.getPages()) {
            for (COSName name : page.getResources().getXObjectNames()) {
                assertThat(page.getResources().isImageXObject(name)).isFalse();
            }
        }
    }

    @Test
    void titleAndLanguageAreTold() {
        assertThat(PAGE.getDocumentInformation().getTitle()).isEqualTo("Trail");
        assertThat(PAGE.getDocumentCatalog().getLanguage()).isEqualTo("en");
    }

    @Test
    void itIsTaggedSoThatItCanBeReadAloudInOrder() {
        List<PDStructureElement> elements = new ArrayList<>();
        collect(PAGE.getDocumentCatalog().getStructureTreeRoot(), elements);
        assertThat(PAGE.getDocumentCatalog().getMarkInfo().isMarked()).isTrue();
        assertThat(elements)
                .extracting(PDStructureElement::getStructureType)
                .contains("H1", "H2", "H3", "P", "Table", "TH", "TD", "Figure");
    }

    @Test
    void aFigureSaysWhatItShows() {
        List<PDStructureElement> elements = new ArrayList<>();
        collect(PAGE.getDocumentCatalog().getStructureTreeRoot(), elements);
        assertThat(elements)
                .filteredOn(element -> element.getStructureType().equals("Figure"))
                .hasSize(3)
                .extracting(PDStructureElement::getAlternateDescription)
                .contains(Samples.sweep().title(), Samples.sideView().title());
    }

    private static void collect(PDStructureNode node, List<PDStructureElement> into) {
        for (Object kid : node.getKids()) {
            if (kid instanceof PDStructureElement element) {
                into.add(element);
                collect(element, into);
            }
        }
    }

    @Test
    void theHeadingsAreItsOutline() {
        Iterable<PDOutlineItem> items =
                PAGE.getDocumentCatalog().getDocumentOutline().children();
        assertThat(StreamSupport.stream(items.spliterator(), false).map(PDOutlineItem::getTitle))
                .containsExactly("Then", "What the numbers rest on", "What the words mean");
    }

    @Test
    void thePageIsThePaper() throws IOException {
        assertThat(PAGE.getPage(0).getMediaBox().getWidth())
                .isEqualTo(595.3f, org.assertj.core.api.Assertions.within(0.5f));
        try (PDDocument letter = read(Sheets.note("a"), Paper.LETTER)) {
            assertThat(letter.getPage(0).getMediaBox().getHeight())
                    .isEqualTo(792, org.assertj.core.api.Assertions.within(0.5f));
        }
    }

    @Test
    void noFigureIsCutByAPagesEnd() throws IOException {
        try (PDDocument charts = read(Sheets.charts(5), Paper.A4)) {
            List<String> pages = new ArrayList<>();
            for (int page = 1; page <= charts.getNumberOfPages(); page++) {
                PDFTextStripper stripper = new PDFTextStripper();
                stripper.setStartPage(page);
                stripper.setEndPage(page);
                pages.add(stripper.getText(charts));
            }
            assertThat(pages)
                    .hasSizeGreaterThan(2)
                    .allSatisfy(
                            page -> assertThat(count(page, "Wheelbase, mm")).isEqualTo(count(page, "Toe room, mm")));
            assertThat(pages.stream()
                            .mapToInt(page -> count(page, "Toe room, mm"))
                            .sum())
                    .isEqualTo(5);
        }
    }

    private static int count(String text, String words) {
        return text.split(java.util.regex.Pattern.quote(words), -1).length - 1;
    }

    @Test
    void nothingStandsOutsideOfThePaper() throws IOException {
        PDFTextStripper stripper = new PDFTextStripper() {
            @Override
            protected void processTextPosition(TextPosition letter) {
                assertThat(letter.getX()).isBetween(20f, 580f);
                assertThat(letter.getY()).isBetween(20f, 830f);
                super.processTextPosition(letter);
            }
        };
        assertThat(stripper.getText(PAGE)).isNotBlank();
    }

    @Test
    void pagesCanBeLookedAt() {
        try (PrintedPages pages = PrintedPages.of(Sheets.page(false).lay().pdf(Paper.A4))) {
            assertThat(pages.count()).isEqualTo(PAGE.getNumberOfPages());
            assertThat(pages.picture(0, 36).getWidth()).isBetween(295, 300);
            assertThat(pages.pageable().getNumberOfPages()).isEqualTo(pages.count());
        }
    }

    @Test
    void hostileWordsAreText() throws IOException {
        try (PDDocument hostile = read(Sheets.hostile(), Paper.A4)) {
            assertThat(text(hostile)).contains("<script>alert(1)</script>");
            assertThat(hostile.getDocumentCatalog().getNames() == null
                            || hostile.getDocumentCatalog().getNames().getJavaScript() == null)
                    .isTrue();
        }
    }

    @Test
    void greekAndCyrillicAreText() throws IOException {
        try (PDDocument pdf = read(Sheets.note("λάμδα Привет"), Paper.A4)) {
            assertThat(text(pdf)).contains("λάμδα Привет");
        }
    }

    @Test
    void arabicIsJoinedAndReadsBackAsItsLetters() throws IOException {
        assumeThat(Fallbacks.covering(Set.of(0x628, 0xFE91)).missing()).isEmpty();
        try (PDDocument pdf = read(Sheets.note("بيت"), Paper.A4)) {
            StringBuilder shown = new StringBuilder();
            PDFTextStripper stripper = new PDFTextStripper() {
                @Override
                protected void processTextPosition(TextPosition letter) {
                    shown.append(letter.getUnicode());
                    super.processTextPosition(letter);
                }
            };
            assertThat(stripper.getText(pdf)).contains("بيت");
            assertThat(shown).contains("\uFE96\uFEF4\uFE91");
        }
    }

    @Test
    void lettersThatNoTypefaceHasAreTold() {
        Pdf pdf = Sheets.note("a \uE123 b").lay().pdf(Paper.A4);
        assertThat(pdf.said().toLowerCase(Locale.ROOT)).contains("\uE123", "the html has them");
    }

    @Test
    void aSheetForOnePageIsSetCloseEnoughToFit() throws IOException {
        try (PDDocument pages = read(some(Sheet.Form.PAGES), Paper.LETTER);
                PDDocument close = read(some(Sheet.Form.ONE_PAGE), Paper.LETTER)) {
            assertThat(List.of(pages.getNumberOfPages(), close.getNumberOfPages()))
                    .containsExactly(2, 1);
        }
    }

    /** A chart and a drawing, with what stands around them. */
    private static Sheet some(Sheet.Form form) {
        Sheet page = Sheets.page(false);
        return new Sheet(page.title(), page.about(), page.blocks().subList(0, 7), List.of("end"), form);
    }
}
