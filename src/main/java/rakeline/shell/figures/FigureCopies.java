package rakeline.shell.figures;

import java.awt.Dimension;
import java.awt.datatransfer.Transferable;
import java.io.File;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Locale;
import java.util.concurrent.ExecutionException;
import javax.swing.JDialog;
import javax.swing.JFileChooser;
import javax.swing.JOptionPane;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import javax.swing.KeyStroke;
import javax.swing.SwingUtilities;
import javax.swing.SwingWorker;
import rakeline.desk.SafeFile;
import rakeline.figure.Csv;
import rakeline.figure.Figure;
import rakeline.figure.HtmlTable;
import rakeline.figure.TextTable;
import rakeline.figure.Tsv;
import rakeline.figure.paint.Palette;
import rakeline.figure.paint.Png;
import rakeline.figure.paint.Svg;
import rakeline.quantity.Refusal;
import rakeline.shell.look.Ask;
import rakeline.shell.look.Look;
import rakeline.shell.look.Words;

/** A figure in other forms: on the clipboard, in a file, and as the table that it is made of. Each says what it did. */
public final class FigureCopies {
    private static final int WIDTH = 960;
    private static final double FINE = 2;

    private final FigureView view;
    private final Look look;

    FigureCopies(FigureView view, Look look) {
        this.view = view;
        this.look = look;
    }

    private Figure figure() {
        return view.figure().orElseThrow();
    }

    /** As a picture, as it is looked at. */
    public String picture() {
        return put(new Picture(view.picture()), "figure copied as a picture");
    }

    /** As vectors, in print's colours. */
    public String vectors() {
        return put(Clip.ofSvg(Svg.write(figure(), WIDTH, Palette.LIGHT)), "figure copied as SVG");
    }

    /** Its numbers, for spreadsheets and word processors. */
    public String table() {
        return put(Clip.ofTable(HtmlTable.write(figure()), Tsv.write(figure())), "numbers copied as a table");
    }

    private String put(Transferable clip, String said) {
        view.getToolkit().getSystemClipboard().setContents(clip, null);
        return said;
    }

    /** The table that it is made of, as text that can be read out, selected and copied. */
    public String show() {
        JTextArea text = new JTextArea(TextTable.write(figure()));
        text.setName("figure table");
        text.setFont(look.code());
        text.setEditable(false);
        text.setCaretPosition(0);
        text.getAccessibleContext().setAccessibleName("Table of " + figure().title());
        Words.still(text);
        JDialog dialog = new JDialog(SwingUtilities.getWindowAncestor(view), figure().title());
        JScrollPane scroll = new JScrollPane(text);
        scroll.setPreferredSize(new Dimension(look.px(760), look.px(480)));
        dialog.setContentPane(scroll);
        dialog.getRootPane()
                .registerKeyboardAction(
                        event -> dialog.dispose(),
                        KeyStroke.getKeyStroke("ESCAPE"),
                        javax.swing.JComponent.WHEN_IN_FOCUSED_WINDOW);
        dialog.pack();
        dialog.setLocationRelativeTo(view);
        dialog.setVisible(true);
        return "table shown";
    }

    /** Into a file that the person names; its ending says the form: .svg, .png or .csv. */
    public String write() {
        JFileChooser chooser = new JFileChooser();
        chooser.setDialogTitle("SVG, PNG, or its numbers as CSV, by the ending of the name");
        chooser.setSelectedFile(new File("figure.svg"));
        boolean named = chooser.showSaveDialog(view) == JFileChooser.APPROVE_OPTION;
        if (!named || (chooser.getSelectedFile().exists() && !mayReplace(chooser.getSelectedFile()))) {
            return "nothing written";
        }
        Path file = chooser.getSelectedFile().toPath();
        Figure figure = figure();
        new Writing(figure, file).execute();
        return "writing the figure to " + file.getFileName();
    }

    /** Writes off the event thread, and says why where it cannot. */
    private final class Writing extends SwingWorker<Path, Void> {
        private final transient Figure figure;
        private final transient Path file;

        Writing(Figure figure, Path file) {
            this.figure = figure;
            this.file = file;
        }

        @Override
        protected Path doInBackground() {
            SafeFile.onDisk().write(file, bytes(figure, file));
            return file;
        }

        @Override
        protected void done() {
            try {
                get();
            } catch (ExecutionException refused) {
                say(refused.getCause());
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            }
        }
    }

    private boolean mayReplace(File file) {
        return Ask.among(view, file.getName() + " is there already.", "Save the figure", 1, "Replace", "Cancel") == 0;
    }

    /**
     * The file of a figure.
     *
     * @throws Refusal where the ending is none of those that can be written
     */
    static byte[] bytes(Figure figure, Path file) {
        String name = String.valueOf(file.getFileName()).toLowerCase(Locale.ROOT);
        if (name.endsWith(".svg")) {
            return Svg.bytes(figure, WIDTH, Palette.LIGHT);
        }
        if (name.endsWith(".png")) {
            return Png.write(figure, WIDTH, FINE, Palette.LIGHT);
        }
        if (name.endsWith(".csv")) {
            return Csv.write(figure).getBytes(StandardCharsets.UTF_8);
        }
        throw new Refusal(file.getFileName() + " says no form; accepted are names that end in .svg, .png or .csv.");
    }

    private void say(Throwable refused) {
        JOptionPane.showMessageDialog(view, refused.getMessage(), "Save the figure", JOptionPane.PLAIN_MESSAGE);
    }
}
