package rakeline.shell.rack;

import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.StringSelection;
import java.awt.datatransfer.Transferable;
import java.awt.datatransfer.UnsupportedFlavorException;
import java.io.File;
import java.io.IOException;
import java.util.List;
import java.util.logging.Level;
import java.util.logging.Logger;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import javax.swing.JComponent;
import javax.swing.TransferHandler;

/** Copying from the rack as a spreadsheet takes it, pasting from one, and files dropped on it. */
final class RackTransfer extends TransferHandler {
    private static final Logger LOG = Logger.getLogger(RackTransfer.class.getName());

    private final transient RackHand hand;
    private final RackTable table;

    RackTransfer(RackHand hand, RackTable table) {
        this.hand = hand;
        this.table = table;
    }

    @Override
    public int getSourceActions(JComponent component) {
        return COPY;
    }

    /** The selected bikes with their headings, fields parted by tabs. */
    @Override
    protected Transferable createTransferable(JComponent component) {
        String head = IntStream.range(0, table.getColumnCount())
                .mapToObj(table::getColumnName)
                .collect(Collectors.joining("\t", "Name\t", "\n"));
        String lines =
                IntStream.of(table.getSelectedRows()).mapToObj(this::line).collect(Collectors.joining());
        return new StringSelection(head + lines);
    }

    private String line(int row) {
        String name = ((RackGrid) table.getModel()).row(row).name();
        return IntStream.range(0, table.getColumnCount())
                .mapToObj(column -> ((RackCell) table.getValueAt(row, column)).text())
                .collect(Collectors.joining("\t", name + "\t", "\n"));
    }

    @Override
    public boolean canImport(TransferSupport support) {
        return support.isDataFlavorSupported(DataFlavor.stringFlavor)
                || support.isDataFlavorSupported(DataFlavor.javaFileListFlavor);
    }

    @Override
    @SuppressWarnings("unchecked") // a list of files is what the flavour says
    public boolean importData(TransferSupport support) {
        try {
            if (support.isDataFlavorSupported(DataFlavor.javaFileListFlavor)) {
                List<File> files =
                        (List<File>) support.getTransferable().getTransferData(DataFlavor.javaFileListFlavor);
                hand.take(files.stream().map(File::toPath).toList());
            } else {
                hand.paste((String) support.getTransferable().getTransferData(DataFlavor.stringFlavor));
            }
            return true;
        } catch (UnsupportedFlavorException | IOException gone) {
            LOG.log(Level.INFO, "what was to be pasted is gone", gone);
            return false;
        }
    }
}
