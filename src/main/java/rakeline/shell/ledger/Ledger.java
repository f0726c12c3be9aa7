package rakeline.shell.ledger;

import java.awt.Component;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.KeyboardFocusManager;
import java.awt.Rectangle;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.awt.event.HierarchyBoundsAdapter;
import java.awt.event.HierarchyEvent;
import java.awt.event.KeyAdapter;
import java.awt.event.KeyEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import javax.swing.JPanel;
import javax.swing.Scrollable;
import javax.swing.SwingUtilities;
import javax.swing.text.Caret;
import javax.swing.text.DefaultCaret;
import javax.swing.text.JTextComponent;
import rakeline.engine.Outcome;
import rakeline.engine.State;
import rakeline.figure.CautionsSaid;
import rakeline.shell.look.Heights;
import rakeline.shell.look.Look;
import rakeline.shell.page.Bench;
import rakeline.shell.page.PageModel;
import rakeline.worksheet.Row;
import rakeline.worksheet.RowEdits;
import rakeline.worksheet.Search;
import rakeline.worksheet.Worksheet;

/** The page: its rows under one another. */
public final class Ledger extends JPanel implements Scrollable, Bench.View {
    private static final double SHARE_AT_FIRST = 0.4;

    private final transient Look look;
    private final transient Bench bench;
    private final transient CodeHelp help;
    private final transient RowDrag drag = new RowDrag(new Dropping());
    private final transient List<RowView> rows = new ArrayList<>();
    private final Beginning beginning;
    private double share = SHARE_AT_FIRST;
    private boolean wide = true;
    private boolean brief;
    private Optional<String> lastSelected;
    private transient Optional<Typed> typed = Optional.empty();
    private transient OptionalInt dropAt = OptionalInt.empty();

    public Ledger(Look look, Bench bench, CodeHelp help) {
        super(null);
        this.look = look;
        this.bench = bench;
        this.help = help;
        lastSelected = bench.model().selected();
        beginning = new Beginning(look);
        add(beginning);
        setBackground(look.paper());
        setFocusable(true);
        getAccessibleContext().setAccessibleName("Page");
        addHierarchyBoundsListener(new HierarchyBoundsAdapter() {
            @Override
            public void ancestorResized(HierarchyEvent event) {
                tellSight();
            }
        });
        addComponentListener(new ComponentAdapter() {
            @Override
            public void componentMoved(ComponentEvent event) {
                tellSight();
            }

            @Override
            public void componentResized(ComponentEvent event) {
                tellSight();
            }
        });
        addMouseListener(new MouseAdapter() {
            @Override
            public void mousePressed(MouseEvent event) {
                if (beginning.isVisible()) {
                    begin("");
                }
            }
        });
        addKeyListener(new KeyAdapter() {
            @Override
            public void keyTyped(KeyEvent event) {
                if (beginning.isVisible() && isPrintable(event)) {
                    begin(String.valueOf(event.getKeyChar()));
                }
            }
        });
    }

    /** Tells which rows are in sight, so that they run first. */
    private void tellSight() {
        Rectangle sight = getVisibleRect();
        bench.look(rows.stream()
                .filter(view -> view.getBounds().intersects(sight))
                .map(RowView::id)
                .collect(Collectors.toSet()));
    }

    private static boolean isPrintable(KeyEvent event) {
        return !Character.isISOControl(event.getKeyChar())
                && event.getKeyChar() != KeyEvent.CHAR_UNDEFINED
                && !event.isControlDown()
                && !event.isMetaDown();
    }

    /** Whether the page holds nothing yet: no row, or rows without a word. */
    private boolean isBlank() {
        return bench.model().rows().stream().allMatch(row -> row.text().isBlank());
    }

    /** Lets the author type in the selected row of an empty page, or in a first one. */
    private void begin(String typed) {
        bench.view(Worksheet.View.WRITE);
        if (bench.model().rows().isEmpty()) {
            Row first = Row.Snippet.of(bench.model().page().freshId(), typed);
            bench.act("snippet added", page -> page.insert(0, first));
            bench.select(first.id());
        }
        editSelected();
        selectedView().ifPresent(view -> caret(view, typed.length(), typed.length()));
    }

    /** Puts the caret into what is typed in, with a selection from a mark on. */
    private static void caret(RowView view, int mark, int dot) {
        if (view.author().editor() instanceof JTextComponent text) {
            int end = text.getDocument().getLength();
            text.setCaretPosition(Math.min(mark, end));
            text.moveCaretPosition(Math.min(dot, end));
        }
    }

    /** Lists what can be done on an empty page, with its keys. */
    public void offer(List<Map.Entry<String, String>> wordsAndKeys) {
        beginning.offer(wordsAndKeys);
    }

