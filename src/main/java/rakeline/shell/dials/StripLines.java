package rakeline.shell.dials;

import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.Rectangle;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.util.Arrays;
import java.util.Optional;
import java.util.stream.Stream;
import javax.swing.JComboBox;
import javax.swing.JPanel;
import javax.swing.JSlider;
import javax.swing.Scrollable;
import rakeline.shell.look.Look;

/** Cells of one width in as many lines as they need. */
final class StripLines extends JPanel implements Scrollable {
    private static final int WIDEST = 300;
    private static final int LONGEST = 340;
    private static final int MOST_IN_SIGHT = 2;

    private final transient Look look;
    private final int narrowest;
    private int inSight = MOST_IN_SIGHT;

    /**
     * @param narrowest width of a cell, in pixels at scale 1
     */
    StripLines(Look look, int narrowest) {
        super(null);
        this.look = look;
        this.narrowest = narrowest;
        setOpaque(false);
    }

    private int gap() {
        return look.space(8);
    }

    private int margin() {
        return look.space(4);
    }

    /** As many as there is room for with every name in full, if that takes no more lines than are in sight. */
    private int perLine(int width) {
        int whole = perLine(width, wanted());
        boolean fits = lineCount(whole) <= inSight;
        return fits ? whole : perLine(width, look.px(narrowest));
    }

    private int perLine(int width, int cell) {
        return Math.max(1, (width - 2 * margin() + gap()) / (cell + gap()));
    }

    /** What the dial with the longest name wants. */
    private int wanted() {
        int longest = Arrays.stream(getComponents())
                .filter(DialView.class::isInstance)
                .mapToInt(cell -> cell.getPreferredSize().width)
                .max()
                .orElse(0);
        return Math.max(look.px(narrowest), Math.min(look.px(LONGEST), longest));
    }

    private int cellWidth(int width) {
        int columns = Math.min(perLine(width), Math.max(1, getComponentCount()));
        int share = (width - 2 * margin() - gap() * (columns - 1)) / columns;
        return Math.min(Math.max(look.px(WIDEST), wanted()), share);
    }

    private int cellHeight() {
        return Arrays.stream(getComponents())
                .mapToInt(cell -> cell.getPreferredSize().height)
                .max()
                .orElse(0);
    }

    private int lineCount(int perLine) {
        return (getComponentCount() + perLine - 1) / perLine;
    }

    /** Has at most so many lines in sight, of two. */
    void inSight(int lines) {
        inSight = Math.min(lines, MOST_IN_SIGHT);
    }

    /** Scrolls a control into sight when it gets the keys. */
    void followKeys() {
        for (Component cell : getComponents()) {
            parts((Container) cell)
                    .forEach(part -> part.addFocusListener(new FocusAdapter() {
                        @Override
                        public void focusGained(FocusEvent event) {
                            scrollRectToVisible(cell.getBounds());
                        }
                    }));
        }
    }

    /** The height of the lines that are in sight. */
    int heightInSight(int width) {
        return heightOf(Math.min(inSight, lineCount(perLine(width))));
    }

    private int heightOf(int lines) {
        return lines * cellHeight() + Math.max(0, lines - 1) * look.space(3) + 2 * look.space(3);
    }

    /** The first part of a control that takes keys. */
    Optional<Component> firstToFocus() {
        return parts(this)
                .filter(part -> part instanceof JSlider || part instanceof JComboBox)
                .findFirst();
    }

    private static Stream<Component> parts(Container whole) {
        return Arrays.stream(whole.getComponents())
                .flatMap(part -> Stream.concat(
                        Stream.of(part), part instanceof Container inner ? parts(inner) : Stream.empty()));
    }

    @Override
    public void doLayout() {
        int perLine = perLine(getWidth());
        int width = cellWidth(getWidth());
        int height = cellHeight();
        for (int i = 0; i < getComponentCount(); i++) {
            Component cell = getComponent(i);
            int x = margin() + i % perLine * (width + gap());
            int y = look.space(3) + i / perLine * (height + look.space(3));
            cell.setBounds(x, y, width, height);
        }
    }

    @Override
    public Dimension getPreferredSize() {
        return new Dimension(look.px(narrowest), heightOf(lineCount(perLine(Math.max(1, getWidth())))));
    }

    @Override
    public Dimension getPreferredScrollableViewportSize() {
        return getPreferredSize();
    }

    @Override
    public int getScrollableUnitIncrement(Rectangle visible, int orientation, int direction) {
        return look.space(4);
    }

    @Override
    public int getScrollableBlockIncrement(Rectangle visible, int orientation, int direction) {
        return cellHeight();
    }

    @Override
    public boolean getScrollableTracksViewportWidth() {
        return true;
    }

    @Override
    public boolean getScrollableTracksViewportHeight() {
        return false;
    }
}
