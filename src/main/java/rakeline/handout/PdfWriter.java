package rakeline.handout;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.PageSizeUnits;
import com.openhtmltopdf.outputdevice.helper.ExternalResourceControlPriority;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.util.XRLog;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Optional;
import java.util.logging.Level;
import java.util.logging.Logger;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import rakeline.figure.PlainText;

/** Makes the PDF of a laid out sheet, tagged so that it can be read aloud in order. Nothing is fetched for it. */
final class PdfWriter {
    /** They warn of typefaces that are embedded later; held, so that their level stays. */
    private static final List<Logger> LIBRARIES =
            List.of(Logger.getLogger("org.apache.pdfbox"), Logger.getLogger("org.apache.fontbox"));

    private static final double PX_PER_MM = 96 / 25.4;
    private static final double CLOSE_SCALE = 0.75;
    private static final double USUAL_PART_OF_A_PAGE = 0.37;
    private static final double MOST_OF_A_PAGE = 0.8;

    /** Sizes of type that a sheet for one page is tried in, the largest first, each with the least figure for it. */
    private static final List<Size> CLOSE =
            List.of(new Size(8, 88), new Size(7.5, 80), new Size(7, 72), new Size(6.5, 64), new Size(6, 56));

    /** The height that a figure on one page gains at most, in mm, and by which steps it is tried. */
    private static final List<Double> GAINS_MM = List.of(24.0, 16.0, 8.0);

    /**
     * How large things are.
     *
     * @param typePt of running text on one page
     * @param figureMm the greatest height of a figure
     * @param tallMm that of one with too much in it for the other
     */
    private record Size(double typePt, double figureMm, double tallMm) {
        Size(double typePt, double figureMm) {
            this(typePt, figureMm, figureMm);
        }

        String style() {
            return "body.close { font-size: " + typePt + "pt; }";
        }
    }

    private final Laid laid;
    private final Paper paper;

    private PdfWriter(Laid laid, Paper paper) {
        this.laid = laid;
        this.paper = paper;
    }

    static Pdf write(Laid laid, Paper paper) {
        XRLog.setLoggingEnabled(false);
        LIBRARIES.forEach(library -> library.setLevel(Level.SEVERE));
        PdfWriter writer = new PdfWriter(laid, paper);
        return laid.form() == Sheet.Form.ONE_PAGE ? writer.onOnePage() : writer.onPages();
    }

    /** Two figures to a page, and some words, where their letters can be read at that height. */
    private Pdf onPages() {
        double usual = USUAL_PART_OF_A_PAGE * paper.heightMm();
        double most = MOST_OF_A_PAGE * paper.heightMm();
        return written(new Size(CLOSE.get(CLOSE.size() - 1).typePt(), usual, most), Integer.MAX_VALUE)
                .orElseThrow();
    }

    /** In the largest type in which it fits, then with the largest figure; on more pages where it fits in none. */
    private Pdf onOnePage() {
        for (Size size : CLOSE) {
            Optional<Pdf> fitting = written(size, 1);
            if (fitting.isPresent()) {
                return GAINS_MM.stream()
                        .map(gain -> written(new Size(size.typePt(), size.figureMm() + gain), 1))
                        .flatMap(Optional::stream)
                        .findFirst()
                        .orElseGet(fitting::get);
            }
        }
        return onPages();
    }

    /** The PDF in some size; none where it has more pages than it may. */
    private Optional<Pdf> written(Size size, int mostPages) {
        Document page = parsed(laid.xhtml());
        Outline.add(page);
        LongText.split(page);
        addStyle(page, size.style());
        describeFigures(page);
        try (PDDocument document = new PDDocument()) {
            Faces faces = new Faces(
                    document, ArabicForms.joined(page.getDocumentElement().getTextContent()));
            try (PdfBoxRenderer renderer = renderer(page, document, faces, size)) {
                renderer.layout();
                renderer.createPDFWithoutClosing();
                return document.getNumberOfPages() > mostPages
                        ? Optional.empty()
                        : Optional.of(finished(document, faces));
            }
        } catch (IOException e) {
            throw new UncheckedIOException("a document in memory can always be written", e);
        }
    }

    /** For those who do not see a figure: its title, as in HTML. */
    private void describeFigures(Document page) {
        NodeList elements = page.getElementsByTagName("svg");
        for (int i = 0; i < elements.getLength(); i++) {
            ((Element) elements.item(i))
                    .setAttribute("alt", laid.figures().get(i).title());
        }
    }

    private static void addStyle(Document page, String style) {
        Element element = page.createElement("style");
        element.setTextContent(style);
        page.getElementsByTagName("head").item(0).appendChild(element);
    }

    private PdfBoxRenderer renderer(Document page, PDDocument document, Faces faces, Size size) {
        PdfRendererBuilder builder = new PdfRendererBuilder();
        RightToLeft order = new RightToLeft();
        builder.usePDDocument(document)
                .withW3cDocument(page, null)
                .useDefaultPageSize(paper.widthMm(), paper.heightMm(), PageSizeUnits.MM)
                .useUnicodeBidiSplitter(RightToLeft::new)
                .useUnicodeBidiReorderer(order)
                .useUnicodeLineBreaker(new Breaks())
                .usePdfUaAccessibility(true)
                .withProducer("Rakeline")
                .useSVGDrawer(figures(faces, size));
        for (ExternalResourceControlPriority when : ExternalResourceControlPriority.values()) {
            builder.useExternalResourceAccessControl((address, kind) -> false, when);
        }
        faces.register(builder);
        return builder.buildPdfRenderer();
    }

    private FigureDrawer figures(Faces faces, Size size) {
        double scale = laid.form() == Sheet.Form.ONE_PAGE ? CLOSE_SCALE : 1;
        return new FigureDrawer(laid.figures(), faces, scale, size.figureMm() * PX_PER_MM, size.tallMm() * PX_PER_MM);
    }

    private Pdf finished(PDDocument document, Faces faces) throws IOException {
        faces.embed(document);
        PDDocumentInformation information = document.getDocumentInformation();
        information.setTitle(PlainText.oneLine(laid.title()));
        document.getDocumentCatalog().setLanguage("en");
        PDViewerPreferences preferences =
                new PDViewerPreferences(document.getDocumentCatalog().getCOSObject());
        preferences.setDisplayDocTitle(true);
        document.getDocumentCatalog().setViewerPreferences(preferences);
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        document.save(bytes);
        return new Pdf(faces.missing(), bytes.toByteArray());
    }

    private static Document parsed(String xhtml) {
        try {
            return DocumentBuilderFactory.newInstance()
                    .newDocumentBuilder()
                    .parse(new InputSource(new StringReader(xhtml)));
        } catch (ParserConfigurationException | SAXException | IOException e) {
            throw new IllegalStateException("What was laid out is not well-formed.", e);
        }
    }
}
