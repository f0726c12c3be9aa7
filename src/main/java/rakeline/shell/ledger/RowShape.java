package rakeline.shell.ledger;

import java.awt.Rectangle;
import rakeline.shell.look.Heights;

/** How a row lays out what its author wrote and what it produced. */
enum RowShape {
    /** In two columns. */
    BESIDE,
    /** What was produced spans both columns, beneath a snippet of one line. */
    BENEATH,
    /** A text alone, over both columns. */
    TEXT,
    /** What was produced, alone. */
    RESULT,
    /** An answer that is closed: nothing but the line that stands for it. */
    FOLDED,
    /** Not for readers. */
    HIDDEN;

    static RowShape of(ResultView result, Columns columns) {
        if (columns.reading()) {
            return result.isForReaders() ? RESULT : HIDDEN;
        }
        return columns.wide() || !result.hasFigure() ? BESIDE : BENEATH;
    }

    static RowShape note(Columns columns) {
        return columns.wide() && !columns.reading() ? BESIDE : TEXT;
    }

    boolean showsAuthor() {
        return this == BESIDE || this == BENEATH || this == TEXT;
    }

    boolean showsResult() {
        return this == BESIDE || this == BENEATH || this == RESULT;
    }

    /** The height of the content, in pixels. */
    int height(RowView row, Columns columns) {
        return switch (this) {
            case BESIDE ->
                Math.max(
                        columns.gutter() / 3,
                        Math.max(authorHeight(row, columns.textWidth()), resultHeight(row, columns.resultWidth())));
            case BENEATH ->
                authorHeight(row, columns.fullWidth()) + columns.gap() / 2 + resultHeight(row, columns.fullWidth());
            case TEXT -> authorHeight(row, columns.noteWidth());
            case RESULT -> resultHeight(row, columns.fullWidth());
            case HIDDEN, FOLDED -> 0;
        };
    }

    private static int authorHeight(RowView row, int width) {
        return Heights.of(row.author(), width);
    }

    private static int resultHeight(RowView row, int width) {
        return Heights.of(row.result(), width);
    }

    /** Puts the parts in their places. */
    void place(RowView row, Columns columns) {
        int top = row.room() + row.foldHeight();
        int height = row.getHeight() - top - row.room() - 1;
        int written = authorHeight(row, authorWidth(columns));
        row.author().setBounds(authorPlace(columns, top, written));
        row.result().setBounds(resultPlace(columns, top, height, written));
    }

    private Rectangle authorPlace(Columns columns, int top, int height) {
        return new Rectangle(columns.textX(), top, authorWidth(columns), height);
    }

    private int authorWidth(Columns columns) {
        return switch (this) {
            case BESIDE -> columns.textWidth();
            case TEXT -> columns.noteWidth();
            default -> columns.fullWidth();
        };
    }

    private Rectangle resultPlace(Columns columns, int top, int height, int written) {
        return switch (this) {
            case BESIDE -> new Rectangle(columns.resultX(), top, columns.resultWidth(), height);
            case BENEATH -> {
                int y = top + written + columns.gap() / 2;
                yield new Rectangle(columns.textX(), y, columns.fullWidth(), top + height - y);
            }
            default -> new Rectangle(columns.textX(), top, columns.fullWidth(), height);
        };
    }
}
