package rakeline.shell;

import java.awt.Component;
import java.io.File;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Supplier;
import javax.swing.JFileChooser;
import javax.swing.JOptionPane;
import javax.swing.filechooser.FileNameExtensionFilter;
import rakeline.worksheet.WorksheetFile;

/** What the window asks before it goes on. */
final class Questions {
    /** What becomes of changes that are not saved. */
    enum Unsaved {
        SAVE,
        DO_NOT_SAVE,
        GO_BACK
    }

    private final Supplier<Component> over;

    /**
     * @param over the component that the questions stand over
     */
    Questions(Supplier<Component> over) {
        this.over = over;
    }

    Unsaved unsaved(String title) {
        Object[] answers = {"Save", "Do not save", "Go back"};
        int answer = JOptionPane.showOptionDialog(
                over.get(),
                "“" + title + "” has changes that are not saved.",
                "Unsaved changes",
                JOptionPane.DEFAULT_OPTION,
                JOptionPane.PLAIN_MESSAGE,
                null,
                answers,
                answers[0]);
        return switch (answer) {
            case 0 -> Unsaved.SAVE;
            case 1 -> Unsaved.DO_NOT_SAVE;
            default -> Unsaved.GO_BACK;
        };
    }

    boolean mayReplace(Path file) {
        Object[] answers = {"Replace it", "Go back"};
        int answer = JOptionPane.showOptionDialog(
                over.get(),
                file.getFileName() + " is there already.",
                "Save as",
                JOptionPane.DEFAULT_OPTION,
                JOptionPane.PLAIN_MESSAGE,
                null,
                answers,
                answers[1]);
        return answer == 0;
    }

    Optional<String> title(String present) {
        return Optional.ofNullable((String) JOptionPane.showInputDialog(
                        over.get(), "Title of the page", "Title", JOptionPane.PLAIN_MESSAGE, null, null, present))
                .map(String::strip)
                .filter(title -> !title.isEmpty());
    }

    Optional<Path> fileToOpen(Path folder) {
        JFileChooser chooser = chooser(folder);
        return chooser.showOpenDialog(over.get()) == JFileChooser.APPROVE_OPTION
                ? Optional.of(chooser.getSelectedFile().toPath())
                : Optional.empty();
    }

    Optional<Path> fileToSave(Path proposed) {
        JFileChooser chooser = chooser(proposed.getParent());
        chooser.setSelectedFile(proposed.toFile());
        return chooser.showSaveDialog(over.get()) == JFileChooser.APPROVE_OPTION
                ? Optional.of(withExtension(chooser.getSelectedFile()))
                : Optional.empty();
    }

    private static JFileChooser chooser(Path folder) {
        JFileChooser chooser = new JFileChooser(folder.toFile());
        chooser.setFileFilter(new FileNameExtensionFilter("Worksheets (*" + WorksheetFile.EXTENSION + ")", "rakeline"));
        return chooser;
    }

    private static Path withExtension(File file) {
        String name = file.getName();
        return name.endsWith(WorksheetFile.EXTENSION)
                ? file.toPath()
                : file.toPath().resolveSibling(name + WorksheetFile.EXTENSION);
    }
}
