package rakeline.figure.paint;

import java.awt.Dimension;
import java.awt.geom.Rectangle2D;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.stream.IntStream;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import javax.xml.transform.OutputKeys;
import javax.xml.transform.Transformer;
import javax.xml.transform.TransformerException;
import javax.xml.transform.TransformerFactory;
import javax.xml.transform.dom.DOMSource;
import javax.xml.transform.stream.StreamResult;
import org.apache.batik.svggen.SVGGeneratorContext;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import rakeline.figure.Figure;
import rakeline.figure.PlainText;

/** A figure as vectors, on the palette's card; text stays text. The same figure gives the same bytes. */
public final class Svg {
    private static final String NAMESPACE = "http://www.w3.org/2000/svg";

    private Svg() {}

    /**
     * The figure as an SVG document.
     *
     * @param width in px
     */
    public static String write(Figure figure, int width, Palette palette) {
        return new String(bytes(figure, width, palette), StandardCharsets.UTF_8);
    }

    /**
     * The figure as an element to stand in another document.
     *
     * @param id of the element; every id inside it begins so, that figures of one document do not share any
     */
    public static String inline(Figure figure, int width, Palette palette, String id) {
        Document document = document(figure, width, palette);
        SvgIds.under(id, document.getDocumentElement());
        return new String(serialised(document, true), StandardCharsets.UTF_8);
    }

    /** The same as a file's bytes, in UTF-8. */
    public static byte[] bytes(Figure figure, int width, Palette palette) {
        return serialised(document(figure, width, palette), false);
    }

    private static Document document(Figure figure, int width, Palette palette) {
        FigurePainter painter = FigurePainter.of(figure, palette, 1);
        Dimension size = painter.preferredSize(width);
        Document document = emptyDocument();
        SvgText pen = new SvgText(context(document));
        pen.setSVGCanvasSize(size);
        pen.setColor(palette.card());
        pen.fillRect(0, 0, size.width, size.height);
        painter.draw(pen, new Rectangle2D.Double(0, 0, size.width, size.height));
        Element root = pen.getRoot(document.getDocumentElement());
        root.setAttribute("viewBox", "0 0 " + size.width + " " + size.height);
        root.setAttribute("role", "img");
        root.insertBefore(title(document, figure), root.getFirstChild());
        nameTypefaces(root);
        return document;
    }

    private static SVGGeneratorContext context(Document document) {
        SVGGeneratorContext context = SVGGeneratorContext.createDefault(document);
        context.setComment("Rakeline");
        context.setEmbeddedFontsOn(false);
        context.setPrecision(3);
        return context;
    }

    private static Element title(Document document, Figure figure) {
        Element title = document.createElementNS(NAMESPACE, "title");
        title.setTextContent(PlainText.oneLine(figure.title()));
        return title;
    }

    /** Families that a reader without ours falls back to. */
    private static void nameTypefaces(Element root) {
        nameTypeface(root);
        NodeList all = root.getElementsByTagName("*");
        IntStream.range(0, all.getLength()).mapToObj(all::item).forEach(node -> nameTypeface((Element) node));
    }

    private static void nameTypeface(Element element) {
        String family = element.getAttribute("font-family");
        if (family.contains("Inter")) {
            element.setAttribute("font-family", "Inter, sans-serif");
            element.setAttribute("font-weight", family.contains("Semi") ? "600" : "400");
        } else if (family.contains("Roboto Mono")) {
            element.setAttribute("font-family", "'Roboto Mono', monospace");
        } else if (!family.isEmpty()) {
            element.setAttribute("font-family", family.contains("mono") ? "monospace" : "sans-serif");
        }
    }

    private static Document emptyDocument() {
        try {
            return DocumentBuilderFactory.newInstance()
                    .newDocumentBuilder()
                    .getDOMImplementation()
                    .createDocument(NAMESPACE, "svg", null);
        } catch (ParserConfigurationException failure) {
            throw new IllegalStateException("This Java cannot make XML documents.", failure);
        }
    }

    private static byte[] serialised(Document document, boolean inside) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try {
            Transformer transformer = TransformerFactory.newInstance().newTransformer();
            transformer.setOutputProperty(OutputKeys.ENCODING, "UTF-8");
            transformer.setOutputProperty(OutputKeys.STANDALONE, "yes");
            transformer.setOutputProperty(OutputKeys.OMIT_XML_DECLARATION, inside ? "yes" : "no");
            transformer.transform(new DOMSource(document), new StreamResult(bytes));
        } catch (TransformerException failure) {
            throw new IllegalStateException("The drawing cannot be written as XML.", failure);
        }
        return bytes.toByteArray();
    }
}
