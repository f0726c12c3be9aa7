package rakeline.handout;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import javax.xml.parsers.DocumentBuilder;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import rakeline.engine.Outcome;
import rakeline.figure.Samples;
import rakeline.worksheet.Row;

/** The HTML of handouts, read by a strict parser. */
class LaidTest {
    private static final Pattern SELF_CLOSED = Pattern.compile("<([a-z0-9]+)[^<>]*/>");
    private static final List<String> VOID = List.of("meta", "hr", "br");

    private final Laid laid = Sheets.page(false).lay();
    private final Document page = parsed(laid.xhtml());

    private static Document parsed(String xhtml) {
        try {
            DocumentBuilder builder = DocumentBuilderFactory.newInstance().newDocumentBuilder();
            builder.setErrorHandler(null);
            return builder.parse(new InputSource(new StringReader(xhtml)));
        } catch (ParserConfigurationException | SAXException | IOException e) {
            throw new AssertionError(xhtml, e);
        }
    }

    private static List<Element> all(Document page, String name) {
        NodeList found = page.getElementsByTagName(name);
        return IntStream.range(0, found.getLength())
                .mapToObj(i -> (Element) found.item(i))
                .toList();
    }

    private static String words(Document page, String name) {
        return String.join(
                "\n", all(page, name).stream().map(Element::getTextContent).toList());
    }

    @Test
    void itBeginsAsHtml5InItsLanguage() {
        assertThat(laid.xhtml()).startsWith("<!DOCTYPE html>\n<html ");
        assertThat(page.getDocumentElement().getAttribute("lang")).isEqualTo("en");
    }

    @Test
    void itHasOneTitleAndOneHeadingOfTheFirstLevel() {
        assertThat(all(page, "title").get(0).getTextContent()).isEqualTo("Trail");
        assertThat(all(page, "h1"))
                .singleElement()
                .satisfies(heading -> assertThat(heading.getTextContent()).isEqualTo("Trail"));
    }

    @Test
    void noHeadingSkipsALevel() {
        List<Integer> levels = new ArrayList<>();
        all(page, "*").stream()
                .map(Element::getTagName)
                .filter(name -> name.matches("h[1-6]"))
                .forEach(name -> levels.add(name.charAt(1) - '0'));
        assertThat(IntStream.range(1, levels.size()).map(i -> levels.get(i) - levels.get(i - 1)))
                .allMatch(step -> step <= 1);
    }

    @Test
    void nothingIsFetchedAndNothingRuns() {
        assertThat(all(page, "*").stream().map(Element::getTagName))
                .doesNotContain("script", "img", "link", "iframe", "object", "image");
        assertThat(all(page, "*"))
                .allSatisfy(element -> assertThat(element.getAttribute("src")).isEmpty());
        assertThat(laid.xhtml()).doesNotContain("@import", "onload", "javascript:");
    }

    @Test
    void everyReferenceStaysInside() {
        assertThat(Pattern.compile("(?:href|url)[=(]\"?([^\")]*)")
                        .matcher(laid.xhtml())
                        .results())
                .allMatch(found -> found.group(1).startsWith("#"));
    }

    @Test
    void everyIdStandsOnce() {
        List<String> ids = all(page, "*").stream()
                .map(element -> element.getAttribute("id"))
                .filter(id -> !id.isEmpty())
                .toList();
        assertThat(ids).doesNotHaveDuplicates().contains("figure1", "figure2");
    }

    @Test
    void everyFigureHasWordsForThoseWhoDoNotSeeIt() {
        assertThat(all(page, "svg")).hasSize(3).allSatisfy(svg -> {
            assertThat(svg.getAttribute("role")).isEqualTo("img");
            assertThat(svg.getElementsByTagName("title").item(0).getTextContent())
                    .isNotBlank();
        });
    }

    @Test
    void onlyElementsWithoutContentCloseThemselves() {
        String outsideOfFigures = laid.xhtml().replaceAll("(?s)<svg.*?</svg>", "");
        assertThat(SELF_CLOSED.matcher(outsideOfFigures).results().map(found -> found.group(1)))
                .isSubsetOf(VOID);
    }

    @Test
    void aTableIsATableWithHeadedColumns() {
        assertThat(all(page, "th"))
                .isNotEmpty()
                .allMatch(cell -> cell.getAttribute("scope").equals("col"));
    }

    @Test
    void aNoteIsFilledByTheRun() {
        assertThat(words(page, "p")).contains("More offset, less trail: 5.0 mm.");
    }

    @Test
    void aHeadingThatRepeatsTheTitleIsLeftOut() {
        assertThat(words(page, "h2")).doesNotContain("Trail").contains("What the numbers rest on");
    }

    @Test
    void forStudentsAnAnswerIsLeftOutWithLinesToWriteOn() {
        assertThat(laid.xhtml()).doesNotContain("The answer is five").contains("Your answer", "class=\"rule\"", "Name");
    }

    @Test
    void withAnswersEachStandsInItsPlace() {
        String whole = Sheets.page(PageSheet.Edition.WITH_ANSWERS, false).lay().xhtml();
        assertThat(whole).contains("The answer is five").doesNotContain("Your answer");
        assertThat(whole.indexOf("The answer is five")).isLessThan(whole.indexOf("What the numbers rest on"));
    }

