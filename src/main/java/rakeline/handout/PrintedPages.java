package rakeline.handout;

import java.awt.image.BufferedImage;
import java.awt.print.Pageable;
import java.io.IOException;
import java.io.UncheckedIOException;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.printing.PDFPageable;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;

/** A PDF's pages to look at and to print. Used by one thread at a time. */
public final class PrintedPages implements AutoCloseable {
    private static final float POINTS_PER_INCH = 72;

    private final PDDocument document;

    private PrintedPages(PDDocument document) {
        this.document = document;
    }

    public static PrintedPages of(Pdf pdf) {
        try {
            return new PrintedPages(Loader.loadPDF(pdf.bytes()));
        } catch (IOException e) {
            throw new UncheckedIOException("what was written here can be read here", e);
        }
    }

    public int count() {
        return document.getNumberOfPages();
    }

    /**
     * A page as a picture.
     *
     * @param page from 0
     * @param dotsPerInch how finely
     */
    public BufferedImage picture(int page, double dotsPerInch) {
        try {
            return new PDFRenderer(document).renderImage(page, (float) dotsPerInch / POINTS_PER_INCH, ImageType.RGB);
        } catch (IOException e) {
            throw new UncheckedIOException("a page in memory can be drawn", e);
        }
    }

    /** What a printer takes. */
    public Pageable pageable() {
        return new PDFPageable(document);
    }

    @Override
    public void close() {
        try {
            document.close();
        } catch (IOException e) {
            throw new UncheckedIOException("a document in memory can be let go", e);
        }
    }
}
