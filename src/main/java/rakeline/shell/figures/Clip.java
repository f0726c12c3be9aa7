package rakeline.shell.figures;

import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.Transferable;
import java.awt.datatransfer.UnsupportedFlavorException;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Supplier;

/** Something on the clipboard in several forms; whoever pastes takes the one that it knows. */
final class Clip implements Transferable {
    private static final DataFlavor SVG = new DataFlavor("image/svg+xml; class=java.io.InputStream", "SVG");

    private final Map<DataFlavor, Supplier<Object>> forms;

    private Clip(Map<DataFlavor, Supplier<Object>> forms) {
        this.forms = forms;
    }

    /** Vectors: as an SVG image, and as the text that it is. */
    static Clip ofSvg(String svg) {
        Map<DataFlavor, Supplier<Object>> forms = new LinkedHashMap<>();
        forms.put(SVG, () -> new ByteArrayInputStream(svg.getBytes(StandardCharsets.UTF_8)));
        forms.put(DataFlavor.stringFlavor, () -> svg);
        return new Clip(forms);
    }

    /** A table: for word processors, and parted by tabs for spreadsheets. */
    static Clip ofTable(String html, String tsv) {
        Map<DataFlavor, Supplier<Object>> forms = new LinkedHashMap<>();
        forms.put(DataFlavor.allHtmlFlavor, () -> html);
        forms.put(DataFlavor.stringFlavor, () -> tsv);
        return new Clip(forms);
    }

    @Override
    public DataFlavor[] getTransferDataFlavors() {
        return forms.keySet().toArray(DataFlavor[]::new);
    }

    @Override
    public boolean isDataFlavorSupported(DataFlavor flavor) {
        return forms.containsKey(flavor);
    }

    @Override
    public Object getTransferData(DataFlavor flavor) throws UnsupportedFlavorException {
        if (!forms.containsKey(flavor)) {
            throw new UnsupportedFlavorException(flavor);
        }
        return forms.get(flavor).get();
    }
}
