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
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;
import org.w3c.dom.Document;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import rakeline.figure.PlainText;

/** Makes the PDF of a laid out sheet. Nothing is fetched for it. */
final class PdfWriter {
    private static final double PX_PER_MM = 96 / 25.4;
    private static final double AROUND_A_FIGURE_MM = 44;

    private PdfWriter() {}

    static Pdf write(Laid laid, Paper paper) {
        XRLog.setLoggingEnabled(false);
        Document page = parsed(laid.xhtml());
        Outline.add(page);
        try (PDDocument document = new PDDocument()) {
            Faces faces = new Faces(document, page.getDocumentElement().getTextContent());
            try (PdfBoxRenderer renderer = renderer(laid, page, document, faces, paper)) {
                renderer.layout();
                renderer.createPDFWithoutClosing();
                return finished(laid, document, faces);
            }
        } catch (IOException e) {
            throw new UncheckedIOException("a document in memory can always be written", e);
        }
    }

    private static PdfBoxRenderer renderer(Laid laid, Document page, PDDocument document, Faces faces, Paper paper) {
        PdfRendererBuilder builder = new PdfRendererBuilder();
        RightToLeft order = new RightToLeft();
        builder.usePDDocument(document)
                .withW3cDocument(page, null)
                .useDefaultPageSize(paper.widthMm(), paper.heightMm(), PageSizeUnits.MM)
                .useUnicodeBidiSplitter(RightToLeft::new)
                .useUnicodeBidiReorderer(order)
                .withProducer("Rakeline")
                .useSVGDrawer(
                        new FigureDrawer(laid.figures(), faces, (paper.heightMm() - AROUND_A_FIGURE_MM) * PX_PER_MM));
        for (ExternalResourceControlPriority when : ExternalResourceControlPriority.values()) {
            builder.useExternalResourceAccessControl((address, kind) -> false, when);
        }
        faces.register(builder);
        return builder.buildPdfRenderer();
    }

    private static Pdf finished(Laid laid, PDDocument document, Faces faces) throws IOException {
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
