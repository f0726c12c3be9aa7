package rakeline.shell.ledger;

import java.util.List;
import java.util.Map;
import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import rakeline.shell.look.Look;
import rakeline.shell.look.Words;

/** What a page that holds nothing yet says of itself: that it can be typed in, and by which keys more is done. */
final class Beginning extends JPanel {
    private static final String WORDS = "Type Java in the row above, as in  bike(\"demo-data/bikes/road-m.bike.json\")";
    private static final String NO_ROW = "Click here or type, and a row begins.";

    private final transient Look look;
    private final JLabel first;

    Beginning(Look look) {
        super(new MigLayout("insets 0, wrap 2, gapy " + look.space(1), "[]" + look.space(6) + "[]"));
        this.look = look;
        first = Words.line(NO_ROW, look.softText(), look.soft());
        setOpaque(false);
        setName("beginning");
        offer(List.of());
    }

    /** Lists what can be done, with its keys. */
    void offer(List<Map.Entry<String, String>> hints) {
        removeAll();
        add(first, "span 2, gapbottom " + look.space(2));
        hints.forEach(hint -> {
            add(Words.line(hint.getKey(), look.softText(), look.soft()));
            add(Words.line(hint.getValue(), look.softStrong(), look.soft()));
        });
    }

    /** Says where typing goes. */
    void say(boolean hasRow) {
        first.setText(hasRow ? WORDS : NO_ROW);
    }
}
