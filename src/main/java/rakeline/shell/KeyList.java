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
            List.of("Look closer, or less close", "+, −, or Ctrl and the wheel, or drag a stretch"),
            List.of("Take the next handle; move it; let it go", "H; arrow keys; Escape"),
            List.of("Look at the whole", "Escape, or double click"),
            List.of("Copy, write, or show as a table", "Shift+F10, or the menu button of the mouse"));
    private static final List<List<String>> ON_RACK = List.of(
            List.of("Type over a number; go on with it", "any digit; F2 or double click"),
            List.of("Settle it and go down, or to the right", "Enter, Tab"),
            List.of("Take back what is typed", "Escape"),
            List.of("On to what stands beside the table", "Ctrl+Tab"));
    private static final List<List<String>> IN_TEXT = List.of(
            List.of("On to the next part, back to the one before", "Ctrl+Tab, Ctrl+Shift+Tab"),
            List.of("Offer the words that fit", "Ctrl+Space"),
            List.of("Indent lines, or less", "Tab, Shift+Tab"),
            List.of("Edit a note", "Double click on it"));
    private static final List<List<String>> ON_DIALS = List.of(
            List.of("One step up or down", "Up, Down in the field; Left, Right on the slider"),
            List.of("Back to the bike's own value", "Double click on the slider or the name"));

    private static final List<List<String>> IN_SHOW = List.of(
            List.of("To the next figure or part, to the one before", "Right, Left; Page Down, Page Up; Space"),
            List.of("To the first figure, to the last", "Home, End"),
            List.of("Move the dial that has the keys; to the next dial", "Up, Down; Tab"),
            List.of("Another drawing beside the figure, or none", "D"),
            List.of("The ring around the pointer, or none", "P"),
            List.of("High contrast and back", "H"),
            List.of("These keys", "F1"),
            List.of("Give the screen back", "Escape"));

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
        group(lines, "Figure with the focus", ON_CHARTS, look);
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
