package rakeline.handout;

import java.io.IOException;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import org.apache.pdfbox.contentstream.PDFStreamEngine;
import org.apache.pdfbox.contentstream.operator.DrawObject;
import org.apache.pdfbox.contentstream.operator.state.Restore;
import org.apache.pdfbox.contentstream.operator.state.Save;
import org.apache.pdfbox.contentstream.operator.text.BeginText;
import org.apache.pdfbox.contentstream.operator.text.EndText;
import org.apache.pdfbox.contentstream.operator.text.SetFontAndSize;
import org.apache.pdfbox.contentstream.operator.text.ShowText;
import org.apache.pdfbox.contentstream.operator.text.ShowTextAdjusted;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.util.Matrix;
import org.apache.pdfbox.util.Vector;

/** Which codes of each font the pages of a document show, figures included. */
final class UsedGlyphs extends PDFStreamEngine {
    private final Map<COSDictionary, Set<Integer>> codes = new HashMap<>();

    private UsedGlyphs() {
        addOperator(new DrawObject(this));
        addOperator(new Save(this));
        addOperator(new Restore(this));
        addOperator(new BeginText(this));
        addOperator(new EndText(this));
        addOperator(new SetFontAndSize(this));
        addOperator(new ShowText(this));
        addOperator(new ShowTextAdjusted(this));
    }

    static UsedGlyphs in(PDDocument document) throws IOException {
        UsedGlyphs used = new UsedGlyphs();
        for (PDPage page : document.getPages()) {
            used.processPage(page);
        }
        return used;
    }

    Set<Integer> of(PDFont font) {
        return codes.getOrDefault(font.getCOSObject(), Set.of());
    }

    @Override
    protected void showGlyph(Matrix place, PDFont font, int code, Vector displacement) {
        codes.computeIfAbsent(font.getCOSObject(), any -> new HashSet<>()).add(code);
    }
}