    @Test
    void aFigureAndItsCautionThatAreFoldedAreLeftOutForStudents() {
        List<Row> rows = List.of(
                new Row.Note("n1", "Which?"), Row.Snippet.of("r1", "chart()").folded(true));
        List<Outcome> outcomes = List.of(Sheets.shown("r1", "chart", Samples.sweep()));
        assertThat(Sheets.of("Hidden", rows, outcomes, PageSheet.Edition.STUDENTS, true)
                        .lay()
                        .xhtml())
                .doesNotContain(
                        "<svg",
                        Samples.HELD,
                        Samples.CAUTION,
                        "chart()",
                        Samples.sweep().title());
        assertThat(Sheets.of("Hidden", rows, outcomes, PageSheet.Edition.WITH_ANSWERS, true)
                        .lay()
                        .xhtml())
                .contains("<svg", Samples.HELD, Samples.CAUTION, "chart()");
    }

    @Test
    void aCautionIsSaidInFullOnceAndThenInAWordThatLeadsThere() {
        Document three = parsed(Sheets.charts(3).lay().xhtml());
        assertThat(words(three, "p").split(Pattern.quote(Samples.CAUTION), -1)).hasSize(2);
        assertThat(words(three, "a")).contains("toe contact");
        assertThat(Sheets.charts(3).lay().xhtml()).contains("id=\"caution1\"", "href=\"#caution1\"");
    }

    @Test
    void onlyGenericFamiliesStandAfterOurs() {
        assertThat(laid.xhtml()).doesNotContain("Arial", "Consolas", "Helvetica", "DejaVu", "Liberation");
    }

    @Test
    void aPlaceOfANoteThatNoRowFillsIsToldBelowIt() {
        Document whole =
                parsed(Sheets.page(PageSheet.Edition.WITH_ANSWERS, false).lay().xhtml());
        assertThat(words(whole, "p")).contains("{{nothing}} names no row of the page.");
    }

    @Test
    void whereTheDialStoodIsSaid() {
        assertThat(words(page, "td")).contains("Head angle\n70.5°\n69 to 74°").doesNotContain("\nhead\n");
    }

    @Test
    void whatADialIsCalledInTheCodeIsSaidBesideTheCode() {
        assertThat(words(parsed(Sheets.page(true).lay().xhtml()), "td")).contains("Head angle\n70.5°\n69 to 74°\nhead");
    }

    @Test
    void aTextOfSeveralLinesKeepsThem() {
        assertThat(words(parsed(Sheets.text("one\n  two\n").lay().xhtml()), "pre"))
                .isEqualTo("one\n  two");
    }

    @Test
    void aFailedRowWithoutANameIsCalledByItsNumber() {
        assertThat(Sheets.text("a").lay().xhtml()).contains("Row 2, failed: by zero");
    }

    @Test
    void aFailedRowStandsWithItsMessage() {
        assertThat(words(page, "p")).contains("Row q, failed: Line 1: / by zero.");
    }

    @Test
    void assumptionsCautionsAndTheWordsUsedAreExplained() {
        assertThat(words(page, "p")).contains("demo-data/bikes/small.bike.json, usual values", "safety certificate");
        assertThat(words(page, "dt")).contains("Trail trailMm");
    }

    @Test
    void aWordThatADrawingShowsHasItBesideItsLines() {
        assertThat(all(page, "div"))
                .filteredOn(div -> div.getAttribute("class").equals("entry")
                        && div.getTextContent().startsWith("Trail"))
                .singleElement()
                .satisfies(entry -> assertThat(entry.getElementsByTagName("svg").getLength())
                        .isEqualTo(1));
    }

    @Test
    void dateVersionAndStampStandAtItsEnd() {
        assertThat(words(page, "footer"))
                .contains("25 November 2026, 15:04", "Rakeline 1.2.3", "page.rakeline, SHA-256 ed7002b439e9ac845f22");
    }

    @Test
    void codeIsLeftOutUnlessAskedFor() {
        assertThat(laid.xhtml()).doesNotContain("1 / 0");
        assertThat(Sheets.page(true).lay().xhtml()).contains("int q = 1 / 0;");
    }

    @Test
    void hostileWordsAreText() {
        String xhtml = Sheets.hostile().lay().xhtml();
        Document hostile = parsed(xhtml);
        assertThat(all(hostile, "*").stream().map(Element::getTagName))
                .doesNotContain("script", "img", "div", "a")
                .contains("blockquote", "pre");
        assertThat(words(hostile, "h1")).startsWith("</title><script>alert(1)</script> & \"q\" \u202eשלום مرحبا 你好");
        assertThat(words(hostile, "p")).contains("<img src=\"http://example.invalid/x.png\"", "[c]");
    }

    @Test
    void aLineOfAMillionLettersIsText() {
        Document page = parsed(Sheets.note("x".repeat(1_000_000)).lay().xhtml());
        assertThat(words(page, "p")).contains("x".repeat(1_000_000));
    }

    @Test
    void aNoteBeyondTheBoundsOfNotesStandsAsItIsWritten() {
        String deep = ">".repeat(400) + " deep";
        assertThat(words(parsed(Sheets.note(deep).lay().xhtml()), "pre")).isEqualTo(deep);
    }

    @Test
    void severalPagesMakeOneSheetWithATitleEach() {
        Document both = parsed(Sheet.joined(List.of(Sheets.page(false), Sheets.note("a")))
                .lay()
                .xhtml());
        assertThat(words(both, "h1")).isEqualTo("Trail; Note");
        assertThat(words(both, "h2")).startsWith("Trail\nNote");
    }

    @Test
    void aWideTableIsCutIntoSeveralThatBeginWithTheSameColumn() {
        Markup out = new Markup();
        TableMarkup.write(Wide.table(20, 300), new CautionMarkup(), out);
        Document wide = parsed("<body>" + out + "</body>");
        assertThat(all(wide, "table"))
                .hasSize(3)
                .allSatisfy(table -> assertThat(
                                table.getElementsByTagName("th").item(0).getTextContent())
                        .isEqualTo("Column 0"));
        assertThat(words(wide, "p")).contains("The first 200 of 300 rows.");
    }
}
