package rakeline.shell.ledger;

import java.awt.Color;
import java.awt.Cursor;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.awt.event.KeyEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.Collection;
import java.util.Optional;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.KeyStroke;
import rakeline.engine.Prose;
import rakeline.figure.CautionsSaid;
import rakeline.shell.look.Heights;
import rakeline.shell.look.Look;
import rakeline.shell.look.Pointed;
import rakeline.shell.page.Bench;
import rakeline.shell.page.PageModel;
import rakeline.worksheet.Answer;
import rakeline.worksheet.Row;
import rakeline.worksheet.Worksheet;

/** One row of the ledger: gutter, what the author wrote, and beside or beneath it what it produced. */
final class RowView extends JPanel implements Heights.Flowing {
    private final String id;
    private final transient Look look;
    private final Gutter gutter;
    private final AuthorView author;
    private final ResultView result;
    private final FoldLine fold;
    private final JComponent border;
    private transient RowShape shape = RowShape.BESIDE;
    private transient Columns columns;
    private boolean selected;
    private int knownWidth = -1;
    private int knownHeight;
    private boolean settling;

    RowView(Look look, Bench bench, CodeHelp help, Row row, ColumnBorder border, RowDrag drag, Columns columns) {
        super(null);
        this.look = look;
        this.columns = columns;
        id = row.id();
        gutter = new Gutter(look);
        author = row instanceof Row.Note ? new NoteView(look, bench, id) : new SnippetView(look, bench, help, id);
        MouseAdapter pressed = new MouseAdapter() {
            @Override
            public void mousePressed(MouseEvent event) {
                press(bench, event);
            }
        };
        result = new ResultView(look, pressed);
        this.border = border;
        border.setCursor(Cursor.getPredefinedCursor(Cursor.E_RESIZE_CURSOR));
        add(border);
        add(gutter);
        add(author);
        add(result);
        fold = new FoldLine(look, () -> bench.turnAnswer(id));
        add(fold);
        if (row instanceof Row.Note) {
            gutter.showNothing();
        }
        addMouseListener(pressed);
        gutter.addMouseListener(pressed);
        gutter.addMouseListener(drag);
        gutter.addMouseMotionListener(drag);
        gutter.setToolTipText("Drag to move the row; with Shift, select up to here");
        setFocusable(true);
        registerKeyboardAction(
                event -> bench.turnAnswer(id), KeyStroke.getKeyStroke(KeyEvent.VK_SPACE, 0), JComponent.WHEN_FOCUSED);
        addFocusListener(new FocusAdapter() {
            @Override
            public void focusGained(FocusEvent event) {
                if (!bench.model().selected().equals(Optional.of(id))) {
                    bench.select(id);
                }
            }
        });
        nameParts();
    }

    /** A press selects the row; with Shift, all rows up to it; on one of several that are selected, it may begin a drag. */
    private void press(Bench bench, MouseEvent event) {
        boolean among =
                event.getComponent() == gutter && bench.model().selection().contains(id);
        if (event.isShiftDown()) {
            bench.extend(id);
        } else if (!among) {
            bench.select(id);
        }
        requestFocusInWindow();
    }

    private void nameParts() {
        Pointed.at(this, () -> "rows");
        Pointed.at(result, result::topic);
        setName("row " + id);
        gutter.setName("gutter " + id);
        author.editor().setName("editor " + id);
        result.setName("result " + id);
    }

    String id() {
        return id;
    }

    AuthorView author() {
        return author;
    }

    ResultView result() {
        return result;
    }

