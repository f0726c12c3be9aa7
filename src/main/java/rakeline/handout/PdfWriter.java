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
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import rakeline.figure.PlainText;

/** Makes the PDF of a laid out sheet. Nothing is fetched for it. */
final class PdfWriter {
    private static final double PX_PER_MM = 96 / 25.4;
    private static final double AROUND_A_FIGURE_MM = 44;
    private static final double FIGURE_OF_ONE_PAGE_MM = 76;

    /** Sizes of type that a sheet for one page is tried in, in points. */
    private static final List<Double> CLOSE = List.of(8.0, 7.5, 7.0, 6.5, 6.0);

    private final Laid laid;
    private final Paper paper;

    private PdfWriter(Laid laid, Paper paper) {
        this.laid = laid;
        this.paper = paper;
    }

    static Pdf write(Laid laid, Paper paper) {
        XRLog.setLoggingEnabled(false);
        PdfWriter writer = new PdfWriter(laid, paper);
        return laid.form() == Sheet.Form.ONE_PAGE ? writer.onOnePage() : writer.onPages();
    }

    private Pdf onPages() {
        return written("", Integer.MAX_VALUE).orElseThrow();
    }

    /** In the largest type in which it fits; in the smallest where it fits in none. */
    private Pdf onOnePage() {
        for (double size : CLOSE) {
            Optional<Pdf> fitting = written("body.close { font-size: " + size + "pt; }", 1);
            if (fitting.isPresent()) {
                return fitting.get();
            }
        }
        return onPages();
    }

    /** The PDF with some more style; none where it has more pages than it may. */
    private Optional<Pdf> written(String style, int mostPages) {
        Document page = parsed(laid.xhtml());
        Outline.add(page);
        addStyle(page, style);
        try (PDDocument document = new PDDocument()) {
            Faces faces = new Faces(document, page.getDocumentElement().getTextContent());
            try (PdfBoxRenderer renderer = renderer(page, document, faces)) {
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

    private static void addStyle(Document page, String style) {
        Element element = page.createElement("style");
        element.setTextContent(style);
        page.getElementsByTagName("head").item(0).appendChild(element);
    }

    private double mostFigureMm() {
        return laid.form() == Sheet.Form.ONE_PAGE ? FIGURE_OF_ONE_PAGE_MM : paper.heightMm() - AROUND_A_FIGURE_MM;
    }

    private PdfBoxRenderer renderer(Document page, PDDocument document, Faces faces) {
        PdfRendererBuilder builder = new PdfRendererBuilder();
        RightToLeft order = new RightToLeft();
        builder.usePDDocument(document)
                .withW3cDocument(page, null)
                .useDefaultPageSize(paper.widthMm(), paper.heightMm(), PageSizeUnits.MM)
                .useUnicodeBidiSplitter(RightToLeft::new)
                .useUnicodeBidiReorderer(order)
                .withProducer("Rakeline")
                .useSVGDrawer(new FigureDrawer(laid.figures(), faces, mostFigureMm() * PX_PER_MM));
        for (ExternalResourceControlPriority when : ExternalResourceControlPriority.values()) {
            builder.useExternalResourceAccessControl((address, kind) -> false, when);
        }
        faces.register(builder);
        return builder.buildPdfRenderer();
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
