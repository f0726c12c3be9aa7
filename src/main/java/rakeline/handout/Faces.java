package rakeline.handout;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FSFontUseCase;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PDFontSupplier;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import java.awt.Font;
import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import rakeline.figure.paint.Typefaces;

/** The typefaces of one PDF: the program's own, and for letters that these lack, those of the machine. */
final class Faces {
    private static final String TEXT = "Inter";
    private static final String CODE = "Roboto Mono";
    private static final String OTHER = "Other scripts ";

    private final Face regular;
    private final Face strong;
    private final Face slanted;
    private final PDType0Font code;
    private final Fallbacks others;

    /** @param letters all that the document holds */
    Faces(PDDocument document, String letters) throws IOException {
        regular = Face.of(document, Typefaces.TEXT);
        strong = Face.of(document, Typefaces.STRONG);
        slanted = Face.of(document, Typefaces.SLANTED);
        code = code(document);
        others = Fallbacks.covering(lacking(letters));
    }

    private static PDType0Font code(PDDocument document) throws IOException {
        try (InputStream in = Typefaces.FIGURES.open()) {
            TrueTypeFont outlines = new TTFParser().parse(new RandomAccessReadBuffer(in));
            outlines.setEnableGsub(false);
            return PDType0Font.load(document, outlines, true);
        }
    }

    private Set<Integer> lacking(String letters) throws IOException {
        Set<Integer> lacking = new TreeSet<>();
        for (int letter : letters.codePoints().distinct().toArray()) {
            if (!Character.isISOControl(letter) && !regular.has(letter)) {
                lacking.add(letter);
            }
        }
        return lacking;
    }

    /** Letters that no typeface has. */
    List<String> missing() {
        return others.missing().stream().map(Character::toString).collect(Collectors.toList());
    }

    /** Makes them known under the names that the style uses. */
    void register(PdfRendererBuilder builder) {
        builder.useFont(new PDFontSupplier(regular.font()), TEXT, 400, FontStyle.NORMAL, false);
        builder.useFont(new PDFontSupplier(strong.font()), TEXT, 600, FontStyle.NORMAL, false);
        builder.useFont(new PDFontSupplier(slanted.font()), TEXT, 400, FontStyle.ITALIC, false);
        builder.useFont(new PDFontSupplier(code), CODE, 400, FontStyle.NORMAL, false);
        for (int i = 0; i < others.files().size(); i++) {
            File file = others.files().get(i);
            builder.useFont(file, OTHER + i, 400, FontStyle.NORMAL, true, EnumSet.of(FSFontUseCase.FALLBACK_PRE));
        }
    }

    /** The typeface that a figure's letters are drawn with, where it is one of the program's. */
    Optional<PDFont> of(Font font) {
        return switch (font.getPSName()) {
            case "Inter-Regular" -> Optional.of(regular.font());
            case "Inter-SemiBold" -> Optional.of(strong.font());
            case "RobotoMono-Regular" -> Optional.of(code);
            default -> Optional.empty();
        };
    }

    /** Embeds what the finished pages use. */
    void embed(PDDocument document) throws IOException {
        UsedGlyphs used = UsedGlyphs.in(document);
        for (Face face : List.of(regular, strong, slanted)) {
            face.embed(used.of(face.font()));
        }
    }
}