    /**
     * @param said the cautions of the rows above
     * @param brief whether code is shown as one line
     */
    void show(
            PageModel now,
            Row row,
            Columns newColumns,
            Collection<String> selection,
            CautionsSaid said,
            boolean brief) {
        resize(newColumns);
        selected = selection.contains(id);
        boolean reading = now.view() == Worksheet.View.READ;
        boolean hidden = now.isHidden(id);
        showFold(now, row, reading);
        if (row instanceof Row.Snippet) {
            result.show(now.standing(id), now.figureBefore(id), now.isOld(id), hidden ? new CautionsSaid() : said);
            gutter.show(now.standing(id));
            reshape(hidden ? RowShape.FOLDED : RowShape.of(result, columns));
        } else {
            reshape(hidden ? RowShape.FOLDED : RowShape.note(columns));
        }
        setBorder(reading ? null : look.line(0, 0, 1, 0));
        result.readOnly(reading);
        author.show(row, brief || shape == RowShape.BENEATH);
        if (author instanceof NoteView note) {
            fill(note, now, row.text());
        }
        if (author instanceof SnippetView snippet) {
            snippet.underline(
                    result.shown().message(),
                    now.handed().row(id).map(Row::text).orElse(""));
        }
        arrange();
        paintGround();
        getAccessibleContext().setAccessibleName("Row " + gutter.words());
    }

    /** For its author each folded row has its line; for a reader the first of an answer has it for all. */
    private void showFold(PageModel now, Row row, boolean reading) {
        fold.say(now.isHidden(id));
        fold.setVisible(row.folded()
                && (!reading
                        || Answer.holding(now.page(), id)
                                .filter(answer -> answer.beginsWith(id))
                                .isPresent()));
    }

    /** The height of the line that stands for an answer, where there is one; in pixels. */
    int foldHeight() {
        return fold.isVisible() ? fold.getPreferredSize().height + look.space(1) : 0;
    }

    /** Fills a note's numbers in; while rows run, what cannot be filled yet leaves it as it stands. */
    private static void fill(NoteView note, PageModel now, String text) {
        if (!text.contains("{{")) {
            note.read(text);
            return;
        }
        Prose.Filled filled = Prose.of(now.outcomes()).fill(text);
        if (filled.missing().isEmpty() || now.isSettled() || note.isUnread()) {
            note.read(filled.text());
        }
    }

    private void reshape(RowShape next) {
        if (next != shape) {
            shape = next;
            revalidate();
        }
    }

    private void arrange() {
        setVisible(fold.isVisible() || (shape != RowShape.HIDDEN && shape != RowShape.FOLDED));
        gutter.setVisible(!columns.reading());
        author.setVisible(shape.showsAuthor());
        result.setVisible(shape.showsResult());
        border.setVisible(shape == RowShape.BESIDE);
    }

    private void paintGround() {
        Color ground = selected && !columns.reading() ? look.card() : look.paper();
        setBackground(ground);
        if (author instanceof SnippetView snippet) {
            snippet.paintOn(ground);
        }
        repaint();
    }

    void resize(Columns newColumns) {
        if (!newColumns.equals(columns)) {
            columns = newColumns;
            knownWidth = -1;
        }
    }

    @Override
    public int heightFor(int width) {
        if (width != knownWidth) {
            settling = true;
            knownHeight = isVisible() ? shape.height(this, columns) + foldHeight() + 2 * room() + 1 : 0;
            knownWidth = width;
            settling = false;
        }
        return knownHeight;
    }

    /** What changes in a row makes its height unknown, save for what measuring and laying out change themselves. */
    @Override
    public void invalidate() {
        if (!settling) {
            knownWidth = -1;
        }
        super.invalidate();
    }

    int room() {
        return columns.reading() ? look.space(2) : look.space(3);
    }

    @Override
    public void doLayout() {
        settling = true;
        gutter.setBounds(columns.stripe(), room(), columns.gutter(), getHeight() - 2 * room());
        border.setBounds(columns.borderX() - look.px(3), 0, look.px(7), getHeight());
        fold.setBounds(columns.textX(), room(), columns.fullWidth(), fold.getPreferredSize().height);
        shape.place(this, columns);
        settling = false;
    }

    @Override
    public Dimension getPreferredSize() {
        return new Dimension(columns.width(), heightFor(columns.width()));
    }

    @Override
    protected void paintComponent(Graphics g) {
        super.paintComponent(g);
        if (selected && !columns.reading()) {
            g.setColor(look.accent());
            g.fillRect(0, 0, columns.stripe(), getHeight());
        }
    }
}
