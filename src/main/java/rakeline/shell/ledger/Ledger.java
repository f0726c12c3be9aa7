package rakeline.shell.ledger;

import java.awt.Component;
import java.awt.Dimension;
import java.awt.Rectangle;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import javax.swing.JPanel;
import javax.swing.Scrollable;
import javax.swing.SwingUtilities;
import rakeline.shell.look.Heights;
import rakeline.shell.look.Look;
import rakeline.shell.page.Bench;
import rakeline.shell.page.PageModel;
import rakeline.worksheet.Row;
import rakeline.worksheet.Worksheet;

/** The page: its rows under one another. */
public final class Ledger extends JPanel implements Scrollable, Bench.View {
    private static final double SHARE_AT_FIRST = 0.4;

    private final transient Look look;
    private final transient Bench bench;
    private final transient List<RowView> rows = new ArrayList<>();
    private double share = SHARE_AT_FIRST;
    private boolean wide = true;
    private Optional<String> lastSelected = Optional.empty();

    public Ledger(Look look, Bench bench) {
        super(null);
        this.look = look;
        this.bench = bench;
        setBackground(look.paper());
        setFocusable(true);
        getAccessibleContext().setAccessibleName("Page");
    }

    @Override
    public void show(PageModel now) {
        matchRows(now.rows());
        Columns columns = columns();
        for (int i = 0; i < rows.size(); i++) {
            rows.get(i).show(now, now.rows().get(i), columns);
        }
        revalidate();
        repaint();
        reveal(now);
    }

    private void matchRows(List<Row> wanted) {
        List<RowView> next = wanted.stream().map(this::viewOf).toList();
        if (!next.equals(rows)) {
            removeAll();
            rows.clear();
            rows.addAll(next);
            rows.forEach(this::add);
        }
    }

    private RowView viewOf(Row row) {
        return rows.stream()
                .filter(view ->
                        view.id().equals(row.id()) && view.author() instanceof NoteView == row instanceof Row.Note)
                .findFirst()
                .orElseGet(() -> new RowView(look, bench, row, new ColumnBorder(look, this::divideAt), columns()));
    }

    private void reveal(PageModel now) {
        if (!now.selected().equals(lastSelected)) {
            lastSelected = now.selected();
            SwingUtilities.invokeLater(() -> selectedView().ifPresent(this::scrollTo));
        }
    }

    private void scrollTo(RowView view) {
        Rectangle top = new Rectangle(0, 0, 1, Math.min(view.getHeight(), look.px(80)));
        view.scrollRectToVisible(top);
    }

    private Optional<RowView> selectedView() {
        return bench.model().selected().flatMap(this::view);
    }

    private Optional<RowView> view(String id) {
        return rows.stream().filter(view -> view.id().equals(id)).findFirst();
    }

    /** Lets the author type in the selected row. */
    public void editSelected() {
        selectedView().ifPresent(view -> view.author().edit());
    }

    /** Puts the focus on the selected row itself, out of its text. */
    public void leaveText() {
        selectedView().ifPresent(Component::requestFocusInWindow);
    }

    /** The selected row's figure, if it shows one. */
    public Optional<rakeline.shell.figures.FigureView> selectedFigure() {
        return selectedView().flatMap(view -> view.result().figure());
    }

    /** Whether there is room for text and figure beside each other. */
    public void setWide(boolean nowWide) {
        if (wide != nowWide) {
            wide = nowWide;
            show(bench.model());
        }
    }

    /** Moves the border between the columns by a part of their width. */
    public void divide(double by) {
        divideAt(columns().borderX() + (int) Math.round(by * getWidth()));
    }

    private void divideAt(int x) {
        share = columns().shareAt(x);
        show(bench.model());
    }

    private Columns columns() {
        boolean reading = bench.model().view() == Worksheet.View.READ;
        return new Columns(look, Math.max(1, getWidth()), share, wide, reading);
    }

    @Override
    public void doLayout() {
        Columns columns = columns();
        int y = 0;
        for (RowView row : rows) {
            row.resize(columns);
            int height = Heights.of(row, getWidth());
            row.setBounds(0, y, getWidth(), height);
            y += height;
        }
    }

    @Override
    public void setBounds(int x, int y, int width, int height) {
        boolean wider = width != getWidth();
        super.setBounds(x, y, width, height);
        if (wider) {
            revalidate();
        }
    }

    @Override
    public Dimension getPreferredSize() {
        Columns columns = columns();
        rows.forEach(row -> row.resize(columns));
        int height = Arrays.stream(getComponents())
                .mapToInt(row -> Heights.of(row, columns.width()))
                .sum();
        return new Dimension(columns.width(), height + look.space(10));
    }

    @Override
    public Dimension getPreferredScrollableViewportSize() {
        return new Dimension(look.px(600), look.px(500));
    }

    @Override
    public int getScrollableUnitIncrement(Rectangle visible, int orientation, int direction) {
        return look.space(8);
    }

    @Override
    public int getScrollableBlockIncrement(Rectangle visible, int orientation, int direction) {
        return visible.height - look.space(8);
    }

    @Override
    public boolean getScrollableTracksViewportWidth() {
        return true;
    }

    @Override
    public boolean getScrollableTracksViewportHeight() {
        return getParent() != null && getPreferredSize().height < getParent().getHeight();
    }
}
