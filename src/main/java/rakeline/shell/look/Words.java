package rakeline.shell.look;

import java.awt.Color;
import java.awt.Font;
import java.util.Locale;
import javax.swing.BorderFactory;
import javax.swing.JLabel;
import javax.swing.JTextArea;
import javax.swing.text.DefaultCaret;

/** Words on the window: one line, or a paragraph that wraps and can be selected. */
public final class Words {
    private Words() {}

    public static JLabel line(String text, Font font, Color colour) {
        JLabel label = new JLabel(text);
        label.setFont(font);
        label.setForeground(colour);
        label.putClientProperty("html.disable", true);
        return label;
    }

    /** A paragraph that wraps at its width. */
    public static JTextArea paragraph(String text, Font font, Color colour) {
        JTextArea area = new JTextArea();
        still(area);
        area.setText(text);
        area.setEditable(false);
        area.setLineWrap(true);
        area.setWrapStyleWord(true);
        area.setOpaque(false);
        area.setFont(font);
        area.setForeground(colour);
        area.setBorder(BorderFactory.createEmptyBorder());
        area.setFocusable(false);
        return area;
    }

    /** Words for a tip that wraps them, lines kept. */
    public static String tip(String words) {
        String lines = words.replace("&", "&amp;").replace("<", "&lt;").replace("\n", "<br>");
        return "<html><body style='width: 320px'>" + lines + "</body></html>";
    }

    /** Keeps a change of text from scrolling the page. */
    public static void still(javax.swing.text.JTextComponent component) {
        DefaultCaret caret = new DefaultCaret();
        caret.setUpdatePolicy(DefaultCaret.NEVER_UPDATE);
        component.setCaret(caret);
    }

    /** What stands upon a figure that is not of now, as in {@code Failed: this is the figure of the last good run.} */
    public static String ofBefore(String state) {
        return state.substring(0, 1).toUpperCase(Locale.ROOT) + state.substring(1)
                + ": this is the figure of the last good run.";
    }
}
