package rakeline.handout;

import com.openhtmltopdf.css.sheet.FontFaceRule;
import com.openhtmltopdf.css.style.CssContext;
import com.openhtmltopdf.extend.OutputDevice;
import com.openhtmltopdf.extend.SVGDrawer;
import com.openhtmltopdf.layout.SharedContext;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.render.Box;
import com.openhtmltopdf.render.RenderingContext;
import de.rototor.pdfbox.graphics2d.PdfBoxGraphics2D;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.io.File;
import java.util.List;
import org.w3c.dom.Element;
import rakeline.figure.Figure;
import rakeline.figure.paint.FigurePainter;
import rakeline.figure.paint.Palette;

/**
 * Draws a figure where its {@code svg} element stands, with the painter that drew that element too, so that its lines
 * are vectors and its words are words.
 */
final class FigureDrawer implements SVGDrawer {
    /** The least part of their size that letters keep. */
    private static final double LEAST_SCALE = 0.85;

    private static final double STEP = 1.06;

    private final List<Figure> figures;
    private final FigureLetters letters;
    private final double scale;
    private final double usualHeight;
    private final double mostHeight;

    /**
     * @param figures in the order of their elements, whose ids end in their number
     * @param scale 1 for text of 12 px
     * @param usualHeight of the tallest figure whose letters stay near their size in it, in CSS px
     * @param mostHeight what a page has room for, in CSS px
     */
    FigureDrawer(List<Figure> figures, Faces faces, double scale, double usualHeight, double mostHeight) {
        this.scale = scale;
        this.figures = figures;
        this.letters = new FigureLetters(faces);
        this.usualHeight = usualHeight;
        this.mostHeight = mostHeight;
    }

    @Override
    public SVGImage buildSVGImage(
            Element svg, Box box, CssContext css, double mostWidth, double mostCssHeight, double dotsPerPx) {
        int number = Integer.parseInt(svg.getAttribute("id").replaceAll("\\D", ""));
        FigurePainter painter = FigurePainter.of(figures.get(number - 1), Palette.LIGHT, scale);
        double width = box.getContainingBlock() == null
                ? Layout.FIGURE_WIDTH
                : box.getContainingBlock().getContentWidth() / dotsPerPx;
        return new Drawn(painter, width, height(painter, width), dotsPerPx);
    }

    /** Higher than usual where its letters would else be too small to read. */
    private double height(FigurePainter painter, double width) {
        double wanted = painter.preferredSize(width).height;
        double height = Math.min(wanted, usualHeight);
        while (height < Math.min(wanted, mostHeight) && painter.scaleIn(width, height) < LEAST_SCALE * scale) {
            height = Math.min(Math.min(wanted, mostHeight), STEP * height);
        }
        return height;
    }

    @Override
    public void importFontFaceRules(List<FontFaceRule> rules, SharedContext context) {
        // the document's style declares none
    }

    @Override
    public void addFontFile(File file, String family, Integer weight, FontStyle style) {
        // figures are drawn with their own typefaces
    }

    @Override
    public void close() {
        // nothing is held
    }

    /** One figure, sizes in CSS px. */
    private final class Drawn implements SVGImage {
        private final FigurePainter painter;
        private final double width;
        private final double height;
        private final double dotsPerPx;

        Drawn(FigurePainter painter, double width, double height, double dotsPerPx) {
            this.painter = painter;
            this.width = width;
            this.height = height;
            this.dotsPerPx = dotsPerPx;
        }

        @Override
        public int getIntrinsicWidth() {
            return (int) Math.round(width * dotsPerPx);
        }

        @Override
        public int getIntrinsicHeight() {
            return (int) Math.round(height * dotsPerPx);
        }

        @Override
        public void drawSVG(OutputDevice device, RenderingContext context, double x, double y) {
            device.drawWithGraphics((float) x, (float) y, (float) width, (float) height, this::draw);
        }

        private void draw(Graphics2D pen) {
            if (pen instanceof PdfBoxGraphics2D inPdf) {
                inPdf.setFontTextDrawer(letters);
            }
            painter.draw(pen, new Rectangle2D.Double(0, 0, width, height));
        }
    }
}
