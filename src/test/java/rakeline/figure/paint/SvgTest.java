package rakeline.figure.paint;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import rakeline.figure.Column;
import rakeline.figure.Figure;
import rakeline.figure.PlainText;
import rakeline.figure.Samples;
import rakeline.figure.Table;
import rakeline.quantity.Caution;

class SvgTest {
    static Stream<Figure> figures() {
        return Stream.of(Samples.sweep(), Samples.held(), Samples.table(), Samples.sideView());
    }

    private static Document parsed(Figure figure) throws Exception {
        DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
        factory.setNamespaceAware(true);
        factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
        byte[] bytes = Svg.bytes(figure, 760, Palette.LIGHT);
        return factory.newDocumentBuilder().parse(new ByteArrayInputStream(bytes));
    }

    private static List<Element> elements(Document document, String name) {
        NodeList found = document.getElementsByTagNameNS("http://www.w3.org/2000/svg", name);
        return IntStream.range(0, found.getLength())
                .mapToObj(i -> (Element) found.item(i))
                .toList();
    }

    private static List<String> texts(Document document) {
        return elements(document, "text").stream().map(Element::getTextContent).toList();
    }

    private static Table titled(String title) {
        return new Table(
                title,
                List.of(Column.ofWords("w", "Words", List.of(title))),
                title,
                List.of(new Caution("all", title)));
    }

    @ParameterizedTest
    @MethodSource("figures")
    void theSameFigureGivesTheSameBytes(Figure figure) {
        assertThat(Svg.bytes(figure, 760, Palette.DARK)).isEqualTo(Svg.bytes(figure, 760, Palette.DARK));
    }

    @ParameterizedTest
    @MethodSource("figures")
    void itsSizeIsStatedOnce(Figure figure) throws Exception {
        Element root = parsed(figure).getDocumentElement();
        assertThat(root.getAttribute("viewBox"))
                .isEqualTo("0 0 " + root.getAttribute("width") + " " + root.getAttribute("height"));
        assertThat(root.getAttribute("width")).isEqualTo("760");
    }

    @ParameterizedTest
    @MethodSource("figures")
    void itIsTitledForReadersThatDoNotSee(Figure figure) throws Exception {
        assertThat(elements(parsed(figure), "title"))
                .singleElement()
                .satisfies(title -> assertThat(title.getTextContent()).isEqualTo(figure.title()));
    }

    @ParameterizedTest
    @MethodSource("figures")
    void everyTextStatesItsLength(Figure figure) throws Exception {
        assertThat(elements(parsed(figure), "text"))
                .isNotEmpty()
                .allMatch(text -> Double.parseDouble(text.getAttribute("textLength")) > 0);
    }

    @Test
    void labelsHeldAndCautionAreText() throws Exception {
        assertThat(texts(parsed(Samples.sweep())))
                .contains("Trail, mm", "Wheelbase, mm", "Toe room, mm", "Held:", Samples.HELD, Samples.CAUTION);
    }

    @Test
    void onlyAGenericFamilyStandsAfterOurs() throws Exception {
        assertThat(Stream.of(Samples.table(), Samples.sweep())
                        .flatMap(figure -> families(figure).stream())
                        .distinct())
                .isNotEmpty()
                .allMatch(family -> List.of("Inter, sans-serif", "'Roboto Mono', monospace", "sans-serif", "monospace")
                        .contains(family));
    }

    private static List<String> families(Figure figure) {
        try {
            return elements(parsed(figure), "*").stream()
                    .map(element -> element.getAttribute("font-family"))
                    .filter(family -> !family.isEmpty())
                    .toList();
        } catch (Exception e) {
            throw new IllegalStateException(e);
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "</text><script>alert(1)</script>",
                "a & b ]]> <!-- \"quoted\" 'and' -->",
                "null \u0000 bell \u0007 escape \u001b[31m",
                "lone \uD800 and \uFFFE",
                "עברית مرحبا \u202Eturned",
                "自転車 🚲 e\u0301"
            })
    void anyTitleComesOutAsText(String title) throws Exception {
        Document document = parsed(titled(title));
        String shown = PlainText.oneLine(title);
        assertThat(elements(document, "title").get(0).getTextContent()).isEqualTo(shown);
        assertThat(texts(document)).contains(shown.strip());
        assertThat(elements(document, "script")).isEmpty();
    }
}
