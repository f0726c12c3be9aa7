package rakeline.shell;

import java.awt.Component;
import java.util.List;
import javax.swing.JDialog;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.SwingUtilities;
import net.miginfocom.swing.MigLayout;
import rakeline.shell.look.Fit;
import rakeline.shell.look.Look;
import rakeline.shell.look.Words;

/** The list of keys. */
final class KeyList {
    private static final List<List<String>> ON_CHARTS = List.of(
            List.of("Move the crosshair by a step, by ten", "Left, Right, Page Up, Page Down"),
            List.of("Zoom in or out", "+, −, or Ctrl and the wheel, or drag a stretch"),
            List.of("Take the next handle; move it; let it go", "H; arrow keys; Escape"),
            List.of("Show all of it", "Escape, or double-click"),
            List.of("Copy, save, or show as a table", "Shift+F10, or the menu button of the mouse"));
    private static final List<List<String>> ON_RACK = List.of(
            List.of("Replace a number; edit it", "any digit; F2 or double-click"),
            List.of("Accept and go down, or to the right", "Enter, Tab"),
            List.of("Undo the typing", "Escape"),
            List.of("Leave the table", "Ctrl+Tab"));
    private static final List<List<String>> IN_TEXT = List.of(
            List.of("Go to the next part, to the previous part", "Ctrl+Tab, Ctrl+Shift+Tab"),
            List.of("Suggest completions", "Ctrl+Space"),
            List.of("Indent or outdent lines", "Tab, Shift+Tab"),
            List.of("Edit a note", "Double-click it"));
    private static final List<List<String>> ON_DIALS = List.of(
            List.of("One step up or down", "Up, Down in the field; Left, Right on the slider"),
            List.of("Return to the bike's own value", "Double-click the slider or the name"));

    private static final List<List<String>> IN_SHOW = List.of(
            List.of("Go to the next figure or part, to the previous one", "Right, Left; Page Down, Page Up; Space"),
            List.of("Go to the first figure, to the last", "Home, End"),
            List.of("Move the selected dial; go to the next dial", "Up, Down; Tab"),
            List.of("Change the drawing beside the figure", "D"),
            List.of("Show or hide the ring around the pointer", "P"),
            List.of("Open or close an answer", "A"),
            List.of("Cautions in full, or in a word", "C"),
            List.of("High contrast on or off", "H"),
            List.of("These keys", "F1"),
            List.of("Close Show", "Escape"));

    private KeyList() {}

    /** All keys of the window. */
    static void show(Component over, List<Deed> deeds, Look look) {
        show(over, lines(deeds, look), look);
    }

    /** The keys that answer while a figure fills the screen. */
    static void inShow(Component over, Look look) {
        JPanel lines = sheet(look);
        group(lines, "Show", IN_SHOW, look);
        show(over, lines, look);
    }

    private static void show(Component over, JPanel lines, Look look) {
        JDialog dialog = new JDialog(SwingUtilities.getWindowAncestor(over), "Keys");
        lines.setFocusable(true);
        JScrollPane scroll = new JScrollPane(lines);
        scroll.setBorder(null);
        scroll.getVerticalScrollBar().setUnitIncrement(look.space(8));
        dialog.setContentPane(scroll);
        dialog.getRootPane()
                .registerKeyboardAction(
                        event -> dialog.dispose(),
                        javax.swing.KeyStroke.getKeyStroke("ESCAPE"),
                        javax.swing.JComponent.WHEN_IN_FOCUSED_WINDOW);
        dialog.pack();
        Fit.over(over, dialog, dialog.getWidth() + look.px(20), Math.min(dialog.getHeight(), look.px(640)));
        dialog.setVisible(true);
        lines.requestFocusInWindow();
    }

    private static JPanel sheet(Look look) {
        JPanel lines = new JPanel(new MigLayout(
                "insets " + look.space(5) + ", wrap 2, gapy " + look.space(1), "[]" + look.space(10) + "[]"));
        lines.setBackground(look.paper());
        return lines;
    }

    private static JPanel lines(List<Deed> deeds, Look look) {
        JPanel lines = sheet(look);
        deeds.stream().map(Deed::menu).distinct().forEach(menu -> {
            heading(lines, menu, look);
            deeds.stream()
                    .filter(deed -> deed.menu().equals(menu) && deed.key().isPresent())
                    .forEach(deed ->
                            line(lines, deed.words(), Keys.words(deed.key().get()), look));
        });
        group(lines, "In a row's text", IN_TEXT, look);
        group(lines, "Selected figure", ON_CHARTS, look);
        group(lines, "Rack", ON_RACK, look);
        group(lines, "Dial", ON_DIALS, look);
        group(lines, "Show", IN_SHOW, look);
        return lines;
    }

    private static void group(JPanel lines, String name, List<List<String>> pairs, Look look) {
        heading(lines, name, look);
        pairs.forEach(pair -> line(lines, pair.get(0), pair.get(1), look));
    }

    private static void heading(JPanel lines, String words, Look look) {
        lines.add(Words.line(words, look.softStrong(), look.soft()), "span 2, gaptop " + look.space(2));
    }

    private static void line(JPanel lines, String words, String key, Look look) {
        lines.add(Words.line(words, look.body(), look.ink()));
        lines.add(Words.line(key, look.strong(), look.ink()));
    }
}
