package rakeline.shell.dials;

import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.Rectangle;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.util.Arrays;
import java.util.Optional;
import java.util.stream.IntStream;
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

    /** Wide where every name stands in full, else no wider than it has to be. */
    private int gap(int width) {
        return namesFit(width) ? wideGap() : look.space(4);
    }

    private int wideGap() {
        return look.space(8);
    }

    private int margin() {
        return look.space(4);
    }

    /** As many as there is room for with every name in full, if that takes no more lines than are in sight. */
    private int perLine(int width) {
        return perLine(width, namesFit(width) ? wanted() : look.px(narrowest));
    }

    private boolean namesFit(int width) {
        return lineCount(perLine(width, wanted())) <= inSight;
    }

    private int perLine(int width, int cell) {
        return Math.max(1, (width - 2 * margin() + wideGap()) / (cell + wideGap()));
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

    /** The columns' widths: alike, unless a name is cut off that another column has room for. */
    private int[] widths(int width) {
        int columns = Math.min(perLine(width), Math.max(1, getComponentCount()));
        int room = width - 2 * margin() - gap(width) * (columns - 1);
        int alike = Math.min(Math.max(look.px(WIDEST), wanted()), room / columns);
        int[] asked = IntStream.range(0, columns)
                .map(column -> asked(column, columns))
                .toArray();
        int all = IntStream.of(asked).sum();
        boolean cut = IntStream.of(asked).anyMatch(each -> each > alike) && all <= room;
        return IntStream.of(asked)
                .map(each -> cut ? each + (room - all) / columns : alike)
                .toArray();
    }

    /** What the widest dial of a column asks for. */
    private int asked(int column, int columns) {
        return IntStream.iterate(column, i -> i < getComponentCount(), i -> i + columns)
                .mapToObj(this::getComponent)
                .mapToInt(cell -> cell instanceof PickerView ? look.px(narrowest) : cell.getPreferredSize().width)
                .max()
                .orElse(0);
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
        int[] widths = widths(getWidth());
        int height = cellHeight();
        int x = margin();
        for (int i = 0; i < getComponentCount(); i++) {
            int column = i % perLine;
            x = column == 0 ? margin() : x + widths[column - 1] + gap(getWidth());
            getComponent(i)
                    .setBounds(x, look.space(3) + i / perLine * (height + look.space(3)), widths[column], height);
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
