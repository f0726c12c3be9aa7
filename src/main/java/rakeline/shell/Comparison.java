package rakeline.shell;

import java.awt.Dimension;
import java.util.List;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import javax.swing.ScrollPaneConstants;
import net.miginfocom.swing.MigLayout;
import rakeline.desk.Difference;
import rakeline.shell.look.Look;
import rakeline.shell.look.Pile;
import rakeline.shell.look.Words;

/** Two versions of a page side by side, as far as they differ. */
final class Comparison extends JScrollPane {
    private static final int MOST_SHOWN = 200;

    private final transient Look look;

    /**
     * @param before what the left side is called
     * @param after what the right side is called
     */
    Comparison(Look look, String before, String after, List<Difference> differences) {
        super(ScrollPaneConstants.VERTICAL_SCROLLBAR_AS_NEEDED, ScrollPaneConstants.HORIZONTAL_SCROLLBAR_NEVER);
        this.look = look;
        Pile pile = new Pile(look.space(2));
        pile.setOpaque(true);
        pile.setBackground(look.paper());
        pile.setBorder(look.room(2, 3, 2, 3));
        pile.add(sides(
                Words.line(before, look.softText(), look.soft()), Words.line(after, look.softText(), look.soft())));
        differences.stream().limit(MOST_SHOWN).forEach(difference -> add(pile, difference));
        rest(pile, differences.size());
        setViewportView(pile);
        setName("comparison");
        getVerticalScrollBar().setUnitIncrement(look.space(8));
        setPreferredSize(new Dimension(look.px(680), look.px(300)));
    }

    private void rest(Pile pile, int all) {
        if (all == 0) {
            pile.add(Words.line("Nothing differs.", look.body(), look.ink()));
        } else if (all > MOST_SHOWN) {
            pile.add(Words.line("and " + (all - MOST_SHOWN) + " more", look.body(), look.ink()));
        }
    }

    private void add(Pile pile, Difference difference) {
        JLabel words = Words.line(difference.words(), look.strong(), look.ink());
        pile.add(words);
        pile.add(sides(
                text(difference.before(), "before: " + difference.words()),
                text(difference.after(), "after: " + difference.words())));
    }

    private JComponent text(String text, String called) {
        JTextArea area =
                Words.paragraph(text.isEmpty() ? "—" : text, look.code(), text.isEmpty() ? look.soft() : look.ink());
        area.setOpaque(true);
        area.setBackground(look.card());
        area.setBorder(look.room(1, 2, 1, 2));
        area.getAccessibleContext().setAccessibleName(called);
        return area;
    }

    private JComponent sides(JComponent left, JComponent right) {
        javax.swing.JPanel both = new javax.swing.JPanel(
                new MigLayout("insets 0, fillx", "[grow, sg side]" + look.space(3) + "[grow, sg side]", "[top]"));
        both.setOpaque(false);
        both.add(left, "grow, wmin 0");
        both.add(right, "grow, wmin 0");
        return both;
    }
}