    @Override
    public void show(PageModel now) {
        matchRows(now.rows());
        beginning.setVisible(now.allowed() && isBlank());
        beginning.say(!rows.isEmpty());
        Columns columns = columns();
        Set<String> selection = Set.copyOf(now.selection());
        CautionsSaid said = new CautionsSaid();
        for (int i = 0; i < rows.size(); i++) {
            rows.get(i).show(now, now.rows().get(i), columns, selection, said, brief);
        }
        revalidate();
        repaint();
        reveal(now);
        follow(now);
    }

    private void matchRows(List<Row> wanted) {
        List<RowView> next = wanted.stream().map(this::viewOf).toList();
        if (!next.equals(rows)) {
            rows.stream().filter(view -> !next.contains(view)).forEach(this::remove);
            rows.clear();
            rows.addAll(next);
            for (int i = 0; i < next.size(); i++) {
                put(next.get(i), i);
            }
        }
    }

    /** Puts a row in its place; one that moves stays in the window all the while, so that it keeps the keys. */
    private void put(RowView view, int place) {
        if (view.getParent() != this) {
            add(view, place);
        } else if (getComponent(place) != view) {
            setComponentZOrder(view, place);
        }
    }

    private RowView viewOf(Row row) {
        return rows.stream()
                .filter(view ->
                        view.id().equals(row.id()) && view.author() instanceof NoteView == row instanceof Row.Note)
                .findFirst()
                .orElseGet(() -> newView(row));
    }

    private RowView newView(Row row) {
        return new RowView(look, bench, help, row, new ColumnBorder(look, this::divideAt), drag, columns());
    }

    private void reveal(PageModel now) {
        if (!now.selected().equals(lastSelected)) {
            lastSelected = now.selected();
            SwingUtilities.invokeLater(() -> selectedView().ifPresent(this::scrollTo));
        }
    }

    /** A row that was typed in, and how it had last run before. */
    private record Typed(String row, Optional<Outcome> before) {
        static Typed in(PageModel now, String row) {
            return new Typed(row, Optional.ofNullable(now.standings().get(row)));
        }

        /** Whether it has run since. */
        boolean hasRun(PageModel now) {
            Optional<Outcome> last = Typed.in(now, row).before();
            return !last.equals(before)
                    && last.filter(told -> told.state() != State.RUNNING && told.state() != State.OUT_OF_DATE)
                            .isPresent();
        }
    }

    /**
     * Once the row at hand has run because it was typed in, what it came to is brought in sight; where it came to nothing
     * and the figure of before stays, nothing moves.
     */
    private void follow(PageModel now) {
        Optional<String> pending = now.selected().filter(now::isPending);
        if (pending.isPresent()) {
            typed = pending.map(row -> Typed.in(now, row));
        } else if (typed.filter(row -> row.hasRun(now)).isPresent()) {
            boolean isNew = !now.isOld(typed.get().row());
            typed = Optional.empty();
            if (isNew) {
                SwingUtilities.invokeLater(() -> selectedView().ifPresent(this::scrollToResult));
            }
        }
        typed = typed.filter(row -> now.selected().equals(Optional.of(row.row())));
    }

