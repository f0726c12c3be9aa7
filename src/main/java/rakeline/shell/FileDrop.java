package rakeline.shell;

import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.UnsupportedFlavorException;
import java.io.File;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import java.util.logging.Level;
import java.util.logging.Logger;
import javax.swing.TransferHandler;

/** Takes a file that is dropped on the window. */
final class FileDrop extends TransferHandler {
    private static final Logger LOG = Logger.getLogger(FileDrop.class.getName());

    private final transient Consumer<Path> open;

    /**
     * @param open takes the first of the files
     */
    FileDrop(Consumer<Path> open) {
        this.open = open;
    }

    @Override
    public boolean canImport(TransferSupport support) {
        return support.isDataFlavorSupported(DataFlavor.javaFileListFlavor);
    }

    @Override
    public boolean importData(TransferSupport support) {
        try {
            Object files = support.getTransferable().getTransferData(DataFlavor.javaFileListFlavor);
            ((List<?>) files)
                    .stream()
                            .findFirst()
                            .map(File.class::cast)
                            .map(File::toPath)
                            .ifPresent(open);
            return true;
        } catch (UnsupportedFlavorException | IOException e) {
            LOG.log(Level.WARNING, "what was dropped could not be read", e);
            return false;
        }
    }
}
