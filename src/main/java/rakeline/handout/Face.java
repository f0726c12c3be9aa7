package rakeline.handout;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.Set;
import org.apache.fontbox.ttf.OTFParser;
import org.apache.fontbox.ttf.OpenTypeFont;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDStream;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import rakeline.figure.paint.Typefaces;

/**
 * A typeface of the program in a PDF. The library that writes it takes outlines in Compact Font Format for those of
 * TrueType; once the document is drawn, they are put where that format belongs, with only the glyphs that are used.
 *
 * <p>Source: ISO 32000-1, 9.7.4 and 9.9, table 126 (from memory).
 */
final class Face {
    private static final String SUBSET = "RAKELN+";

    private final PDDocument document;
    private final OpenTypeFont outlines;
    private final PDType0Font font;

    private Face(PDDocument document, OpenTypeFont outlines) throws IOException {
        this.document = document;
        outlines.setEnableGsub(false); // no ligatures: looking for them takes longer than all else
        this.outlines = outlines;
        font = PDType0Font.load(document, outlines, false);
    }

    static Face of(PDDocument document, Typefaces typeface) throws IOException {
        try (InputStream in = typeface.open()) {
            return new Face(document, new OTFParser().parse(new RandomAccessReadBuffer(in)));
        }
    }

    PDType0Font font() {
        return font;
    }

    boolean has(int codePoint) throws IOException {
        return outlines.getUnicodeCmapLookup().getGlyphId(codePoint) != 0;
    }

    /** Embeds what was used. */
    void embed(Set<Integer> glyphs) throws IOException {
        byte[] program = outlines.getTableBytes(outlines.getTableMap().get("CFF "));
        byte[] kept = CffGlyphs.keeping(glyphs, program);
        PDStream stream = new PDStream(document, new ByteArrayInputStream(kept), COSName.FLATE_DECODE);
        stream.getCOSObject().setName(COSName.SUBTYPE, "CIDFontType0C");
        COSDictionary whole = font.getCOSObject();
        COSDictionary part =
                (COSDictionary) ((COSArray) whole.getDictionaryObject(COSName.DESCENDANT_FONTS)).getObject(0);
        COSDictionary descriptor = part.getCOSDictionary(COSName.FONT_DESC);
        descriptor.removeItem(COSName.FONT_FILE2);
        descriptor.setItem(COSName.FONT_FILE3, stream);
        part.removeItem(COSName.CID_TO_GID_MAP);
        part.setItem(COSName.SUBTYPE, COSName.CID_FONT_TYPE0);
        name(whole, part, descriptor);
    }

    private void name(COSDictionary whole, COSDictionary part, COSDictionary descriptor) {
        String name = SUBSET + font.getName();
        descriptor.setName(COSName.FONT_NAME, name);
        part.setName(COSName.BASE_FONT, name);
        whole.setName(COSName.BASE_FONT, name + "-Identity-H");
    }
}
