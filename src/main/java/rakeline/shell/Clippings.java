package rakeline.shell;

import java.awt.Toolkit;
import java.awt.datatransfer.Clipboard;
import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.Transferable;
import java.awt.datatransfer.UnsupportedFlavorException;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.stream.Collectors;
import rakeline.quantity.Refusal;
import rakeline.worksheet.Row;
import rakeline.worksheet.Worksheet;
import rakeline.worksheet.WorksheetFile;

/**
 * Rows on the clipboard: for a page as rows, for other programs as their text.
 *
 * @param rows in page order
 */
record Clippings(List<Row> rows) implements Transferable {
    private static final DataFlavor ROWS =
            new DataFlavor("application/x-rakeline-rows;class=java.io.InputStream", "Rows of a worksheet");

    Clippings {
        rows = List.copyOf(rows);
    }

    void copy() {
        clipboard().setContents(this, null);
    }

    /**
     * What the clipboard holds, as rows: other text is one snippet, nothing is no row.
     *
     * @throws Refusal where it cannot be read
     */
    static List<Row> onClipboard() {
        Transferable held = clipboard().getContents(null);
        try {
            if (held != null && held.isDataFlavorSupported(ROWS)) {
                try (InputStream in = (InputStream) held.getTransferData(ROWS)) {
                    return WorksheetFile.read(in.readAllBytes(), "the clipboard")
                            .rows();
                }
            }
            return held != null && held.isDataFlavorSupported(DataFlavor.stringFlavor)
                    ? List.of(Row.Snippet.of("r1", (String) held.getTransferData(DataFlavor.stringFlavor)))
                    : List.of();
        } catch (IOException | UnsupportedFlavorException e) {
            throw new Refusal("the clipboard cannot be read: " + e.getMessage() + ".", e);
        }
    }

    private static Clipboard clipboard() {
        return Toolkit.getDefaultToolkit().getSystemClipboard();
    }

    @Override
    public DataFlavor[] getTransferDataFlavors() {
        return new DataFlavor[] {ROWS, DataFlavor.stringFlavor};
    }

    @Override
    public boolean isDataFlavorSupported(DataFlavor flavor) {
        return flavor.equals(ROWS) || flavor.equals(DataFlavor.stringFlavor);
    }

    @Override
    public Object getTransferData(DataFlavor flavor) throws UnsupportedFlavorException {
        if (flavor.equals(ROWS)) {
            byte[] bytes = WorksheetFile.write(Worksheet.empty("Rows").withRows(rows));
            return new ByteArrayInputStream(bytes);
        }
        if (flavor.equals(DataFlavor.stringFlavor)) {
            return rows.stream().map(Row::text).collect(Collectors.joining("\n\n"));
        }
        throw new UnsupportedFlavorException(flavor);
    }
}
