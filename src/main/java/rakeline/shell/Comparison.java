package rakeline.shell;

import java.awt.Dimension;
import java.util.List;
import java.util.Set;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import javax.swing.ScrollPaneConstants;
import javax.swing.text.BadLocationException;
import javax.swing.text.DefaultHighlighter.DefaultHighlightPainter;
import net.miginfocom.swing.MigLayout;
import rakeline.desk.Difference;
import rakeline.shell.look.Look;
import rakeline.shell.look.Pile;
import rakeline.shell.look.Words;

/** Two versions of a page side by side, as far as they differ. */
final class Comparison extends JScrollPane {
    private static final int MOST_SHOWN = 200;
    private static final int WIDTH = 960;
    private static final int HEIGHT = 340;
    private static final int AROUND = 60;
    private static final int ABOVE_AND_BELOW = 220;

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
        setPreferredSize(extent());
    }

    /** As much as reads well, and as the screen has beside the question's own words. */
    private Dimension extent() {
        Dimension screen = getToolkit().getScreenSize();
        return new Dimension(
                Math.min(look.px(WIDTH), screen.width - look.px(AROUND)),
                Math.min(look.px(HEIGHT), screen.height - look.px(ABOVE_AND_BELOW)));
    }

    private void rest(Pile pile, int all) {
        if (all == 0) {
            pile.add(Words.line("No differences.", look.body(), look.ink()));
        } else if (all > MOST_SHOWN) {
            pile.add(Words.line("and " + (all - MOST_SHOWN) + " more", look.body(), look.ink()));
        }
    }

    private void add(Pile pile, Difference difference) {
        JLabel words = Words.line(difference.words(), look.strong(), look.ink());
        pile.add(words);
        pile.add(sides(
                text(difference.before(), difference.after(), "before: " + difference.words()),
                text(difference.after(), difference.before(), "after: " + difference.words())));
    }

    /** One side; lines that the other has not are marked. */
    private JComponent text(String text, String other, String called) {
        JTextArea area =
                Words.paragraph(text.isEmpty() ? "—" : text, look.code(), text.isEmpty() ? look.soft() : look.ink());
        area.setOpaque(true);
        area.setBackground(look.card());
        area.setBorder(look.room(1, 2, 1, 2));
        area.getAccessibleContext().setAccessibleName(called);
        if (!text.isEmpty() && !other.isEmpty()) {
            mark(area, Set.copyOf(other.lines().toList()));
        }
        return area;
    }

    private void mark(JTextArea area, Set<String> lines) {
        try {
            for (int i = 0; i < area.getLineCount(); i++) {
                int from = area.getLineStartOffset(i);
                int to = area.getLineEndOffset(i);
                String line = area.getText(from, to - from).stripTrailing();
                if (lines.stream().map(String::stripTrailing).noneMatch(line::equals)) {
                    area.getHighlighter().addHighlight(from, to, new DefaultHighlightPainter(look.hairline()));
                }
            }
        } catch (BadLocationException e) {
            throw new IllegalStateException("the lines of a text lie within it", e);
        }
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
