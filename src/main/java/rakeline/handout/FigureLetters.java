package rakeline.handout;

import de.rototor.pdfbox.graphics2d.PdfBoxGraphics2DFontTextDrawer;
import java.awt.Font;
import org.apache.pdfbox.pdmodel.font.PDFont;

/** Writes a figure's words as text; words in a typeface that is not the program's are drawn as outlines. */
final class FigureLetters extends PdfBoxGraphics2DFontTextDrawer {
    private final Faces faces;

    FigureLetters(Faces faces) {
        this.faces = faces;
    }

    @Override
    protected PDFont mapFont(Font font, IFontTextDrawerEnv environment) {
        return faces.of(font).orElse(null);
    }

    @Override
    protected boolean hasDynamicFontMapping() {
        return true;
    }
}