    /** As much of the row as leaves its text in sight. */
    private void scrollToResult(RowView view) {
        int sight = getVisibleRect().height;
        if (view.author().getHeight() < sight) {
            view.scrollRectToVisible(new Rectangle(0, 0, 1, Math.min(view.getHeight(), sight)));
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

    /** Shows all code as one line a snippet, until it is typed in, or all of it again. */
    public void turnBrief() {
        brief = !brief;
        show(bench.model());
    }

    /** Lets the author type in the selected row. */
    public void editSelected() {
        bench.model().selected().ifPresent(bench::openAnswer);
        selectedView().ifPresent(view -> view.author().edit());
    }

    /** Puts the focus on the selected row itself, out of its text; on the page where it has none. */
    public void leaveText() {
        selectedView().ifPresentOrElse(Component::requestFocusInWindow, this::requestFocusInWindow);
    }

    /**
     * Where a reader or author is on the page, so that it can be shown again as it was.
     *
     * @param row the row at the upper edge of what is in sight, or none
     * @param share how much of that row lies above the edge, as a part of its height
     * @param typing in which row someone types, or none
     * @param dot where the caret stands in it
     * @param mark where the selection began there
     */
    public record Sight(Optional<String> row, double share, Optional<String> typing, int dot, int mark) {}

    /**
     * What is in sight now, and where someone types.
     *
     * @param focused the part of the window that had the keys last
     */
    public Sight sight(Optional<Component> focused) {
        int top = getVisibleRect().y;
        Optional<RowView> first = rows.stream()
                .filter(view -> view.getY() + view.getHeight() > top)
                .findFirst();
        double share = first.map(view -> (top - view.getY()) / (double) Math.max(1, view.getHeight()))
                .orElse(0.0);
        Optional<RowView> typing = rows.stream()
                .filter(view -> focused.equals(Optional.of(view.author().editor())))
                .findFirst();
        Caret caret = typing.map(view -> view.author().editor()).filter(JTextComponent.class::isInstance).stream()
                .map(editor -> ((JTextComponent) editor).getCaret())
                .findFirst()
                .orElseGet(DefaultCaret::new);
        return new Sight(first.map(RowView::id), share, typing.map(RowView::id), caret.getDot(), caret.getMark());
    }

    /** Lets someone type on where they typed; false: nobody did. */
    public boolean typeOn(Sight sight) {
        Optional<RowView> typing = sight.typing().flatMap(this::view);
        typing.ifPresent(view -> {
            view.author().edit();
            caret(view, sight.mark(), sight.dot());
        });
        return typing.isPresent();
    }

    /** Brings in sight what was; to be called once the page is laid out. */
    public void look(Sight sight) {
        sight.row().flatMap(this::view).ifPresent(view -> {
            int top = view.getY() + (int) Math.round(sight.share() * view.getHeight());
            scrollRectToVisible(new Rectangle(0, top, 1, Math.max(1, getVisibleRect().height)));
        });
    }

    /** The selected row's figure, if it shows one. */
    public Optional<rakeline.shell.figures.FigureView> selectedFigure() {
        return selectedView().map(RowView::result).filter(Component::isVisible).flatMap(ResultView::figure);
    }

    /** Brings a place of a row's text in sight and selects it there, without taking the keys. */
    public void point(Search.Hit hit) {
        rows.stream()
                .filter(view -> !view.id().equals(hit.row()))
                .forEach(view -> view.author().pointNowhere());
        bench.select(hit.row());
        bench.openAnswer(hit.row());
        view(hit.row()).ifPresent(view -> {
            view.author().point(hit.from(), hit.to());
            SwingUtilities.invokeLater(() -> scrollTo(view));
        });
    }

    /** Points at nothing any more. */
    public void pointNowhere() {
        rows.forEach(view -> view.author().pointNowhere());
    }

    /** Puts the lines at the caret behind comment marks, or takes those away. */
    public void toggleComment() {
        editorInUse().ifPresent(SnippetEditor::toggleComment);
    }

    /** Asks what the word at the caret means to Java; nothing is answered where no snippet is typed in. */
    public void explain(Consumer<List<String>> answer) {
        editorInUse()
                .ifPresent(editor -> rows.stream()
                        .filter(view -> view.author().editor() == editor)
                        .findFirst()
                        .ifPresent(view -> help.explain(
                                bench.model().page().withText(view.id(), editor.getText()),
                                view.id(),
                                editor.wordEnd(),
                                answer)));
    }

    /** Whether a snippet is being typed in. */
    public boolean isInSnippet() {
        return editorInUse().isPresent();
    }

    private static Optional<SnippetEditor> editorInUse() {
        return Optional.ofNullable(
                        KeyboardFocusManager.getCurrentKeyboardFocusManager().getPermanentFocusOwner())
                .filter(SnippetEditor.class::isInstance)
                .map(SnippetEditor.class::cast);
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
        Dimension size = beginning.getPreferredSize();
        beginning.setBounds(columns.textX(), y + look.space(6), size.width, size.height);
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
        int height =
                rows.stream().mapToInt(row -> Heights.of(row, columns.width())).sum();
        int below = beginning.isVisible() ? beginning.getPreferredSize().height : 0;
        return new Dimension(columns.width(), height + below + look.space(10));
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

    @Override
    protected void paintChildren(Graphics g) {
        super.paintChildren(g);
        dropAt.ifPresent(place -> {
            g.setColor(look.accent());
            g.fillRect(0, Math.max(0, dropY(place) - look.px(1)), getWidth(), look.px(3));
        });
    }

    /** The upper edge of the row at a place, or the lower edge of the last. */
    private int dropY(int place) {
        return place < rows.size()
                ? rows.get(place).getY()
                : rows.stream()
                        .mapToInt(row -> row.getY() + row.getHeight())
                        .max()
                        .orElse(0);
    }

    /** Rows that are dragged stand where they are let go. */
    private final class Dropping implements RowDrag.Ground {
        @Override
        public void showPlace(int y) {
            int place = (int) rows.stream()
                    .filter(row -> row.getY() + row.getHeight() / 2 < y)
                    .count();
            dropAt = OptionalInt.of(place);
            scrollRectToVisible(new Rectangle(0, y - look.px(30), 1, look.px(60)));
            repaint();
        }

        @Override
        public void letGo() {
            OptionalInt place = dropAt;
            dropAt = OptionalInt.empty();
            repaint();
            place.ifPresent(to -> bench.act(
                    "rows moved", page -> RowEdits.moveTo(page, bench.model().selection(), to)));
        }
    }
}
