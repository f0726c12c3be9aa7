package rakeline.shell.ledger;

import java.awt.Container;
import java.awt.datatransfer.Clipboard;
import java.awt.datatransfer.DataFlavor;
import java.awt.event.InputEvent;
import java.util.Optional;
import java.util.stream.Stream;
import javax.swing.JComponent;
import javax.swing.TransferHandler;
import javax.swing.text.JTextComponent;

/** Leaves files that are dropped on a text to what the text stands in; all else is the text's own. */
final class TextDrop extends TransferHandler {
    private final transient TransferHandler own;

    private TextDrop(TransferHandler own) {
        this.own = own;
    }

    static void install(JTextComponent text) {
        text.setTransferHandler(new TextDrop(text.getTransferHandler()));
    }

    private static boolean isFile(TransferSupport support) {
        return support.isDataFlavorSupported(DataFlavor.javaFileListFlavor);
    }

    private static Optional<TransferHandler> around(TransferSupport support) {
        return Stream.iterate(support.getComponent().getParent(), each -> each != null, Container::getParent)
                .filter(JComponent.class::isInstance)
                .map(each -> ((JComponent) each).getTransferHandler())
                .filter(handler -> handler != null)
                .findFirst();
    }

    @Override
    public boolean canImport(TransferSupport support) {
        return isFile(support)
                ? around(support).filter(handler -> handler.canImport(support)).isPresent()
                : own.canImport(support);
    }

    @Override
    public boolean importData(TransferSupport support) {
        return isFile(support)
                ? around(support).filter(handler -> handler.importData(support)).isPresent()
                : own.importData(support);
    }

    @Override
    public int getSourceActions(JComponent text) {
        return own.getSourceActions(text);
    }

    @Override
    public void exportAsDrag(JComponent text, InputEvent event, int action) {
        own.exportAsDrag(text, event, action);
    }

    @Override
    public void exportToClipboard(JComponent text, Clipboard clipboard, int action) {
        own.exportToClipboard(text, clipboard, action);
    }
}
